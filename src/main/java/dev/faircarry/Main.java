package dev.faircarry;

import dev.faircarry.app.Checked;
import dev.faircarry.app.ChooseGear;
import dev.faircarry.app.ExplainTrip;
import dev.faircarry.app.Judge;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SolvePool;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.cli.Begun;
import dev.faircarry.cli.CommandParts;
import dev.faircarry.cli.Console;
import dev.faircarry.cli.Faircarry;
import dev.faircarry.config.Settings;
import dev.faircarry.http.HttpOptions;
import dev.faircarry.http.KeptParts;
import dev.faircarry.http.Parts;
import dev.faircarry.http.Server;
import dev.faircarry.json.PlanAnswers;
import dev.faircarry.log.LineEncoder;
import dev.faircarry.solve.AdviceSearch;
import dev.faircarry.solve.RebalanceSolver;
import dev.faircarry.solve.SplitSolver;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Consumer;

/** Wires the program and runs one command. */
public final class Main {
  private static final Judge JUDGE = new Checked();
  private static final PlanAnswers PLAN_ANSWERS =
      new PlanAnswers(new ChooseGear(SplitSolver::solve, JUDGE), JUDGE);

  private Main() {}

  public static void main(String[] arguments) {
    System.exit(run(new Console(System.in, System.out, System.err), arguments));
  }

  /** Runs one command on a console and gives the exit code. */
  public static int run(Console console, String... arguments) {
    return run(console, System.getenv(), arguments);
  }

  /** The same with other variables than those of this process. */
  public static int run(Console console, Map<String, String> environment, String... arguments) {
    Properties build = build();
    SplitTrip splitTrip = new SplitTrip(SplitSolver::solve, JUDGE, System::nanoTime);
    JudgeSplit judgeSplit = new JudgeSplit(JUDGE);
    return new Faircarry(
            new CommandParts(
                splitTrip,
                judgeSplit,
                explain(splitTrip),
                rebalance(),
                PLAN_ANSWERS,
                (settings, demo, begun) ->
                    serve(splitTrip, judgeSplit, build, settings, demo, begun),
                Opening::copy,
                environment,
                build.getProperty("version", "unknown")),
            console)
        .run(arguments);
  }

  /** The service on a port of its own, storing nothing, for whoever embeds it. */
  public static Server server(String host, int port) {
    return server(host, port, Optional.empty());
  }

  private static ExplainTrip explain(SplitTrip splitTrip) {
    return new ExplainTrip(splitTrip, AdviceSearch::of, System::nanoTime);
  }

  private static Rebalance rebalance() {
    return new Rebalance(RebalanceSolver::curve, JUDGE, System::nanoTime);
  }

  /** The same with what stored trips need. */
  public static Server server(String host, int port, Optional<KeptParts> kept) {
    return server(host, port, kept, HttpOptions.STANDARD);
  }

  /** The same with other choices about HTTP. */
  public static Server server(
      String host, int port, Optional<KeptParts> kept, HttpOptions options) {
    SplitTrip splitTrip = new SplitTrip(SplitSolver::solve, JUDGE, System::nanoTime);
    Parts parts = parts(splitTrip, new JudgeSplit(JUDGE), kept, options, build());
    return new Server(parts, host, port);
  }

  private static Parts parts(
      SplitTrip splitTrip,
      JudgeSplit judgeSplit,
      Optional<KeptParts> kept,
      HttpOptions options,
      Properties build) {
    int cores = Runtime.getRuntime().availableProcessors();
    return new Parts(
        splitTrip,
        judgeSplit,
        explain(splitTrip),
        rebalance(),
        PLAN_ANSWERS,
        new SolvePool(cores, ServiceLimits.WAITING_SOLVES),
        kept,
        options,
        build.getProperty("docs", "unknown"),
        build.getProperty("templates", "unknown"));
  }

  private static void serve(
      SplitTrip splitTrip,
      JudgeSplit judgeSplit,
      Properties build,
      Settings settings,
      boolean demo,
      Consumer<Begun> begun) {
    LineEncoder.useJson(settings.log() == Settings.LogForm.JSON);
    Thread ahead = new Thread(Server::loadAhead, "ahead");
    ahead.setDaemon(true);
    ahead.start();
    Serving.untilStopped(
        closing ->
            demo
                ? Demo.open(splitTrip, settings.creationKey(), closing)
                : kept(Keeping.open(settings, splitTrip), closing),
        kept ->
            new Server(
                parts(splitTrip, judgeSplit, Optional.of(kept.parts()), options(settings), build),
                settings.host(),
                settings.port()),
        begun);
  }

  private static Kept kept(Keeping keeping, Closing closing) {
    closing.add(keeping::close);
    return new Kept(keeping.parts(), List.of());
  }

  private static HttpOptions options(Settings settings) {
    return new HttpOptions(
        settings.corsOrigins(),
        settings.requestsPerMinute(),
        settings.behindProxy(),
        settings.metrics());
  }

  private static Properties build() {
    Properties properties = new Properties();
    try (InputStream in = Main.class.getResourceAsStream("/faircarry.properties")) {
      if (in != null) {
        properties.load(in);
      }
    } catch (IOException e) {
      throw new IllegalStateException("cannot read what the build wrote", e);
    }
    return properties;
  }
}
