package dev.faircarry.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** Headers that keep browsers from doing more with an answer than showing it. */
final class SecurityHeaders {
  private static final String POLICY =
      "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none';"
          + " frame-ancestors 'none'";

  private SecurityHeaders() {}

  static void install(RoutesConfig routes) {
    routes.before(SecurityHeaders::add);
  }

  private static void add(Context ctx) {
    ctx.header("Content-Security-Policy", POLICY);
    ctx.header("X-Content-Type-Options", "nosniff");
    ctx.header("Referrer-Policy", "no-referrer");
    ctx.header("X-Frame-Options", "DENY");
    ctx.header("Cross-Origin-Resource-Policy", "same-origin");
    ctx.header("Permissions-Policy", "geolocation=(), camera=(), microphone=()");
  }
}
