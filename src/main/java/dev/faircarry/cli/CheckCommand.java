package dev.faircarry.cli;

import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.MassUnits;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SplitReport;
import dev.faircarry.json.Reading;
import dev.faircarry.json.ResultWriter;
import dev.faircarry.json.SplitExchange;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code check FILE SPLIT}: what an independent reading says of a split. */
@Command(name = "check", description = "Judges a split, made by hand or answered earlier.")
final class CheckCommand implements Callable<Integer> {
  private final JudgeSplit useCase;
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

  CheckCommand(JudgeSplit useCase, Console console) {
    this.useCase = useCase;
    this.console = console;
  }

  @Override
  public Integer call() {
    if (file.equals("-") && split.equals("-")) {
      throw new BadInput("Only one of FILE and SPLIT can come from standard input.");
    }
    byte[] trip = console.documents().read(file, ServiceLimits.REQUEST_BYTES);
    byte[] made = console.tables().split(split, trip);
    Reading<JudgedSplit> reading = SplitExchange.check(trip, made, useCase);
    if (reading instanceof Reading.Bad<JudgedSplit> bad) {
      return console.report(bad, json).number();
    }
    JudgedSplit judged = ((Reading.Read<JudgedSplit>) reading).value();
    boolean keepsRules = judged.verdict().keepsRules();
    if (json) {
      console.print(ResultWriter.write(judged));
    } else {
      console.print(new SplitText(units).judged(SplitReport.of(judged), keepsRules));
    }
    boolean fine = keepsRules && !judged.verdict().overCap();
    return (fine ? ExitCode.FINE : ExitCode.OVER_CAP_OR_UNPROVED).number();
  }
}
