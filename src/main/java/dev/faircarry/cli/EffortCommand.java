package dev.faircarry.cli;

import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.WalkingRule;
import dev.faircarry.json.PlanAnswers;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code effort FILE [SPLIT]}: what walking the route costs with those loads. */
@Command(name = "effort", description = "Estimates walking time and metabolic cost by day.")
final class EffortCommand extends PlanCommand {
  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "trip document; - reads standard input")
  private String file = "-";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SPLIT",
      description = "split document; without it only own kits are carried")
  private String split = "";

  @Option(
      names = "--time",
      paramLabel = "RULE",
      description = "naismith, naismith-langmuir (default) or tobler")
  private WalkingRule rule = WalkingRule.NAISMITH_LANGMUIR;

  @Option(names = "--cost", paramLabel = "MODEL", description = "lcda (default) or pandolf-santee")
  private CostModel model = CostModel.LCDA;

  EffortCommand(PlanAnswers answers, Console console) {
    super(answers, console);
  }

  @Override
  public Integer call() {
    return tell(
        answers().efforts(look(file, split, rule, model, false)),
        tables -> tables::effort,
        found -> ExitCode.FINE);
  }
}
