package dev.faircarry.http;

import dev.faircarry.access.Role;
import dev.faircarry.app.Job;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.Visit;
import dev.faircarry.csv.SplitTable;
import dev.faircarry.csv.Table;
import dev.faircarry.json.KeptReader;
import dev.faircarry.json.KeptWriter;
import dev.faircarry.json.SeenSplit;
import dev.faircarry.json.SplitReader;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Splits that are kept with their trip: searched for, made by hand, read, agreed on. */
final class StoredSplitRoutes implements Routes.Resource {
  private static final String TRIP = "/v1/trips/{trip}";

  private final KeptTrips trips;
  private final JudgeSplit judge;
  private final Waiting waiting;
  private final OnceOnly once;

  StoredSplitRoutes(KeptTrips trips, JudgeSplit judge, Waiting waiting) {
    this.trips = trips;
    this.judge = judge;
    this.waiting = waiting;
    this.once = new OnceOnly(trips);
  }

  @Override
  public void register(Routes routes) {
    routes
        .get(TRIP + "/splits", this::list)
        .post(TRIP + "/splits", this::make)
        .get(TRIP + "/splits/{split}", this::read)
        .put(TRIP + "/agreed-split", this::agree)
        .delete(TRIP + "/agreed-split", this::disagree);
  }

