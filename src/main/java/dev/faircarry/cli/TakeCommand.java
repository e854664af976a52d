package dev.faircarry.cli;

import dev.faircarry.app.ChooseGear;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.choose.Answer;
import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.WalkingRule;
import dev.faircarry.json.PlanAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code take FILE}: what to take and what to leave. */
@Command(
    name = "take",
    description = "Chooses what to take: every choice that no other beats in mass and money.")
final class TakeCommand extends PlanCommand {
  @Parameters(paramLabel = "FILE", description = "trip document; - reads standard input")
  private String file = "-";

  @Option(
      names = "--with-splits",
      description = "also show the worst load of the fairest split before and after")
  private boolean withSplits;

  @Option(names = "--effort", paramLabel = "N", description = "search steps to spend")
  private long steps = PlanAnswers.CHOICE_STEPS;

  TakeCommand(PlanAnswers answers, Console console) {
    super(answers, console);
  }

  @Override
  public Integer call() {
    if (steps < 1 || steps > PlanAnswers.MAX_CHOICE_STEPS) {
      throw new BadInput(
          "--effort is a whole number from 1 to " + PlanAnswers.MAX_CHOICE_STEPS + ".");
    }
    long end = System.nanoTime() + ServiceLimits.CLOCK_SECONDS * 1_000_000_000L;
    return tell(
        answers()
            .choice(
                look(file, "", WalkingRule.NAISMITH_LANGMUIR, CostModel.LCDA, withSplits),
                steps,
                ServiceLimits.DEFAULT_EFFORT_STEPS,
                () -> System.nanoTime() - end >= 0),
        tables -> tables::choice,
        TakeCommand::code);
  }

  private static ExitCode code(ChooseGear.Found found) {
    if (found.answer() instanceof Answer.Choices choices) {
      if (choices.chosen().isEmpty()) {
        return ExitCode.IMPOSSIBLE;
      }
      return choices.complete() ? ExitCode.FINE : ExitCode.OVER_CAP_OR_UNPROVED;
    }
    return found.answer() instanceof Answer.Unmeetable
        ? ExitCode.IMPOSSIBLE
        : ExitCode.OVER_CAP_OR_UNPROVED;
  }
}
