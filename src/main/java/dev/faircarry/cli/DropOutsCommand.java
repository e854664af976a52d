package dev.faircarry.cli;

import dev.faircarry.app.IfOneStaysHome;
import dev.faircarry.app.RebalanceText;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.json.Reading;
import dev.faircarry.json.RebalanceExchange;
import dev.faircarry.json.RebalanceWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code drop-outs FILE SPLIT}: what to do if one of the group does not come, for each in turn. */
@Command(
    name = "drop-outs",
    description = "Says what to do if one of the group does not come, for each in turn.")
final class DropOutsCommand implements Callable<Integer> {
  private final IfOneStaysHome useCase;
  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "trip document with everybody; - reads standard input")
  private String file = "";

  @Parameters(
      index = "1",
      paramLabel = "SPLIT",
      description = "split agreed on, a document or a table (.csv); - reads standard input")
  private String split = "";

  @Option(names = "--json", description = "answer as a document instead of lines for a message")
  private boolean json;

  @Option(names = "--effort", paramLabel = "N", description = "search steps to spend on each case")
  private long effortSteps = ServiceLimits.DEFAULT_EFFORT_STEPS;

  DropOutsCommand(IfOneStaysHome useCase, Console console) {
    this.useCase = useCase;
    this.console = console;
  }

  @Override
  public Integer call() {
    SplitCommand.requireEffort(effortSteps);
    if (file.equals("-") && split.equals("-")) {
      throw new BadInput("Only one of FILE and SPLIT can come from standard input.");
    }
    byte[] trip = console.documents().read(file, ServiceLimits.REQUEST_BYTES);
    Reading<List<IfOneStaysHome.Case>> reading =
        RebalanceExchange.dropOuts(trip, console.tables().split(split, trip), useCase, effortSteps);
    if (reading instanceof Reading.Bad<List<IfOneStaysHome.Case>> bad) {
      return console.report(bad, json).number();
    }
    List<IfOneStaysHome.Case> cases = ((Reading.Read<List<IfOneStaysHome.Case>>) reading).value();
    if (json) {
      console.print(RebalanceWriter.write(cases));
    } else {
      console.print(
          cases.stream().map(each -> each.text() + "\n").collect(Collectors.joining("\n")));
    }
    boolean fine = cases.stream().map(IfOneStaysHome.Case::result).allMatch(RebalanceText::fine);
    return (fine ? ExitCode.FINE : ExitCode.OVER_CAP_OR_UNPROVED).number();
  }
}
