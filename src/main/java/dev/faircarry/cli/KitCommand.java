package dev.faircarry.cli;

import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.WalkingRule;
import dev.faircarry.json.LookReader;
import dev.faircarry.json.PlanAnswers;
import dev.faircarry.json.Reading;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kit FILE [SPLIT]}: kits and loads looked at. */
@Command(
    name = "kit",
    description = "Looks at kits and loads: weights by morning, drift, cost, goals.")
final class KitCommand extends PlanCommand {
  @Parameters(
      index = "0",
      paramLabel = "FILE",
      description = "trip document; - reads standard input")
  private String file = "-";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SPLIT",
      description = "split document; without it only own kits are looked at")
  private String split = "";

  @Option(
      names = "--plot",
      paramLabel = "loads|makeup",
      description = "an SVG picture instead: loads against targets, or what loads are made of")
  private String plot = "";

  KitCommand(PlanAnswers answers, Console console) {
    super(answers, console);
  }

  @Override
  public Integer call() {
    Reading<LookReader.Look> look =
        look(file, split, WalkingRule.NAISMITH_LANGMUIR, CostModel.LCDA, false);
    return switch (plot.toLowerCase(Locale.ROOT)) {
      case "" -> tell(answers().kitReport(look), tables -> tables::kit, found -> ExitCode.FINE);
      case "loads" -> draw(answers().loadPlot(look));
      case "makeup" -> draw(answers().makeupPlot(look));
      default -> throw new BadInput("--plot is loads or makeup.");
    };
  }
}
