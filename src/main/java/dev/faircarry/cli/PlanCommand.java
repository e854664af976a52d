package dev.faircarry.cli;

import dev.faircarry.app.MassUnits;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.WalkingRule;
import dev.faircarry.json.LookReader;
import dev.faircarry.json.PlanAnswers;
import dev.faircarry.json.Reading;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** What the commands about the rest of a trip have in common. */
abstract class PlanCommand implements Callable<Integer> {
  private final PlanAnswers answers;
  private final Console console;

  @Option(names = "--json", description = "answer as a document instead of a table")
  private boolean json;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "units of the table (default: metric)")
  private MassUnits units = MassUnits.METRIC;

  PlanCommand(PlanAnswers answers, Console console) {
    this.answers = answers;
    this.console = console;
  }

  PlanAnswers answers() {
    return answers;
  }

  byte[] read(String file) {
    return console.documents().read(file, ServiceLimits.REQUEST_BYTES);
  }

  /** A trip, and a split where one is named. */
  Reading<LookReader.Look> look(
      String file, String split, WalkingRule rule, CostModel model, boolean withSplits) {
    if (file.equals("-") && split.equals("-")) {
      throw new BadInput("Only one of FILE and SPLIT can come from standard input.");
    }
    byte[] trip = read(file);
    return LookReader.read(
        trip,
        split.isEmpty() ? Optional.empty() : Optional.of(console.tables().split(split, trip)),
        rule,
        model,
        withSplits);
  }

  /** Prints an answer, or what is wrong with the document. */
  <T> int tell(
      Reading<PlanAnswers.Answered<T>> reading,
      Function<PlanTables, Function<T, String>> table,
      Function<T, ExitCode> code) {
    if (reading instanceof Reading.Bad<PlanAnswers.Answered<T>> bad) {
      return console.report(bad, json).number();
    }
    PlanAnswers.Answered<T> answered = ((Reading.Read<PlanAnswers.Answered<T>>) reading).value();
    if (json) {
      console.print(answered.body());
    } else {
      console.print(table.apply(new PlanTables(units::text)).apply(answered.value()));
    }
    return code.apply(answered.value()).number();
  }

  /** Prints a picture, or what is wrong with the document. */
  int draw(Reading<byte[]> picture) {
    if (picture instanceof Reading.Bad<byte[]> bad) {
      return console.report(bad, json).number();
    }
    console.print(((Reading.Read<byte[]>) picture).value());
    return ExitCode.FINE.number();
  }
}
