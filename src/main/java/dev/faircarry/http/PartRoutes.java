package dev.faircarry.http;

import dev.faircarry.access.OwnPart;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.Visit;
import dev.faircarry.json.DocumentEdit;
import dev.faircarry.json.DocumentEdit.Edited;
import dev.faircarry.json.Reading;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;

/** The document of a stored trip and its parts: each can be read and changed by itself. */
final class PartRoutes implements Routes.Resource {
  private static final String TRIP = "/v1/trips/{trip}";
  private static final String MERGE_PATCH = "application/merge-patch+json";

  private final KeptTrips trips;
  private final OnceOnly once;
  private final StoredTables tables;

  PartRoutes(KeptTrips trips, StoredTables tables) {
    this.trips = trips;
    this.tables = tables;
    this.once = new OnceOnly(trips);
  }

  @Override
  public void register(Routes routes) {
    routes.put(TRIP, ctx -> change(ctx, replace(ctx))).patch(TRIP, ctx -> change(ctx, merge(ctx)));
    for (String list : List.of("hikers", "shared", "hikers/{hiker}/kit")) {
      routes.get(TRIP + "/" + list, this::listOrTable).post(TRIP + "/" + list, this::addOrAppend);
    }
    routes.get(TRIP + "/rules", this::list).post(TRIP + "/rules", this::add);
    for (String entry :
        List.of("hikers/{hiker}", "shared/{item}", "rules/{rule}", "hikers/{hiker}/kit/{item}")) {
      routes.delete(TRIP + "/" + entry, ctx -> change(ctx, DocumentEdit::remove));
      part(routes, entry);
    }
    part(routes, "policy");
    part(routes, "plan");
  }

  private void part(Routes routes, String part) {
    routes
        .get(TRIP + "/" + part, this::read)
        .put(TRIP + "/" + part, ctx -> change(ctx, replace(ctx)))
        .patch(TRIP + "/" + part, ctx -> change(ctx, merge(ctx)));
  }

  private interface Making extends BiFunction<DocumentEdit, List<String>, Edited> {}

  private static Making replace(Context ctx) {
    return (edit, path) -> edit.replace(path, Bodies.json(ctx));
  }

  private static Making merge(Context ctx) {
    return (edit, path) -> edit.merge(path, Bodies.read(ctx, Set.of(MERGE_PATCH)));
  }

  static DocumentEdit edit(Visit visit) {
    return new DocumentEdit(visit.stored().state().trip(), visit.sight().hidden());
  }

  /** What stands behind the id of the trip in the address. */
  static List<String> path(Context ctx) {
    List<String> path = new ArrayList<>(List.of(ctx.path().split("/", -1)));
    // An empty first step, "v1", "trips" and the id; ids need no escapes.
    return List.copyOf(path.subList(4, path.size()));
  }

  private void read(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    byte[] part = edit(visit).part(path(ctx)).orElseThrow(PartRoutes::nowhere);
    if (!Tags.unchanged(ctx, Tags.of(visit, visit.stored().head()))) {
      Answers.json(ctx, part);
    }
  }

  private void listOrTable(Context ctx) {
    if (StoredTables.wanted(ctx)) {
      tables.read(ctx);
    } else {
      list(ctx);
    }
  }

  private void addOrAppend(Context ctx) {
    if (StoredTables.sent(ctx)) {
      tables.append(ctx);
    } else {
      add(ctx);
    }
  }

  private void list(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx, "after", "limit");
    int limit = (int) Parameters.whole(ctx, "limit", StoreLimits.PAGE, 1, StoreLimits.PAGE);
    Visit visit = Visits.enter(ctx, trips);
    byte[] page =
        edit(visit)
            .page(path(ctx), Optional.ofNullable(ctx.queryParam("after")), limit)
            .orElseThrow(PartRoutes::nowhere);
    if (!Tags.unchanged(ctx, Tags.of(visit, visit.stored().head()))) {
      Answers.json(ctx, page);
    }
  }

  private void add(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    byte[] body = Bodies.json(ctx);
    int expected = Tags.expected(ctx, visit);
    OnceOnly.Answer answer =
        once.run(
            ctx,
            "link " + visit.link().id(),
            body,
            in -> {
              Edited.Done done = done(edit(visit).add(path(ctx), body), visit);
              String what = "added " + String.join("/", done.path());
              int revision = Tags.kept(in.change(visit, expected, done.trip(), what));
              ctx.header("ETag", Tags.of(visit, revision));
              return OnceOnly.Answer.of(
                  201,
                  "/v1/trips/" + visit.stored().id() + "/" + String.join("/", done.path()),
                  seen(visit, done));
            });
    OnceOnly.send(ctx, answer);
  }

  private void change(Context ctx, Making making) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    int expected = Tags.newest(ctx, visit);
    List<String> path = path(ctx);
    Edited.Done done = done(making.apply(edit(visit), path), visit);
    String what =
        (ctx.method().name().equals("DELETE") ? "removed " : "changed ")
            + (path.isEmpty() ? "the trip" : String.join("/", path));
    int revision = Tags.kept(trips.change(visit, expected, done.trip(), what));
    ctx.header("ETag", Tags.of(visit, revision));
    byte[] body = seen(visit, done);
    if (body.length == 0) {
      ctx.status(204);
    } else {
      Answers.json(ctx, body);
    }
  }

  /** What its author sees of a part after a change; nothing of one that was removed. */
  private static byte[] seen(Visit visit, Edited.Done done) {
    return new DocumentEdit(done.trip(), visit.sight().hidden())
        .part(done.path())
        .orElse(new byte[0]);
  }

  private static Edited.Done done(Edited edited, Visit visit) {
    if (edited instanceof Edited.Bad bad) {
      Problems.valueOf(new Reading.Bad<Void>(bad.issues(), bad.more()));
    }
    if (edited instanceof Edited.StatesHidden) {
      throw new ProblemException(
          ProblemCode.BODY_MASS_HIDDEN, "A hiker keeps this body mass to themselves.");
    }
    if (!(edited instanceof Edited.Done done)) {
      throw nowhere();
    }
    StoredTrip stored = visit.stored();
    boolean own =
        visit
            .link()
            .hiker()
            .filter(hiker -> OwnPart.allows(stored.state().trip(), done.trip(), hiker))
            .isPresent();
    if (!visit.leads() && !own) {
      throw new ProblemException(
          ProblemCode.FORBIDDEN,
          "A leader's link changes everything; a hiker's own name, masses, pack and kit.");
    }
    return done;
  }

  private static ProblemException nowhere() {
    return new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
  }
}
