package dev.faircarry.cli;

import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.MassUnits;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SplitReport;
import dev.faircarry.check.Departure;
import dev.faircarry.json.DepartureExchange;
import dev.faircarry.json.DepartureWriter;
import dev.faircarry.json.Reading;
import dev.faircarry.json.SplitExchange;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check FILE SPLIT}: what an independent reading says, and whether the group can leave. */
@Command(
    name = "check",
    description = "Judges a split, made by hand or answered earlier: can the group leave with it?")
final class CheckCommand implements Callable<Integer> {
  private final JudgeSplit judgeSplit;
  private final CheckDeparture checkDeparture;
  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "trip document; - reads standard input")
  private String file = "-";

  @Parameters(
      index = "1",
      paramLabel = "SPLIT",
      description = "split document, or a table (.csv); - reads standard input")
  private String split = "-";

  @Option(names = "--json", description = "answer as a document instead of a table")
  private boolean json;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "units of the table (default: metric)")
  private MassUnits units = MassUnits.METRIC;

  @Option(names = "--strict", description = "exit code 1 for cautions too")
  private boolean strict;

  @Option(
      names = "--made-for",
      paramLabel = "FILE",
      description = "trip document the split was made for: what has changed since is a finding")
  private Optional<String> madeFor = Optional.empty();

  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "search steps to spend on how far it is from the best possible")
  private long effortSteps = ServiceLimits.DEPARTURE_EFFORT_STEPS;

  CheckCommand(JudgeSplit judgeSplit, CheckDeparture checkDeparture, Console console) {
    this.judgeSplit = judgeSplit;
    this.checkDeparture = checkDeparture;
    this.console = console;
  }

  @Override
  public Integer call() {
    SplitCommand.requireEffort(effortSteps);
    if (Stream.of(file, split, madeFor.orElse("")).filter("-"::equals).count() > 1) {
      throw new BadInput("Only one of FILE and SPLIT can come from standard input.");
    }
    byte[] trip = console.documents().read(file, ServiceLimits.REQUEST_BYTES);
    byte[] made = console.tables().split(split, trip);
    Optional<byte[]> before =
        madeFor.map(name -> console.documents().read(name, ServiceLimits.REQUEST_BYTES));
    Reading<JudgedSplit> reading = SplitExchange.check(trip, made, judgeSplit);
    if (reading instanceof Reading.Bad<JudgedSplit> bad) {
      return console.report(bad, json).number();
    }
    Reading<CheckDeparture.Answer> asked =
        DepartureExchange.departure(trip, made, before, checkDeparture, effortSteps);
    if (asked instanceof Reading.Bad<CheckDeparture.Answer> bad) {
      return console.report(bad, json).number();
    }
    JudgedSplit judged = ((Reading.Read<JudgedSplit>) reading).value();
    CheckDeparture.Answer answer = ((Reading.Read<CheckDeparture.Answer>) asked).value();
    if (json) {
      console.print(DepartureWriter.write(judged, answer));
    } else {
      console.print(
          new SplitText(units)
              .judged(
                  SplitReport.of(judged),
                  judged.verdict().keepsRules(),
                  new DepartureText(answer, units)));
    }
    return code(judged, answer.departure().readiness()).number();
  }

  private ExitCode code(JudgedSplit judged, Departure.Readiness readiness) {
    boolean fine =
        judged.verdict().keepsRules()
            && !judged.verdict().overCap()
            && readiness != Departure.Readiness.NOT_READY
            && (!strict || readiness == Departure.Readiness.READY);
    return fine ? ExitCode.FINE : ExitCode.OVER_CAP_OR_UNPROVED;
  }
}
