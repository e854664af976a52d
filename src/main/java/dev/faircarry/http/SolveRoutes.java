package dev.faircarry.http;

import dev.faircarry.access.Role;
import dev.faircarry.access.Sight;
import dev.faircarry.app.Job;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.Visit;
import dev.faircarry.json.KeptWriter;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/**
 * Solves that go on behind the caller's back: where they stand, as events too, and to stop them.
 */
final class SolveRoutes implements Routes.Resource {
  private static final String SOLVE = "/v1/trips/{trip}/solves/{solve}";
  private static final String EVENTS = "text/event-stream";

  private final KeptTrips trips;
  private final SolveEvents events;

  SolveRoutes(KeptTrips trips, SolveEvents events) {
    this.trips = trips;
    this.events = events;
  }

  @Override
  public void register(Routes routes) {
    routes
        .get(SOLVE, this::read)
        .get(SOLVE + "/events", this::follow)
        .post(SOLVE + "/stop", this::stop);
  }

  private void read(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    Job job = job(ctx, visit);
    if (trips.store().trips().split(job.trip(), job.id()).isPresent()) {
      ctx.header("Location", "/v1/trips/" + job.trip() + "/splits/" + job.id());
    } else if (!job.over()) {
      ctx.header("Retry-After", "1");
    } else if (job.state() == Job.State.DONE) {
      Answers.json(ctx, StoredSplitRoutes.noSplit(trips, visit, job));
      return;
    }
    Answers.json(ctx, KeptWriter.job(job, sight(visit, job)));
  }

  private void follow(Context ctx) {
    Accepting.oneOf(ctx, List.of(EVENTS));
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    Job job = job(ctx, visit);
    events.follow(ctx, job, sight(visit, job));
  }

  private void stop(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    if (visit.role() == Role.VIEWER) {
      throw new ProblemException(ProblemCode.FORBIDDEN, "A viewer's link only looks.");
    }
    Job job = job(ctx, visit);
    trips.store().jobs().stop(job.trip(), job.id());
    ctx.status(202);
    Answers.json(ctx, KeptWriter.job(job(ctx, visit), sight(visit, job)));
  }

  private Sight sight(Visit visit, Job job) {
    return KeptTrips.sightOf(visit, StoredSplitRoutes.answered(trips, job.trip(), job.revision()));
  }

  private Job job(Context ctx, Visit visit) {
    Optional<Job> job = trips.store().jobs().find(visit.stored().id(), ctx.pathParam("solve"));
    return job.orElseThrow(
        () -> new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address."));
  }
}
