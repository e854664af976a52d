package dev.faircarry.cli;

import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.IfOneStaysHome;
import dev.faircarry.config.Setting;
import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.WalkingRule;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line as a whole. */
@Command(
    name = "faircarry",
    description = "Divides shared hiking gear fairly, and shows that it is fair.",
    footer = {
      "",
      "Exit codes: 0 fine, 1 over a cap, breaking rules, not ready or not proved, 2 impossible,"
          + " 3 bad input, 4 internal."
    })
public final class Faircarry implements Callable<Integer> {
  private static final Logger LOG = LoggerFactory.getLogger(Faircarry.class);

  private final Console console;
  private final CommandLine commands;

  public Faircarry(CommandParts parts, Console console) {
    this.console = console;
    SettingFlags serving = new SettingFlags(parts.environment());
    SettingFlags copying = new SettingFlags(parts.environment());
    this.commands =
        new CommandLine(this)
            .addSubcommand(new SplitCommand(parts.splitTrip(), console))
            .addSubcommand(new ExplainCommand(parts.explainTrip(), console))
            .addSubcommand(
                new CheckCommand(
                    parts.judgeSplit(), new CheckDeparture(parts.splitTrip()), console))
            .addSubcommand(new RebalanceCommand(parts.rebalance(), console))
            .addSubcommand(new DropOutsCommand(new IfOneStaysHome(parts.rebalance()), console))
            .addSubcommand(new WeighInCommand(console))
            .addSubcommand(new ProvisionCommand(parts.planAnswers(), console))
            .addSubcommand(new KitCommand(parts.planAnswers(), console))
            .addSubcommand(new EffortCommand(parts.planAnswers(), console))
            .addSubcommand(new TakeCommand(parts.planAnswers(), console))
            .addSubcommand(new TableCommand(console))
            .addSubcommand(new TripCommand(console))
            .addSubcommand(
                copying.added(
                    new CommandLine(new BackupCommand(parts.copying(), copying, console)),
                    List.of(Setting.DATABASE_FILE)))
            .addSubcommand(
                serving.added(
                    new CommandLine(new ServeCommand(parts.service(), serving, console)),
                    List.of(Setting.values())))
            .addSubcommand(new VersionCommand(parts.version(), console))
            .setCaseInsensitiveEnumValuesAllowed(true)
            .registerConverter(WalkingRule.class, word(WalkingRule.values(), WalkingRule::text))
            .registerConverter(CostModel.class, word(CostModel.values(), CostModel::text))
            .setParameterExceptionHandler(this::badCommandLine)
            .setExecutionExceptionHandler(this::failed);
    commands
        .getSubcommands()
        .values()
        .forEach(command -> command.getCommandSpec().mixinStandardHelpOptions(false));
  }

  /** Runs one command and gives the exit code. */
  public int run(String... arguments) {
    return commands.execute(arguments);
  }

  /** Without a command: what there is, and a script that forgot the command should notice. */
  @Override
  public Integer call() {
    console.complain(usage(commands));
    return ExitCode.BAD_INPUT.number();
  }

  private int badCommandLine(CommandLine.ParameterException e, String[] arguments) {
    console.complain(String.valueOf(e.getMessage()));
    console.complain(usage(e.getCommandLine()));
    return ExitCode.BAD_INPUT.number();
  }

  private int failed(Exception e, CommandLine command, CommandLine.ParseResult parsed) {
    if (e instanceof BadInput) {
      console.complain(String.valueOf(e.getMessage()));
      return ExitCode.BAD_INPUT.number();
    }
    if (e instanceof BadTable bad) {
      boolean json =
          command.getCommandSpec().findOption("--json") != null
              && command.getParseResult().hasMatchedOption("--json");
      return console.report(bad.issues(), bad.more(), json).number();
    }
    LOG.error("failed: {}", e.getClass().getName());
    console.complain("Something went wrong inside the program.");
    return ExitCode.INTERNAL.number();
  }

  /** Reads the words that documents use, which are not those of Java. */
  private static <E> CommandLine.ITypeConverter<E> word(E[] values, Function<E, String> text) {
    return stated -> {
      for (E value : values) {
        if (text.apply(value).equals(stated)) {
          return value;
        }
      }
      throw new CommandLine.TypeConversionException(
          "use one of " + Stream.of(values).map(text).collect(Collectors.joining(", ")) + ".");
    };
  }

  private static String usage(CommandLine command) {
    StringWriter text = new StringWriter();
    command.usage(new PrintWriter(text));
    return text.toString();
  }
}
