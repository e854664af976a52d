package dev.faircarry.http;

import dev.faircarry.access.Role;
import dev.faircarry.app.KeptReadings;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.StoredReading;
import dev.faircarry.app.Visit;
import dev.faircarry.app.WeighedIn;
import dev.faircarry.csv.ReadingTable;
import dev.faircarry.json.KeptReadingReader;
import dev.faircarry.json.KeptReadingWriter;
import dev.faircarry.trip.Trip;
import dev.faircarry.weigh.ScaleReading;
import io.javalin.http.Context;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Readings of a scale that are kept with their trip, and what they come to. */
final class ReadingRoutes implements Routes.Resource {
  private static final String READINGS = "/v1/trips/{trip}/readings";
  private static final String WEIGH_INS = "/v1/trips/{trip}/weigh-ins";

  private final KeptTrips trips;
  private final OnceOnly once;

  ReadingRoutes(KeptTrips trips) {
    this.trips = trips;
    this.once = new OnceOnly(trips);
  }

  @Override
  public void register(Routes routes) {
    routes
        .get(READINGS, this::list)
        .post(READINGS, this::add)
        .get(WEIGH_INS, this::look)
        .post(WEIGH_INS, this::weighIn);
  }

  private void list(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx, "before", "limit");
    int limit = (int) Parameters.whole(ctx, "limit", StoreLimits.PAGE, 1, StoreLimits.PAGE);
    Visit visit = Visits.enter(ctx, trips);
    List<StoredReading> found =
        trips
            .store()
            .readings()
            .page(visit.stored().id(), Optional.ofNullable(ctx.queryParam("before")), limit + 1);
    List<StoredReading> page = found.subList(0, Math.min(limit, found.size()));
    Optional<String> next =
        found.size() > limit ? Optional.of(page.get(limit - 1).id()) : Optional.empty();
    Answers.json(ctx, KeptReadingWriter.page(page, next));
  }

  private void add(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    byte[] body = Bodies.read(ctx, new LinkedHashSet<>(List.of(Accepting.JSON, Accepting.CSV)));
    boolean table = Bodies.kind(ctx).equals(Accepting.CSV);
    OnceOnly.send(
        ctx, once.run(ctx, "link " + visit.link().id(), body, in -> added(in, visit, body, table)));
  }

  private static OnceOnly.Answer added(KeptTrips in, Visit visit, byte[] body, boolean table) {
    Trip trip = visit.stored().state().trip();
    List<ScaleReading> readings =
        table
            ? Problems.valueOf(ReadingTable.read(body, trip), "")
            : Problems.valueOf(KeptReadingReader.readings(body, trip));
    boolean own =
        visit.role() == Role.HIKER
            && readings.stream()
                .allMatch(r -> r.weighed().of().map(visit.link()::isOf).orElse(true));
    if (!visit.leads() && !own) {
      throw new ProblemException(
          ProblemCode.FORBIDDEN,
          "A leader's link adds readings of everything; a hiker's of the own things and of shared"
              + " ones.");
    }
    List<StoredReading> kept =
        new KeptReadings(in)
            .add(visit, readings)
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.LIMIT_REACHED,
                        "A trip keeps at most " + StoreLimits.READINGS_PER_TRIP + " readings."));
    return OnceOnly.Answer.of(
        201,
        "/v1/trips/" + visit.stored().id() + "/readings",
        KeptReadingWriter.page(kept, Optional.empty()));
  }

  /** What the readings come to, with the default tolerance. */
  private void look(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    if (!Tags.unchanged(ctx, Tags.of(visit, visit.stored().head()))) {
      answer(ctx, visit, weigh(visit, KeptReadingReader.LOOK));
    }
  }

  /** With a tolerance of one's own; what is to be accepted makes a new revision. */
  private void weighIn(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    KeptReadingReader.Wanted wanted = Problems.valueOf(KeptReadingReader.wanted(Bodies.json(ctx)));
    if (!wanted.accepts()) {
      answer(ctx, visit, weigh(visit, wanted));
      return;
    }
    Visit leader = Visits.leader(ctx, trips);
    int expected = Tags.expected(ctx, leader);
    KeptReadings.Weighing weighing = weigh(leader, wanted);
    WeighedIn.Told told = told(weighing);
    int revision =
        Tags.kept(
            trips.change(
                leader, expected, told.accepted().orElseThrow().trip(), "readings accepted"));
    ctx.header("ETag", Tags.of(leader, revision));
    answer(ctx, leader, weighing);
  }

  private KeptReadings.Weighing weigh(Visit visit, KeptReadingReader.Wanted wanted) {
    return new KeptReadings(trips).weigh(visit, wanted.tolerance(), wanted.accept());
  }

  private static WeighedIn.Told told(KeptReadings.Weighing weighing) {
    return Problems.valueOf(KeptReadingReader.told(weighing.answer()));
  }

  private static void answer(Context ctx, Visit visit, KeptReadings.Weighing weighing) {
    Answers.json(
        ctx, KeptReadingWriter.weighIn(told(weighing), weighing.notCounted(), visit.sight()));
  }
}
