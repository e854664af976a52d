package dev.faircarry.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What is counted, for whoever watches the service. */
final class MetricsRoutes implements Routes.Resource {
  private static final String TEXT = "text/plain";
  private static final String VERSION = "; version=0.0.4; charset=utf-8";

  private final Meters meters;

  MetricsRoutes(Meters meters) {
    this.meters = meters;
  }

  @Override
  public void register(Routes routes) {
    routes.get("/metrics", this::read);
  }

  private void read(Context ctx) {
    Accepting.oneOf(ctx, List.of(TEXT));
    Answers.bytes(ctx, TEXT + VERSION, meters.scrape().getBytes(StandardCharsets.UTF_8));
    ctx.header("Cache-Control", "no-store");
  }
}
