package dev.faircarry.http;

import dev.faircarry.access.Sight;
import dev.faircarry.app.ChangeResult;
import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.IfOneStaysHome;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.Rebalance;
import dev.faircarry.app.Rebalanced;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SolvePool;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.Visit;
import dev.faircarry.check.Essentials;
import dev.faircarry.json.SeenChange;
import dev.faircarry.json.SeenDeparture;
import dev.faircarry.json.StoredChangeExchange;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.trip.Trip;
import io.javalin.http.Context;

/**
 * Changes of plans and departure checks of stored trips, set against the newest revision and the
 * agreed split; for the leader.
 */
final class StoredChangeRoutes implements Routes.Resource {
  private static final String TRIP = "/v1/trips/{trip}";

  private final KeptTrips trips;
  private final Rebalance rebalance;
  private final CheckDeparture checkDeparture;
  private final SolvePool pool;
  private final OnceOnly once;

  StoredChangeRoutes(
      KeptTrips trips, Rebalance rebalance, CheckDeparture checkDeparture, SolvePool pool) {
    this.trips = trips;
    this.rebalance = rebalance;
    this.checkDeparture = checkDeparture;
    this.pool = pool;
    this.once = new OnceOnly(trips);
  }

  @Override
  public void register(Routes routes) {
    routes
        .post(TRIP + "/rebalances", this::rebalance)
        .post(TRIP + "/drop-outs", this::dropOuts)
        .post(TRIP + "/takers", this::takers)
        .post(TRIP + "/departure-checks", this::departure);
  }

  private StoredSplit agreed(Visit visit) {
    return visit
        .stored()
        .state()
        .agreedSplit()
        .flatMap(id -> trips.store().trips().split(visit.stored().id(), id))
        .orElseThrow(
            () ->
                new ProblemException(
                    ProblemCode.NO_AGREED_SPLIT,
                    "Changes of plans start from the split that the group agreed on."));
  }

  private static Trip trip(Visit visit) {
    return visit.stored().state().trip();
  }

  private void rebalance(Context ctx) {
    Accepting.json(ctx);
    long steps = Parameters.effortSteps(ctx);
    Visit visit = Visits.leader(ctx, trips);
    byte[] body = Bodies.json(ctx);
    var before = once.remembered(ctx, scope(visit), body);
    if (before.isPresent()) {
      OnceOnly.send(ctx, before.get());
      return;
    }
    StoredSplit agreed = agreed(visit);
    StoredChangeExchange.Wanted wanted =
        Problems.valueOf(StoredChangeExchange.wanted(body, trip(visit), agreed.split()));
    if (wanted.statesHidden(visit.sight())) {
      throw new ProblemException(
          ProblemCode.BODY_MASS_HIDDEN, "A hiker keeps this body mass to themselves.");
    }
    int expected = wanted.accept() ? Tags.expected(ctx, visit) : visit.stored().head();
    if (expected != visit.stored().head()) {
      Tags.kept(new ChangeResult.Stale(visit.stored().head()));
    }
    Rebalanced result =
        Problems.valueOf(pool.run(() -> StoredChangeExchange.rebalance(wanted, rebalance, steps)));
    if (wanted.accept() && result instanceof Rebalanced.Found found) {
      OnceOnly.send(
          ctx, once.run(ctx, scope(visit), body, in -> takenOver(ctx, in, visit, expected, found)));
    } else {
      Answers.json(ctx, SeenChange.write(result, visit.sight()));
    }
  }

  private static String scope(Visit visit) {
    return "link " + visit.link().id();
  }

  private static OnceOnly.Answer takenOver(
      Context ctx, KeptTrips in, Visit visit, int expected, Rebalanced.Found found) {
    CurvePoint point = found.curve().points().get(found.chosen());
    KeptTrips.TakenOver taken =
        in.takeOver(visit, expected, found.trip(), point.split(), point.proof());
    ctx.header("ETag", Tags.of(visit, Tags.kept(taken.result())));
    String id = visit.stored().id();
    StoredTrip now = in.store().trips().find(id).orElseThrow();
    StoredSplit kept = in.store().trips().split(id, taken.split()).orElseThrow();
    return OnceOnly.Answer.of(
        201,
        "/v1/trips/" + id + "/splits/" + taken.split(),
        SeenChange.takenOver(found, visit.sight(), now, kept));
  }

  private void dropOuts(Context ctx) {
    Accepting.json(ctx);
    long steps = Parameters.effortSteps(ctx);
    Visit visit = Visits.leader(ctx, trips);
    StoredSplit agreed = agreed(visit);
    IfOneStaysHome useCase = new IfOneStaysHome(rebalance);
    Sight sight = visit.sight();
    Answers.json(
        ctx,
        SeenChange.write(
            pool.run(() -> useCase.cases(trip(visit), agreed.split(), steps, sight.hidden())),
            sight));
  }

  private void takers(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    byte[] body = Bodies.json(ctx);
    StoredSplit agreed = agreed(visit);
    Answers.json(
        ctx,
        Problems.valueOf(
            StoredChangeExchange.takers(body, trip(visit), agreed.split(), visit.sight())));
  }

  /** A body is optional. */
  private void departure(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    boolean none = ctx.header("Transfer-Encoding") == null && ctx.req().getContentLengthLong() <= 0;
    byte[] body = none ? new byte[0] : Bodies.json(ctx);
    Essentials essentials = Problems.valueOf(StoredChangeExchange.essentials(body));
    StoredSplit agreed = agreed(visit);
    CheckDeparture.Asked asked =
        new CheckDeparture.Asked(
            trip(visit),
            agreed.split(),
            trips
                .store()
                .trips()
                .find(visit.stored().id(), agreed.revision())
                .map(then -> then.state().trip()),
            essentials);
    Answers.json(
        ctx,
        pool.run(
            () ->
                SeenDeparture.write(
                    visit.stored(),
                    agreed,
                    checkDeparture.check(
                        asked, ServiceLimits.DEPARTURE_EFFORT_STEPS, visit.sight()),
                    visit.sight())));
  }
}
