package dev.faircarry.http;

import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.Visit;
import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;

/** Lets bearers of links in, and turns everybody else away with the same answer. */
final class Visits {
  private static final String SCHEME = "bearer ";

  private Visits() {}

  /**
   * The visit of whoever sends this request.
   *
   * @throws ProblemException the same for a missing, malformed, unknown, ended or foreign link and
   *     for a trip that is not there
   */
  static Visit enter(Context ctx, KeptTrips trips) {
    return trips.enter(ctx.pathParam("trip"), bearer(ctx)).orElseThrow(Visits::nothing);
  }

  /** The end of a request about what is not there, or not for its sender. */
  static ProblemException nothing() {
    return new ProblemException(ProblemCode.NOT_FOUND, "No resource has this address.");
  }

  /** The visit of a leader; others are told that the link is not a leader's. */
  static Visit leader(Context ctx, KeptTrips trips) {
    Visit visit = enter(ctx, trips);
    if (!visit.leads()) {
      throw new ProblemException(ProblemCode.FORBIDDEN, "Only a leader's link may do that.");
    }
    return visit;
  }

  /** The visit of a leader or of this hiker. */
  static Visit leaderOr(Context ctx, KeptTrips trips, String hiker) {
    Visit visit = enter(ctx, trips);
    if (!visit.leads() && !visit.link().isOf(hiker)) {
      throw new ProblemException(
          ProblemCode.FORBIDDEN, "Only a leader's or the hiker's own link may do that.");
    }
    return visit;
  }

  /** What stands in the Authorization header behind "Bearer" (RFC 6750). */
  static Optional<String> bearer(Context ctx) {
    String header = ctx.header("Authorization");
    if (header == null || !header.toLowerCase(Locale.ROOT).startsWith(SCHEME)) {
      return Optional.empty();
    }
    return Optional.of(header.substring(SCHEME.length()).strip());
  }
}
