package dev.faircarry.http;

import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.Visit;
import dev.faircarry.json.PieceSheetWriter;
import dev.faircarry.json.SeenSplit;
import dev.faircarry.json.SplitReader;
import dev.faircarry.split.Split;
import io.javalin.http.Context;

/** What is needed to move pieces of a stored trip about by hand; nothing of it is kept. */
final class ArrangingRoutes implements Routes.Resource {
  private static final String TRIP = "/v1/trips/{trip}";

  private final KeptTrips trips;
  private final JudgeSplit judge;

  ArrangingRoutes(KeptTrips trips, JudgeSplit judge) {
    this.trips = trips;
    this.judge = judge;
  }

  @Override
  public void register(Routes routes) {
    routes.get(TRIP + "/pieces", this::pieces).post(TRIP + "/checks", this::check);
  }

  private void pieces(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    if (!Tags.unchanged(ctx, Tags.of(visit, visit.stored().head()))) {
      Answers.json(ctx, PieceSheetWriter.write(visit.stored().state().trip()));
    }
  }

  /** What the independent check says of a split of the trip as it is now. */
  private void check(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    Split split = Problems.valueOf(SplitReader.read(Bodies.json(ctx)));
    Answers.json(
        ctx, SeenSplit.write(judge.judge(visit.stored().state().trip(), split), visit.sight()));
  }
}
