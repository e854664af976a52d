package dev.faircarry.http;

import dev.faircarry.json.PlainAnswers;
import io.javalin.http.Context;
import java.util.function.BooleanSupplier;

/** Whether the service runs, and whether it takes work. */
final class HealthRoutes implements Routes.Resource {
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
    Answers.json(ctx, PlainAnswers.status(fine ? "up" : "down"));
  }
}
