package dev.faircarry.http;

import dev.faircarry.access.Role;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.Visit;
import dev.faircarry.json.KeptReader;
import dev.faircarry.json.KeptWriter;
import io.javalin.http.Context;

/**
 * The links of a trip; its leader sees, makes and revokes them. A hiker can make links of their
 * own, which the leader has not seen.
 */
final class LinkRoutes implements Routes.Resource {
  private static final String LINKS = "/v1/trips/{trip}/links";

  private final KeptTrips trips;
  private final OnceOnly once;

  LinkRoutes(KeptTrips trips) {
    this.trips = trips;
    this.once = new OnceOnly(trips);
  }

  @Override
  public void register(Routes routes) {
    routes.get(LINKS, this::list).post(LINKS, this::issue).delete(LINKS + "/{link}", this::revoke);
  }

  private void list(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    Answers.json(ctx, KeptWriter.links(trips.store().links().of(visit.stored().id())));
  }

  private void issue(Context ctx) {
    Accepting.json(ctx);
    Parameters.known(ctx);
    Visit visit = Visits.enter(ctx, trips);
    byte[] body = Bodies.json(ctx);
    KeptReader.WantedLink wanted = Problems.valueOf(KeptReader.link(body));
    boolean stranger =
        wanted.role() == Role.HIKER
            && visit.stored().state().trip().hikers().stream()
                .noneMatch(h -> wanted.hiker().filter(h.id()::equals).isPresent());
    if (stranger) {
      throw new ProblemException(ProblemCode.INVALID_DOCUMENT, "No hiker of the trip has this id.");
    }
    if (!visit.leads()) {
      requireOwn(visit, wanted);
    }
    OnceOnly.Answer answer =
        once.run(ctx, "link " + visit.link().id(), body, in -> issued(in, visit, wanted));
    if (answer.body().length == 0) {
      // Done before, and of the link only the hash is left: another one does the same.
      answer = issued(trips, visit, wanted);
    }
    OnceOnly.send(ctx, answer);
  }

  private static OnceOnly.Answer issued(KeptTrips in, Visit visit, KeptReader.WantedLink wanted) {
    String trip = visit.stored().id();
    if (in.store().links().of(trip).size() >= StoreLimits.LINKS_PER_TRIP) {
      throw new ProblemException(
          ProblemCode.LIMIT_REACHED,
          "A trip has at most " + StoreLimits.LINKS_PER_TRIP + " links.");
    }
    KeptTrips.Issued made =
        visit.leads()
            ? in.issue(trip, wanted.role(), wanted.hiker(), wanted.lasts())
            : in.issueOwn(visit, wanted.lasts());
    return new OnceOnly.Answer(
        201,
        "/v1/trips/" + trip + "/links/" + made.link().id(),
        new byte[0],
        KeptWriter.issued(made.link(), made.token()));
  }

  /** Ends the request unless a hiker asks for a link of their own and may have one. */
  private void requireOwn(Visit visit, KeptReader.WantedLink wanted) {
    if (wanted.hiker().filter(visit.link()::isOf).isEmpty()) {
      throw new ProblemException(
          ProblemCode.FORBIDDEN, "A leader's link makes links; a hiker's makes the hiker's own.");
    }
    String hiker = wanted.hiker().orElseThrow();
    if (visit.stored().state().keptPrivate().contains(hiker) && !visit.link().own()) {
      throw new ProblemException(
          ProblemCode.LINK_NOT_OWN, "While a body mass is private, links come from own links.");
    }
    long own =
        trips.store().links().of(visit.stored().id()).stream()
            .filter(link -> link.own() && link.isOf(hiker))
            .count();
    if (own >= StoreLimits.OWN_LINKS) {
      throw new ProblemException(
          ProblemCode.LIMIT_REACHED,
          "A hiker makes at most " + StoreLimits.OWN_LINKS + " links of their own.");
    }
  }

  private void revoke(Context ctx) {
    Parameters.known(ctx);
    Visit visit = Visits.leader(ctx, trips);
    boolean done =
        trips.store().links().revoke(visit.stored().id(), ctx.pathParam("link"), trips.now());
    if (!done) {
      throw new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
    }
    ctx.status(204);
  }
}
