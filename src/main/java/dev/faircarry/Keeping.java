package dev.faircarry;

import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.SolveWorkers;
import dev.faircarry.app.Solver;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.SplitTrip;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.StoreTrouble;
import dev.faircarry.config.Settings;
import dev.faircarry.http.KeptParts;
import dev.faircarry.split.Outcome;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What keeps trips while the service runs: the store, its workers, and who sweeps up. */
public final class Keeping implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Keeping.class);
  private static final int SWEEP_MINUTES = 10;

  private final Store store;
  private final SolveWorkers workers;
  private final KeptTrips trips;
  private final Optional<String> creationKey;
  private final ScheduledExecutorService sweeping =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "sweep");
            thread.setDaemon(true);
            return thread;
          });

  private Keeping(Store store, SplitTrip splitTrip, Optional<String> creationKey) {
    InstantSource clock = InstantSource.system();
    this.store = store;
    this.creationKey = creationKey;
    this.trips = new KeptTrips(store, clock, new SecureRandom());
    this.workers =
        new SolveWorkers(
            store,
            solver(splitTrip),
            clock,
            UUID.randomUUID().toString(),
            Math.max(1, Runtime.getRuntime().availableProcessors() / 2),
            StoreLimits.LEASE);
    var unused = sweeping.scheduleWithFixedDelay(this::sweep, 0, SWEEP_MINUTES, TimeUnit.MINUTES);
  }

  /**
   * Opens the store that the settings name.
   *
   * @throws CannotOpen if the store or its keys cannot be used
   */
  public static Keeping open(Settings settings, SplitTrip splitTrip) {
    return of(Opening.store(settings, Opening.seal(settings)), splitTrip, settings.creationKey());
  }

  /** Keeps trips in a store that is open, and closes it in the end. */
  public static Keeping of(Store store, SplitTrip splitTrip, Optional<String> creationKey) {
    return new Keeping(store, splitTrip, creationKey);
  }

  /** What the HTTP service needs. */
  public KeptParts parts() {
    return new KeptParts(trips, workers::wake, creationKey, true);
  }

  /** A solver that gives out only what the independent check has accepted. */
  private static Solver solver(SplitTrip splitTrip) {
    return (trip, effortSteps, watch) -> outcome(splitTrip.split(trip, effortSteps, watch));
  }

  private static Outcome outcome(SplitResult result) {
    if (result instanceof SplitResult.Found found) {
      return new Outcome.Solved(found.split(), found.proof());
    }
    if (result instanceof SplitResult.Impossible no) {
      return new Outcome.Impossible(no.conflict(), no.irreducible(), no.effortSteps());
    }
    SplitResult.Undecided open = (SplitResult.Undecided) result;
    return new Outcome.Undecided(open.effortSteps(), open.cutByClock());
  }

  /** Erases what is due and forgets old idempotency keys. */
  private void sweep() {
    try {
      Instant now = trips.now();
      int erased = store.trips().eraseDue(now);
      int forgotten = store.replies().forget(now.minus(StoreLimits.KEY_KEPT));
      LOG.debug("erased {} trips, forgot {} keys", erased, forgotten);
    } catch (StoreTrouble e) {
      LOG.warn("no sweep: the store is {}", e.kind());
    }
  }

  @Override
  public void close() {
    sweeping.shutdownNow();
    workers.close();
    store.close();
  }
}
