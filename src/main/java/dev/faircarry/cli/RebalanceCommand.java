package dev.faircarry.cli;

import dev.faircarry.app.Rebalance;
import dev.faircarry.app.RebalanceText;
import dev.faircarry.app.Rebalanced;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.json.Reading;
import dev.faircarry.json.RebalanceExchange;
import dev.faircarry.json.RebalanceWriter;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code rebalance FILE SPLIT CHANGES}: who gives what to whom after a change of plans. */
@Command(name = "rebalance", description = "Says who gives what to whom after a change of plans.")
final class RebalanceCommand implements Callable<Integer> {
  private final Rebalance useCase;
  private final Console console;

  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "trip document, before the changes; - reads standard input")
  private String file = "";

  @Parameters(
      index = "1",
      paramLabel = "SPLIT",
      description = "split agreed on, a document or a table (.csv)")
  private String split = "";

  @Parameters(
      index = "2",
      paramLabel = "CHANGES",
      description = "document with \"changes\", \"frozen\", \"maxHandovers\"")
  private String changes = "";

  @Option(names = "--json", description = "answer as a document instead of sentences")
  private boolean json;

  @Option(names = "--effort", paramLabel = "N", description = "search steps to spend")
  private long effortSteps = ServiceLimits.DEFAULT_EFFORT_STEPS;

  RebalanceCommand(Rebalance useCase, Console console) {
    this.useCase = useCase;
    this.console = console;
  }

  @Override
  public Integer call() {
    if (effortSteps < ServiceLimits.MIN_EFFORT_STEPS
        || effortSteps > ServiceLimits.MAX_EFFORT_STEPS) {
      throw new BadInput(
          "--effort is a whole number from "
              + ServiceLimits.MIN_EFFORT_STEPS
              + " to "
              + ServiceLimits.MAX_EFFORT_STEPS
              + ".");
    }
    if (Stream.of(file, split, changes).filter("-"::equals).count() > 1) {
      throw new BadInput("Only one of FILE, SPLIT and CHANGES can come from standard input.");
    }
    byte[] trip = console.documents().read(file, ServiceLimits.REQUEST_BYTES);
    Reading<Rebalanced> reading =
        RebalanceExchange.rebalance(
            trip,
            console.tables().split(split, trip),
            console.documents().read(changes, ServiceLimits.REQUEST_BYTES),
            useCase,
            effortSteps);
    if (reading instanceof Reading.Bad<Rebalanced> bad) {
      return console.report(bad, json).number();
    }
    Rebalanced result = ((Reading.Read<Rebalanced>) reading).value();
    if (json) {
      console.print(RebalanceWriter.write(result));
    } else {
      console.print(RebalanceText.of(result));
    }
    return code(result).number();
  }

  private static ExitCode code(Rebalanced result) {
    if (result instanceof Rebalanced.Impossible) {
      return ExitCode.IMPOSSIBLE;
    }
    return RebalanceText.fine(result) ? ExitCode.FINE : ExitCode.OVER_CAP_OR_UNPROVED;
  }
}
