package dev.faircarry.http;

import dev.faircarry.access.Role;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.Visit;
import dev.faircarry.json.KeptReader;
import dev.faircarry.json.KeptWriter;
import dev.faircarry.json.TripExport;
import dev.faircarry.json.TripReader;
import dev.faircarry.trip.Trip;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;

/** Stored trips as a whole: making, reading, deleting, exporting, erasing. */
final class TripRoutes implements Routes.Resource {
  private static final String TRIP = "/v1/trips/{trip}";

  private final KeptTrips trips;
  private final Optional<String> creationKey;
  private final OnceOnly once;
  private final WrittenTrips written = new WrittenTrips();

  /**
   * @param creationKey what must be known to make a trip; empty if everybody may
   */
  TripRoutes(KeptTrips trips, Optional<String> creationKey) {
    this.trips = trips;
    this.creationKey = creationKey;
    this.once = new OnceOnly(trips);
  }

  @Override
  public void register(Routes routes) {
    routes
        .post("/v1/trips", this::create)
        .get(TRIP, this::read)
        .delete(TRIP, this::delete)
        .get(TRIP + "/state", this::state)
        .post(TRIP + "/restore", this::restore)
        .post(TRIP + "/erase", this::erase)
        .get(TRIP + "/export", this::export)
        .get(TRIP + "/hikers/{hiker}/export", this::exportHiker)
        .post(TRIP + "/hikers/{hiker}/erase", this::eraseHiker)
        .put(TRIP + "/hikers/{hiker}/privacy", this::privacy);
  }

  private void create(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    String payer = payer(ctx);
    byte[] body = Bodies.json(ctx);
    Trip trip = Problems.valueOf(TripReader.read(body));
    OnceOnly.Answer answer = once.run(ctx, "create " + payer, body, in -> created(in, trip, payer));
    if (answer.body().length == 0) {
      // Done before, and of its link only the hash is left: its maker gets another.
      String id = answer.location().substring(answer.location().lastIndexOf('/') + 1);
      KeptTrips.Issued link = trips.issue(id, Role.LEADER, Optional.empty(), Optional.empty());
      answer =
          OnceOnly.Answer.of(
              201, answer.location(), KeptWriter.created(id, link.link(), link.token()));
    }
    OnceOnly.send(ctx, answer);
  }

  private static OnceOnly.Answer created(KeptTrips in, Trip trip, String payer) {
    KeptTrips.Issued made =
        in.create(trip, payer)
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.LIMIT_REACHED,
                        "At most " + StoreLimits.TRIPS_PER_KEY + " trips are kept for one key."));
    String id = made.link().trip();
    return new OnceOnly.Answer(
        201, "/v1/trips/" + id, new byte[0], KeptWriter.created(id, made.link(), made.token()));
  }

  /** Whose trip it will be; the wrong key is answered like a wrong address. */
  private String payer(Context ctx) {
    if (creationKey.isEmpty()) {
      return "open";
    }
    byte[] sent = Visits.bearer(ctx).orElse("").getBytes(StandardCharsets.UTF_8);
    if (!MessageDigest.isEqual(sent, creationKey.get().getBytes(StandardCharsets.UTF_8))) {
      throw new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
    }
    return "key";
  }

  private void read(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    if (!Tags.unchanged(ctx, Tags.of(visit, visit.stored().head()))) {
      Answers.json(ctx, written.of(visit));
    }
  }

  private void state(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    ctx.header("ETag", Tags.of(visit, visit.stored().head()));
    Answers.json(ctx, KeptWriter.state(visit));
  }

  private void delete(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    Tags.kept(trips.delete(visit, Tags.expected(ctx, visit)));
    Answers.json(ctx, KeptWriter.eraseAt(trips.now().plus(StoreLimits.ERASE_AFTER)));
  }

  private void restore(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    trips.store().trips().restore(visit.stored().id());
    state(ctx);
  }

  private void erase(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    Tags.kept(trips.erase(visit, Tags.expected(ctx, visit)));
    ctx.status(204);
  }

  private void export(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    Answers.json(ctx, TripExport.trip(trips.store(), visit));
  }

  private void exportHiker(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    String hiker = ctx.pathParam("hiker");
    Visit visit = Visits.leaderOr(ctx, trips, hiker);
    Answers.json(ctx, TripExport.hiker(trips.store(), visit, hiker));
  }

  private void eraseHiker(Context ctx) {
    Parameters.known(ctx);
    String hiker = ctx.pathParam("hiker");
    Visit visit = Visits.leaderOr(ctx, trips, hiker);
    int expected = Tags.expected(ctx, visit);
    Trip trip = visit.stored().state().trip();
    if (trip.hikers().stream().noneMatch(h -> h.id().equals(hiker))) {
      throw new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
    }
    if (trip.hikers().size() == 1) {
      throw new ProblemException(ProblemCode.LAST_HIKER, "A trip has at least one hiker.");
    }
    Tags.kept(trips.eraseHiker(visit, expected, hiker));
    ctx.status(204);
  }

  private void privacy(Context ctx) {
    Parameters.known(ctx);
    String hiker = ctx.pathParam("hiker");
    Visit visit = Visits.enter(ctx, trips);
    if (!visit.link().isOf(hiker)) {
      throw new ProblemException(ProblemCode.FORBIDDEN, "Only the hiker's own link may do that.");
    }
    int expected = Tags.expected(ctx, visit);
    boolean on = Problems.valueOf(KeptReader.bodyMassPrivate(Bodies.json(ctx)));
    boolean isPrivate = visit.stored().state().keptPrivate().contains(hiker);
    if ((on || isPrivate) && !visit.link().own()) {
      throw new ProblemException(
          ProblemCode.LINK_NOT_OWN, "The leader made this link and could use it too.");
    }
    int revision = Tags.kept(trips.keepPrivate(visit, expected, hiker, on));
    ctx.header("ETag", Tags.of(visit, revision));
    ctx.status(204);
  }
}
