package dev.faircarry.cli;

import dev.faircarry.app.MassUnits;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.WeighedIn;
import dev.faircarry.json.Reading;
import dev.faircarry.json.WeighInExchange;
import dev.faircarry.json.WeighInWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code weigh-in FILE SPLIT READINGS}: what the scale says against what was stated. */
@Command(
    name = "weigh-in",
    description = "Sets readings of a scale against what labels and lists say.")
final class WeighInCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(index = "0", paramLabel = "FILE", description = "trip document")
  private String file = "";

  @Parameters(
      index = "1",
      paramLabel = "SPLIT",
      description = "split, a document or a table (.csv): what is in whose pack")
  private String split = "";

  @Parameters(
      index = "2",
      paramLabel = "READINGS",
      description =
          "document with \"readings\", \"tolerance\", \"accept\", or a table of readings (.csv)")
  private String readings = "";

  @Option(names = "--json", description = "answer as a document instead of a table")
  private boolean json;

  @Option(
      names = "--trip",
      description = "print only the trip after taking over; needs \"accept\" in READINGS")
  private boolean trip;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "units of the table (default: metric)")
  private MassUnits units = MassUnits.METRIC;

  WeighInCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    byte[] document = console.documents().read(file, ServiceLimits.REQUEST_BYTES);
    Reading<WeighedIn.Told> reading =
        WeighInExchange.weighIn(
            document,
            console.tables().split(split, document),
            console.tables().readings(readings, document));
    if (reading instanceof Reading.Bad<WeighedIn.Told> bad) {
      return console.report(bad, json).number();
    }
    WeighedIn.Told told = ((Reading.Read<WeighedIn.Told>) reading).value();
    if (trip && told.accepted().isEmpty()) {
      throw new BadInput("--trip needs \"accept\" in READINGS.");
    }
    if (trip) {
      console.print(WeighInWriter.trip(told));
    } else if (json) {
      console.print(WeighInWriter.write(told));
    } else {
      console.print(new WeighInText(units).told(told));
    }
    boolean fine = told.accepted().isPresent() ? !told.asks() : told.agrees();
    return (fine ? ExitCode.FINE : ExitCode.OVER_CAP_OR_UNPROVED).number();
  }
}
