package dev.faircarry.http;

import dev.faircarry.access.OwnPart;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.Visit;
import dev.faircarry.csv.Table;
import dev.faircarry.csv.TableWriter;
import dev.faircarry.csv.TripTables;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Parts of a stored trip as tables: read whole, replaced, or appended to. */
final class StoredTables implements Routes.Resource {
  private static final String TRIP = "/v1/trips/{trip}";

  private final KeptTrips trips;
  private final OnceOnly once;

  StoredTables(KeptTrips trips) {
    this.trips = trips;
    this.once = new OnceOnly(trips);
  }

  /** What has no JSON form at the same address; the rest is negotiated by {@link PartRoutes}. */
  @Override
  public void register(Routes routes) {
    for (String list : List.of("hikers", "shared", "hikers/{hiker}/kit", "kit")) {
      routes.put(TRIP + "/" + list, this::replace);
    }
    routes.get(TRIP + "/kit", this::read).post(TRIP + "/kit", this::append);
  }

  /** Whether the reader of a list would rather have a table. */
  static boolean wanted(Context ctx) {
    ctx.header("Vary", "Accept");
    return Accepting.oneOf(ctx, List.of(Accepting.JSON, Accepting.CSV)).equals(Accepting.CSV);
  }

  /** Whether the body is a table. */
  static boolean sent(Context ctx) {
    return Bodies.kind(ctx).equals(Accepting.CSV);
  }

  void read(Context ctx) {
    Accepting.oneOf(ctx, List.of(Accepting.CSV));
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    Trip seen = visit.sight().of(visit.stored().state().trip());
    Table table = table(ctx);
    Optional<String> kitOf = kitOf(ctx, seen);
    byte[] text =
        kitOf
            .map(hiker -> TableWriter.kitOf(seen, hiker))
            .orElseGet(() -> TableWriter.write(table, seen));
    boolean unchanged = Tags.unchanged(ctx, Tags.ofTable(visit, visit.stored().head()));
    ctx.header("Vary", "Accept, Authorization");
    if (!unchanged) {
      Answers.table(ctx, table, text);
      ctx.header("Cache-Control", "no-store");
    }
  }

  private void replace(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    int expected = Tags.newest(ctx, visit);
    Trip changed = changed(ctx, visit, Bodies.read(ctx, Set.of(Accepting.CSV)), false);
    int revision = Tags.kept(trips.change(visit, expected, changed, "changed " + what(ctx)));
    kept(ctx, visit, revision);
  }

  void append(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    byte[] body = Bodies.read(ctx, Set.of(Accepting.CSV));
    int expected = Tags.expected(ctx, visit);
    OnceOnly.Answer answer =
        once.run(
            ctx,
            "link " + visit.link().id(),
            body,
            in -> {
              Trip changed = changed(ctx, visit, body, true);
              int revision =
                  Tags.kept(in.change(visit, expected, changed, "added to " + what(ctx)));
              ctx.header("ETag", Tags.ofTable(visit, revision));
              return OnceOnly.Answer.of(204, "", new byte[0]);
            });
    ctx.status(answer.status());
  }

  private Trip changed(Context ctx, Visit visit, byte[] body, boolean append) {
    Trip before = visit.stored().state().trip();
    TripTables.Way way = new TripTables.Way(append, visit.sight().hidden(), kitOf(ctx, before));
    Trip after = Problems.valueOf(TripTables.into(before, Map.of(table(ctx), body), way), "");
    boolean own = visit.link().hiker().filter(h -> OwnPart.allows(before, after, h)).isPresent();
    if (!visit.leads() && !own) {
      throw new ProblemException(
          ProblemCode.FORBIDDEN,
          "A leader's link changes everything; a hiker's own name, masses, pack and kit.");
    }
    return after;
  }

  private static void kept(Context ctx, Visit visit, int revision) {
    ctx.header("ETag", Tags.ofTable(visit, revision));
    ctx.status(204);
  }

  private static String what(Context ctx) {
    return String.join("/", PartRoutes.path(ctx));
  }

  private static Table table(Context ctx) {
    List<String> path = PartRoutes.path(ctx);
    return Table.of(path.get(path.size() - 1)).orElseThrow();
  }

  private static Optional<String> kitOf(Context ctx, Trip trip) {
    List<String> path = PartRoutes.path(ctx);
    if (path.size() < 3) {
      return Optional.empty();
    }
    String hiker = path.get(1);
    if (trip.hikers().stream().map(Hiker::id).noneMatch(hiker::equals)) {
      throw new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
    }
    return Optional.of(hiker);
  }
}
