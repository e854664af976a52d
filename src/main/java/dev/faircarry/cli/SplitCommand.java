package dev.faircarry.cli;

import dev.faircarry.app.MassUnits;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.csv.SplitTable;
import dev.faircarry.json.Reading;
import dev.faircarry.json.ResultWriter;
import dev.faircarry.json.SplitExchange;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code split FILE}: the fairest split of a trip. */
@Command(name = "split", description = "Divides the shared gear of a trip.")
final class SplitCommand implements Callable<Integer> {
  private final SplitTrip useCase;
  private final Console console;

  @Parameters(paramLabel = "FILE", description = "trip document; - reads standard input")
  private String file = "-";

  @Option(names = "--json", description = "answer as a document instead of a table")
  private boolean json;

  @Option(names = "--csv", description = "answer with the split as CSV")
  private boolean csv;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "units of the table (default: metric)")
  private MassUnits units = MassUnits.METRIC;

  @Option(names = "--effort", paramLabel = "N", description = "search steps to spend")
  private long effortSteps = ServiceLimits.DEFAULT_EFFORT_STEPS;

  SplitCommand(SplitTrip useCase, Console console) {
    this.useCase = useCase;
    this.console = console;
  }

  @Override
  public Integer call() {
    return run().number();
  }

  private ExitCode run() {
    requireEffort(effortSteps);
    byte[] trip = console.documents().read(file, ServiceLimits.REQUEST_BYTES);
    Reading<SplitResult> reading = SplitExchange.split(trip, useCase, effortSteps);
    if (reading instanceof Reading.Bad<SplitResult> bad) {
      return console.report(bad, json);
    }
    SplitResult result = ((Reading.Read<SplitResult>) reading).value();
    if (csv && result instanceof SplitResult.Found found) {
      console.print(SplitTable.write(found.split(), found.trip()));
    } else if (json) {
      console.print(ResultWriter.write(result));
    } else if (csv) {
      // That there is no split is no table.
      console.complain(text(result, units));
    } else {
      console.print(text(result, units));
    }
    return code(result);
  }

  /** Refuses search steps that nobody may ask for. */
  static void requireEffort(long effortSteps) {
    if (effortSteps < ServiceLimits.MIN_EFFORT_STEPS
        || effortSteps > ServiceLimits.MAX_EFFORT_STEPS) {
      throw new BadInput(
          "--effort is a whole number from "
              + ServiceLimits.MIN_EFFORT_STEPS
              + " to "
              + ServiceLimits.MAX_EFFORT_STEPS
              + ".");
    }
  }

  /** A result for people. */
  static String text(SplitResult result, MassUnits units) {
    SplitText text = new SplitText(units);
    if (result instanceof SplitResult.Found found) {
      return text.found(found);
    }
    if (result instanceof SplitResult.Impossible impossible) {
      return text.impossible(impossible);
    }
    return text.undecided();
  }

  /** What a result means for a script. */
  static ExitCode code(SplitResult result) {
    if (result instanceof SplitResult.Found found) {
      return found.fine() ? ExitCode.FINE : ExitCode.OVER_CAP_OR_UNPROVED;
    }
    return result instanceof SplitResult.Impossible
        ? ExitCode.IMPOSSIBLE
        : ExitCode.OVER_CAP_OR_UNPROVED;
  }
}
