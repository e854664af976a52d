package dev.faircarry.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** Headers that keep browsers from doing more with an answer than showing it. */
final class SecurityHeaders {
  private static final String POLICY =
      "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none';"
          + " frame-ancestors 'none'";

  /** Name and value of each. */
  static final Map<String, String> ALWAYS =
      Map.of(
          "Content-Security-Policy", POLICY,
          "X-Content-Type-Options", "nosniff",
          "Referrer-Policy", "no-referrer",
          "X-Frame-Options", "DENY",
          "Cross-Origin-Resource-Policy", "same-origin",
          "Permissions-Policy", "geolocation=(), camera=(), microphone=()");

  private SecurityHeaders() {}

  static void install(RoutesConfig routes) {
    routes.before(SecurityHeaders::add);
  }

  private static void add(Context ctx) {
    ALWAYS.forEach(ctx::header);
  }
}
