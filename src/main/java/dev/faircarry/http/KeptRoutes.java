package dev.faircarry.http;

import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.JudgeSplit;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.app.StoreTrouble;
import io.javalin.config.RoutesConfig;

/** Everything about stored trips. */
final class KeptRoutes implements Routes.Resource, AutoCloseable {
  private final KeptParts parts;
  private final JudgeSplit judge;
  private final StoredChangeRoutes changes;
  private final SolveEvents events;
  private final RateLimits limits;
  private final Meters meters;

  KeptRoutes(KeptParts parts, Parts all, Meters meters) {
    this.parts = parts;
    this.judge = all.judgeSplit();
    this.changes =
        new StoredChangeRoutes(
            parts.trips(), all.rebalance(), new CheckDeparture(all.splitTrip()), all.pool());
    this.events = new SolveEvents(parts.trips());
    this.meters = meters;
    meters.store(parts.trips().store());
    this.limits = new RateLimits(all.options().requestsPerMinute(), all.options().behindProxy());
  }

  @Override
  public void register(Routes routes) {
    new TripRoutes(parts.trips(), parts.creationKey()).register(routes);
    StoredTables tables = new StoredTables(parts.trips());
    tables.register(routes);
    new PartRoutes(parts.trips(), tables).register(routes);
    new LinkRoutes(parts.trips()).register(routes);
    new HistoryRoutes(parts.trips()).register(routes);
    new StoredSplitRoutes(parts.trips(), judge, new Waiting(parts.trips(), parts.wake()))
        .register(routes);
    new ArrangingRoutes(parts.trips(), judge).register(routes);
    new SolveRoutes(parts.trips(), events).register(routes);
    new ReadingRoutes(parts.trips()).register(routes);
    changes.register(routes);
  }

  /** Counts requests, and tells when the store is in trouble. */
  void install(RoutesConfig routes) {
    if (parts.limited()) {
      routes.before("/v1/trips", limits::count);
      routes.before("/v1/trips/*", limits::count);
    }
    routes.exception(
        StoreTrouble.class,
        (e, ctx) -> {
          meters.trouble(e.kind());
          Problems.answer(told(e), ctx);
        });
  }

  /** What callers are told: 507 where there is no room, else 503, with when to come again. */
  static ProblemException told(StoreTrouble trouble) {
    return switch (trouble.kind()) {
      case UNAVAILABLE ->
          new ProblemException(ProblemCode.STORE_UNAVAILABLE, "The store does not answer.")
              .with("Retry-After", String.valueOf(ServiceLimits.RETRY_AFTER_SECONDS));
      case CONTENDED ->
          new ProblemException(ProblemCode.STORE_UNAVAILABLE, "Another request came between.")
              .with("Retry-After", "1");
      case READ_ONLY ->
          new ProblemException(ProblemCode.STORE_READ_ONLY, "The store can only be read now.")
              .with("Retry-After", String.valueOf(ServiceLimits.RETRY_AFTER_SECONDS));
      case FULL -> new ProblemException(ProblemCode.STORE_FULL, "The store has no room left.");
    };
  }

  /** Whether the store answers. */
  boolean ready() {
    return parts.trips().store().ready();
  }

  @Override
  public void close() {
    events.close();
  }
}
