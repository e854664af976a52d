package dev.faircarry.cli;

import dev.faircarry.json.PlanAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code provision FILE}: food, fuel and water from the plan of a trip. */
@Command(name = "provision", description = "Works out food, fuel and water from the trip's plan.")
final class ProvisionCommand extends PlanCommand {
  @Parameters(paramLabel = "FILE", description = "trip document; - reads standard input")
  private String file = "-";

  ProvisionCommand(PlanAnswers answers, Console console) {
    super(answers, console);
  }

  @Override
  public Integer call() {
    return tell(
        answers().provisions(read(file)), tables -> tables::provision, found -> ExitCode.FINE);
  }
}