  private void list(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx, "before", "limit");
    int limit = (int) Parameters.whole(ctx, "limit", StoreLimits.PAGE, 1, StoreLimits.PAGE);
    Visit visit = Visits.enter(ctx, trips);
    List<StoredSplit> splits =
        trips
            .store()
            .trips()
            .splits(visit.stored().id(), Optional.ofNullable(ctx.queryParam("before")), limit + 1);
    List<StoredSplit> page = splits.subList(0, Math.min(limit, splits.size()));
    Optional<String> next =
        splits.size() > limit ? Optional.of(page.get(limit - 1).id()) : Optional.empty();
    Answers.json(ctx, KeptWriter.splits(visit.stored(), page, next));
  }

  /** A body is a split made by hand; without one, the fairest is searched for. */
  private void make(Context ctx) {
    Accepting.json(ctx);
    long effortSteps = Parameters.effortSteps(ctx);
    Visit visit = Visits.enter(ctx, trips);
    if (visit.role() == Role.VIEWER) {
      throw new ProblemException(ProblemCode.FORBIDDEN, "A viewer's link only looks.");
    }
    if (ctx.req().getContentType() == null && ctx.req().getContentLengthLong() <= 0) {
      search(ctx, visit, effortSteps);
    } else {
      byHand(ctx, visit);
    }
  }

  private void byHand(Context ctx, Visit visit) {
    byte[] body = Bodies.read(ctx, new LinkedHashSet<>(List.of(Accepting.JSON, Accepting.CSV)));
    Trip trip = visit.stored().state().trip();
    Split made =
        Bodies.kind(ctx).equals(Accepting.CSV)
            ? Problems.valueOf(SplitTable.read(body, trip.hikers()), "")
            : Problems.valueOf(SplitReader.read(body));
    JudgedSplit judged = judge.judge(trip, made);
    Split split = judged.split();
    if (!judged.verdict().keepsRules()) {
      throw new ProblemException(
          ProblemCode.SPLIT_BREAKS_RULES,
          "Ask /v1/checks which; a split that is kept keeps all hard rules.");
    }
    OnceOnly.send(
        ctx,
        once.run(
            ctx,
            "link " + visit.link().id(),
            body,
            in -> {
              String id = in.addSplit(visit, split, Optional.empty());
              // None is kept for a trip that is deleted or was erased meanwhile.
              StoredSplit kept =
                  in.store().trips().split(visit.stored().id(), id).orElseThrow(Visits::nothing);
              return OnceOnly.Answer.of(
                  201,
                  "/v1/trips/" + visit.stored().id() + "/splits/" + id,
                  SeenSplit.write(
                      visit.stored(),
                      kept,
                      visit.stored().state().trip(),
                      judged.verdict(),
                      visit.sight()));
            }));
  }

  private void search(Context ctx, Visit visit, long effortSteps) {
    String trip = visit.stored().id();
    byte[] request = Long.toString(effortSteps).getBytes(StandardCharsets.UTF_8);
    OnceOnly.Answer asked =
        once.run(
            ctx,
            "link " + visit.link().id(),
            request,
            in -> {
              Job job =
                  in.ask(visit, effortSteps)
                      .orElseThrow(
                          () ->
                              new ProblemException(
                                      ProblemCode.BUSY, "The queue of searches is full.")
                                  .with(
                                      "Retry-After",
                                      String.valueOf(ServiceLimits.RETRY_AFTER_SECONDS)));
              return OnceOnly.Answer.of(
                  202,
                  "/v1/trips/" + trip + "/solves/" + job.id(),
                  KeptWriter.job(job, visit.sight()));
            });
    String id = asked.location().substring(asked.location().lastIndexOf('/') + 1);
    Optional<Job> over = waiting.forJob(ctx, trip, id);
    if (over.flatMap(Job::outcome).isEmpty()) {
      ctx.header("Retry-After", "1");
      OnceOnly.send(ctx, asked);
      return;
    }
    answer(ctx, visit, over.get());
  }

  /** What came of a solve, as the answer to its being asked for. */
  private void answer(Context ctx, Visit visit, Job job) {
    Optional<StoredSplit> split = trips.store().trips().split(job.trip(), job.id());
    if (split.isPresent()) {
      ctx.status(201);
      ctx.header("Location", "/v1/trips/" + job.trip() + "/splits/" + job.id());
      Answers.json(ctx, seen(visit, split.get()));
    } else {
      Answers.json(ctx, noSplit(trips, visit, job));
    }
  }

  /** The answer about a solve that is over and found no split. */
  static byte[] noSplit(KeptTrips trips, Visit visit, Job job) {
    StoredTrip then = answered(trips, job.trip(), job.revision());
    return SeenSplit.write(none(then.state().trip(), job), KeptTrips.sightOf(visit, then));
  }

  private static SplitResult none(Trip trip, Job job) {
    Outcome outcome = job.outcome().orElseThrow();
    if (outcome instanceof Outcome.Impossible no) {
      return new SplitResult.Impossible(trip, no.conflict(), no.irreducible(), no.effortSteps());
    }
    if (outcome instanceof Outcome.Undecided open) {
      return new SplitResult.Undecided(trip, open.effortSteps(), open.cutByClock());
    }
    throw new ProblemException(ProblemCode.NOT_FOUND, "The split is erased.");
  }

  private void read(Context ctx) {
    ctx.header("Vary", "Accept");
    String kind = Accepting.oneOf(ctx, List.of(Accepting.JSON, Accepting.CSV));
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    StoredSplit split =
        trips
            .store()
            .trips()
            .split(visit.stored().id(), ctx.pathParam("split"))
            .orElseThrow(StoredSplitRoutes::nowhere);
    if (kind.equals(Accepting.CSV)) {
      Trip trip = answered(trips, split.trip(), split.revision()).state().trip();
      Answers.table(ctx, Table.SPLIT, SplitTable.write(split.split(), trip));
    } else {
      Answers.json(ctx, seen(visit, split));
    }
  }

  private byte[] seen(Visit visit, StoredSplit split) {
    StoredTrip answered = answered(trips, split.trip(), split.revision());
    JudgedSplit judged = judge.judge(answered.state().trip(), split.split());
    return SeenSplit.write(
        visit.stored(),
        split,
        answered.state().trip(),
        judged.verdict(),
        KeptTrips.sightOf(visit, answered));
  }

  /** The trip as it was when a split of it was asked for. */
  static StoredTrip answered(KeptTrips trips, String trip, int revision) {
    return trips.store().trips().find(trip, revision).orElseThrow(StoredSplitRoutes::nowhere);
  }

  private void agree(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    int expected = Tags.expected(ctx, visit);
    String split = Problems.valueOf(KeptReader.agreed(Bodies.json(ctx)));
    if (trips.store().trips().split(visit.stored().id(), split).isEmpty()) {
      throw new ProblemException(ProblemCode.INVALID_DOCUMENT, "No split has this id.");
    }
    kept(ctx, visit, Tags.kept(trips.agree(visit, expected, Optional.of(split))));
  }

  private void disagree(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    int expected = Tags.expected(ctx, visit);
    kept(ctx, visit, Tags.kept(trips.agree(visit, expected, Optional.empty())));
  }

  private static void kept(Context ctx, Visit visit, int revision) {
    ctx.header("ETag", Tags.of(visit, revision));
    ctx.status(204);
  }

  private static ProblemException nowhere() {
    return new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
  }
}
