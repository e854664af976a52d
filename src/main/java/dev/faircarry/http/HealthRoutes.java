package dev.faircarry.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.function.BooleanSupplier;

/** Whether the service runs, and whether it takes work. */
final class HealthRoutes implements Routes.Resource {
  // Written out: whoever waits for the start asks this first, and need not wait for a JSON library.
  private static final byte[] UP = "{\n  \"status\" : \"up\"\n}\n".getBytes(StandardCharsets.UTF_8);
  private static final byte[] DOWN =
      "{\n  \"status\" : \"down\"\n}\n".getBytes(StandardCharsets.UTF_8);

  private final BooleanSupplier ready;

  HealthRoutes(BooleanSupplier ready) {
    this.ready = ready;
  }

  @Override
  public void register(Routes routes) {
    routes
        .get("/health/live", ctx -> answer(ctx, true))
        .get("/health/ready", ctx -> answer(ctx, ready.getAsBoolean()));
  }

  private static void answer(Context ctx, boolean fine) {
    Accepting.json(ctx);
    ctx.status(fine ? 200 : 503);
    Answers.json(ctx, fine ? UP : DOWN);
  }
}
