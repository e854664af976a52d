package dev.faircarry.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Set;

/**
 * Lets pages of listed origins ask (Fetch Standard, CORS protocol). Nobody else's pages may, and no
 * answer ever lets a browser send what it keeps for this origin: links travel in a header that a
 * page sets itself.
 */
final class Cors {
  private static final String ASKED_METHOD = "Access-Control-Request-Method";
  private static final String HEADERS_TAKEN =
      "Accept, Authorization, Content-Type, Idempotency-Key, If-Match, If-None-Match, Prefer,"
          + " Traceparent, X-Request-Id";
  private static final String HEADERS_SHOWN =
      "ETag, Location, Preference-Applied, Retry-After, X-Request-Id";

  /** How long a browser may remember a preflight. */
  private static final String PREFLIGHT_SECONDS = "600";

  private final Set<String> origins;

  Cors(Iterable<String> origins) {
    Set<String> all = new java.util.HashSet<>();
    origins.forEach(all::add);
    this.origins = Set.copyOf(all);
  }

  void install(RoutesConfig routes) {
    if (!origins.isEmpty()) {
      routes.before(this::admit);
    }
  }

  private void admit(Context ctx) {
    ctx.res().addHeader("Vary", "Origin");
    if (admits(ctx)) {
      ctx.header("Access-Control-Allow-Origin", String.valueOf(ctx.header("Origin")));
      ctx.header("Access-Control-Expose-Headers", HEADERS_SHOWN);
    }
  }

  private boolean admits(Context ctx) {
    String origin = ctx.header("Origin");
    return origin != null && origins.contains(origin);
  }

  /**
   * Answers a preflight; does nothing to any other request.
   *
   * @param methods those the address answers
   */
  void preflight(Context ctx, String methods) {
    if (admits(ctx) && ctx.header(ASKED_METHOD) != null) {
      ctx.header("Access-Control-Allow-Methods", methods);
      ctx.header("Access-Control-Allow-Headers", HEADERS_TAKEN);
      ctx.header("Access-Control-Max-Age", PREFLIGHT_SECONDS);
    }
  }
}
