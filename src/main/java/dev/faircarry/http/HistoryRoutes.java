package dev.faircarry.http;

import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.RevisionLine;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.Visit;
import dev.faircarry.json.DocumentEdit;
import dev.faircarry.json.KeptWriter;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** What was changed by whom, every revision, and the way back to each. */
final class HistoryRoutes implements Routes.Resource {
  private static final String HISTORY = "/v1/trips/{trip}/history";

  private final KeptTrips trips;

  HistoryRoutes(KeptTrips trips) {
    this.trips = trips;
  }

  @Override
  public void register(Routes routes) {
    routes
        .get(HISTORY, this::list)
        .get(HISTORY + "/{number}", this::read)
        .post(HISTORY + "/{number}/undo", this::undo);
  }

  private void list(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx, "before", "limit");
    int before = (int) Parameters.whole(ctx, "before", Integer.MAX_VALUE, 1, Integer.MAX_VALUE);
    int limit = (int) Parameters.whole(ctx, "limit", StoreLimits.PAGE, 1, StoreLimits.PAGE);
    Visit visit = Visits.enter(ctx, trips);
    List<RevisionLine> lines = trips.store().trips().history(visit.stored().id(), before, limit);
    int last = lines.isEmpty() ? 1 : lines.get(lines.size() - 1).number();
    Optional<String> next = last > 1 ? Optional.of(String.valueOf(last)) : Optional.empty();
    Answers.json(ctx, KeptWriter.history(lines, next));
  }

  private void read(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    StoredTrip then = revision(ctx, visit);
    DocumentEdit edit =
        new DocumentEdit(then.state().trip(), KeptTrips.sightOf(visit, then).hidden());
    Answers.json(ctx, edit.part(List.of()).orElseThrow());
  }

  /** Back to the revision of this number, as a new revision. */
  private void undo(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    int expected = Tags.expected(ctx, visit);
    StoredTrip then = revision(ctx, visit);
    int revision = Tags.kept(trips.undo(visit, expected, then));
    ctx.header("ETag", Tags.of(visit, revision));
    ctx.status(204);
  }

  private StoredTrip revision(Context ctx, Visit visit) {
    String number = ctx.pathParam("number");
    return Optional.of(number)
        .filter(text -> text.matches("[1-9][0-9]{0,8}"))
        .map(Integer::parseInt)
        .flatMap(revision -> trips.store().trips().find(visit.stored().id(), revision))
        .orElseThrow(
            () ->
                new ProblemException(
                    ProblemCode.NOT_FOUND, "There is no such revision, or it is erased."));
  }
}
