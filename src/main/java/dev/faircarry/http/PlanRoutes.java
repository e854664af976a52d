package dev.faircarry.http;

import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SolvePool;
import dev.faircarry.json.LookReader;
import dev.faircarry.json.PlanAnswers;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The rest of the trip around the split: food, fuel and water, kits looked at, what to take,
 * effort. Answered at once and not kept.
 */
final class PlanRoutes implements Routes.Resource {
  private static final String SVG = "image/svg+xml";
  private static final String PLOT = "plot";
  private static final String LOADS = "loads";
  private static final String MAKEUP = "makeup";

  private final PlanAnswers answers;
  private final SolvePool pool;

  PlanRoutes(PlanAnswers answers, SolvePool pool) {
    this.answers = answers;
    this.pool = pool;
  }

  @Override
  public void register(Routes routes) {
    routes
        .post("/v1/provisions", this::provisions)
        .post("/v1/kit-reports", this::kitReport)
        .post("/v1/choices", this::choice)
        .post("/v1/efforts", this::effort);
  }

  private void provisions(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Answers.json(ctx, Problems.valueOf(answers.provisions(Bodies.json(ctx))).body());
  }

  private void kitReport(Context ctx) {
    String kind = Accepting.oneOf(ctx, List.of(Accepting.JSON, SVG));
    Parameters.known(ctx, PLOT);
    String plot = Parameters.word(ctx, PLOT, List.of(LOADS, MAKEUP));
    byte[] body = Bodies.json(ctx);
    ctx.header("Vary", "Accept");
    if (kind.equals(Accepting.JSON)) {
      Answers.json(ctx, Problems.valueOf(answers.kitReport(LookReader.read(body))).body());
      return;
    }
    Answers.bytes(
        ctx,
        SVG,
        Problems.valueOf(
            plot.equals(LOADS)
                ? answers.loadPlot(LookReader.read(body))
                : answers.makeupPlot(LookReader.read(body))));
    ctx.header("Cache-Control", "no-store");
  }

  private void choice(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx, "effort");
    long steps =
        Parameters.whole(ctx, "effort", PlanAnswers.CHOICE_STEPS, 1, PlanAnswers.MAX_CHOICE_STEPS);
    byte[] body = Bodies.json(ctx);
    Answers.json(
        ctx,
        Problems.valueOf(
                pool.run(
                    () ->
                        answers.choice(
                            LookReader.read(body),
                            steps,
                            ServiceLimits.DEFAULT_EFFORT_STEPS,
                            clock())))
            .body());
  }

  private void effort(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Answers.json(ctx, Problems.valueOf(answers.efforts(LookReader.read(Bodies.json(ctx)))).body());
  }

  private static BooleanSupplier clock() {
    long end = System.nanoTime() + ServiceLimits.CLOCK_SECONDS * 1_000_000_000L;
    return () -> System.nanoTime() - end >= 0;
  }
}
