package dev.faircarry.cli;

import dev.faircarry.app.AdviceWords;
import dev.faircarry.app.ExplainTrip;
import dev.faircarry.app.MassUnits;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.json.ExplanationWriter;
import dev.faircarry.json.Reading;
import dev.faircarry.json.SplitExchange;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code explain FILE}: why the fairest split is no fairer, and what would help. */
@Command(
    name = "explain",
    description = "Says what keeps the worst-off morning from being better, and what would help.")
final class ExplainCommand implements Callable<Integer> {
  private final ExplainTrip useCase;
  private final Console console;

  @Parameters(paramLabel = "FILE", description = "trip document; - reads standard input")
  private String file = "-";

  @Option(names = "--json", description = "answer as a document instead of text")
  private boolean json;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "units of the table (default: metric)")
  private MassUnits units = MassUnits.METRIC;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "search steps for the split, and as many again for the questions")
  private long effortSteps = ServiceLimits.DEFAULT_EFFORT_STEPS;

  ExplainCommand(ExplainTrip useCase, Console console) {
    this.useCase = useCase;
    this.console = console;
  }

  @Override
  public Integer call() {
    SplitCommand.requireEffort(effortSteps);
    byte[] trip = console.documents().read(file, ServiceLimits.REQUEST_BYTES);
    Reading<ExplainTrip.Explained> reading = SplitExchange.explain(trip, useCase, effortSteps);
    if (reading instanceof Reading.Bad<ExplainTrip.Explained> bad) {
      return console.report(bad, json).number();
    }
    ExplainTrip.Explained explained = ((Reading.Read<ExplainTrip.Explained>) reading).value();
    if (json) {
      console.print(ExplanationWriter.write(explained));
    } else {
      console.print(SplitCommand.text(explained.result(), units));
      console.print(AdviceWords.text(explained));
    }
    return SplitCommand.code(explained.result()).number();
  }
}
