package dev.faircarry.http;

import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.IfOneStaysHome;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SolvePool;
import dev.faircarry.json.DepartureExchange;
import dev.faircarry.json.DepartureWriter;
import dev.faircarry.json.RebalanceExchange;
import dev.faircarry.json.RebalanceWriter;
import dev.faircarry.json.WeighInExchange;
import dev.faircarry.json.WeighInWriter;
import io.javalin.http.Context;

/** Changes of plans, answered at once and not kept. */
final class ChangeRoutes implements Routes.Resource {
  private final Rebalance rebalance;
  private final CheckDeparture checkDeparture;
  private final SolvePool pool;

  ChangeRoutes(Rebalance rebalance, CheckDeparture checkDeparture, SolvePool pool) {
    this.rebalance = rebalance;
    this.checkDeparture = checkDeparture;
    this.pool = pool;
  }

  @Override
  public void register(Routes routes) {
    routes
        .post("/v1/rebalances", this::rebalance)
        .post("/v1/drop-outs", this::dropOuts)
        .post("/v1/departure-checks", this::departure)
        .post("/v1/takers", this::takers)
        .post("/v1/weigh-ins", ChangeRoutes::weighIn);
  }

  private void rebalance(Context ctx) {
    Accepting.json(ctx);
    long steps = Parameters.effortSteps(ctx);
    byte[] document = Bodies.json(ctx);
    Answers.json(
        ctx,
        RebalanceWriter.write(
            Problems.valueOf(
                pool.run(() -> RebalanceExchange.rebalance(document, rebalance, steps)))));
  }

  private void departure(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    byte[] document = Bodies.json(ctx);
    Answers.json(
        ctx,
        DepartureWriter.write(
            Problems.valueOf(
                pool.run(
                    () ->
                        DepartureExchange.departure(
                            document, checkDeparture, ServiceLimits.DEPARTURE_EFFORT_STEPS)))));
  }

  private void takers(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Answers.json(ctx, Problems.valueOf(DepartureExchange.takers(Bodies.json(ctx))));
  }

  private static void weighIn(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Answers.json(
        ctx, WeighInWriter.write(Problems.valueOf(WeighInExchange.weighIn(Bodies.json(ctx)))));
  }

  private void dropOuts(Context ctx) {
    Accepting.json(ctx);
    long steps = Parameters.effortSteps(ctx);
    byte[] document = Bodies.json(ctx);
    IfOneStaysHome useCase = new IfOneStaysHome(rebalance);
    Answers.json(
        ctx,
        RebalanceWriter.write(
            Problems.valueOf(
                pool.run(() -> RebalanceExchange.dropOuts(document, useCase, steps)))));
  }
}
