package dev.faircarry.http;

import dev.faircarry.app.ExplainTrip;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.SolvePool;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.csv.SplitTable;
import dev.faircarry.csv.Table;
import dev.faircarry.json.ExplanationWriter;
import dev.faircarry.json.ResultWriter;
import dev.faircarry.json.SplitExchange;
import io.javalin.http.Context;
import java.util.List;

/** Splits and checks that are answered at once and not kept. */
final class SplitRoutes implements Routes.Resource {
  private final SplitTrip splitTrip;
  private final JudgeSplit judgeSplit;
  private final ExplainTrip explainTrip;
  private final SolvePool pool;

  SplitRoutes(SplitTrip splitTrip, JudgeSplit judgeSplit, ExplainTrip explainTrip, SolvePool pool) {
    this.splitTrip = splitTrip;
    this.explainTrip = explainTrip;
    this.judgeSplit = judgeSplit;
    this.pool = pool;
  }

  @Override
  public void register(Routes routes) {
    routes
        .post("/v1/splits", this::split)
        .post("/v1/checks", this::check)
        .post("/v1/explanations", this::explain);
  }

  private void split(Context ctx) {
    ctx.header("Vary", "Accept");
    String kind = Accepting.oneOf(ctx, List.of(Accepting.JSON, Accepting.CSV));
    long effortSteps = Parameters.effortSteps(ctx);
    byte[] trip = Bodies.json(ctx);
    SplitResult result =
        Problems.valueOf(pool.run(() -> SplitExchange.split(trip, splitTrip, effortSteps)));
    // That there is no split is no table; it is told as JSON to everybody.
    if (kind.equals(Accepting.CSV) && result instanceof SplitResult.Found found) {
      Answers.table(ctx, Table.SPLIT, SplitTable.write(found.split(), found.trip()));
    } else {
      Answers.json(ctx, ResultWriter.write(result));
    }
  }

  private void explain(Context ctx) {
    Accepting.json(ctx);
    long effortSteps = Parameters.effortSteps(ctx);
    byte[] trip = Bodies.json(ctx);
    Answers.json(
        ctx,
        ExplanationWriter.write(
            Problems.valueOf(
                pool.run(() -> SplitExchange.explain(trip, explainTrip, effortSteps)))));
  }

  private void check(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    byte[] document = Bodies.json(ctx);
    Answers.json(
        ctx, ResultWriter.write(Problems.valueOf(SplitExchange.check(document, judgeSplit))));
  }
}
