package dev.faircarry.app;

import dev.faircarry.solve.Watch;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The threads of this instance that take solves from the queue, and the one that renews their
 * leases. Any number of instances may share a queue.
 */
public final class SolveWorkers implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(SolveWorkers.class);
  private static final int LEASE_PARTS = 4;

  private final Store store;
  private final Solver solver;
  private final InstantSource clock;
  private final String instance;
  private final Duration lease;
  private final Map<String, Running> running = new ConcurrentHashMap<>();
  private final Semaphore news = new Semaphore(0);
  private final List<Thread> threads = new ArrayList<>();
  private final ScheduledExecutorService renewing;
  private volatile boolean closing;

  /**
   * Begins to work.
   *
   * @param solver gives out only what the independent check has accepted
   * @param instance names this instance in the queue
   * @param count how many solves at a time
   */
  public SolveWorkers(
      Store store, Solver solver, InstantSource clock, String instance, int count, Duration lease) {
    this.store = store;
    this.solver = solver;
    this.clock = clock;
    this.instance = instance;
    this.lease = lease;
    this.renewing =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread thread = new Thread(work, "leases");
              thread.setDaemon(true);
              return thread;
            });
    long every = lease.toMillis() / LEASE_PARTS;
    var unused =
        renewing.scheduleWithFixedDelay(this::renewAll, every, every, TimeUnit.MILLISECONDS);
    for (int i = 1; i <= count; i++) {
      Thread thread = new Thread(this::work, "stored-solve-" + i);
      thread.setDaemon(true);
      threads.add(thread);
      thread.start();
    }
  }

  /** Says that there is something in the queue, so that nobody waits for the next look. */
  public void wake() {
    news.release();
  }

  private void work() {
    while (!closing) {
      Optional<Job> job = take();
      job.ifPresent(this::solve);
      if (job.isEmpty()) {
        rest();
      }
    }
  }

  private void rest() {
    try {
      if (news.tryAcquire(StoreLimits.LOOK_EVERY.toMillis(), TimeUnit.MILLISECONDS)) {
        news.drainPermits();
      }
    } catch (InterruptedException e) {
      // Only closing interrupts; the loop sees it.
      Thread.currentThread().interrupt();
    }
  }

  private Optional<Job> take() {
    try {
      return store.jobs().take(instance, clock.instant(), lease, StoreLimits.ATTEMPTS);
    } catch (StoreTrouble e) {
      LOG.warn("no look at the queue: {}", e.kind());
      return Optional.empty();
    }
  }

  private void solve(Job job) {
    Running run = new Running(job);
    running.put(job.id(), run);
    try {
      Optional<StoredTrip> trip = store.trips().find(job.trip(), job.revision());
      if (trip.isEmpty()) {
        // Somebody had the revision erased; the job goes with it.
        store
            .jobs()
            .finish(job.id(), job.attempt(), clock.instant(), new Outcome.Undecided(0, false));
        return;
      }
      Outcome outcome = solver.solve(trip.get().state().trip(), job.effortSteps(), run);
      if (run.handBack) {
        store.jobs().handBack(job.id(), job.attempt());
      } else if (!run.lost) {
        store.jobs().finish(job.id(), job.attempt(), clock.instant(), outcome);
      }
    } catch (StoreTrouble e) {
      // The lease runs out and the solve is begun again, here or elsewhere.
      LOG.warn("solve {} could not be kept: {}", job.id(), e.kind());
    } catch (RuntimeException e) {
      // Messages may quote a trip.
      LOG.error("solve {} failed: {}", job.id(), e.getClass().getName());
      handBack(job);
    } finally {
      running.remove(job.id());
    }
  }

  private void handBack(Job job) {
    try {
      store.jobs().handBack(job.id(), job.attempt());
    } catch (StoreTrouble e) {
      LOG.warn("solve {} could not be handed back: {}", job.id(), e.kind());
    }
  }

  private void renewAll() {
    running.values().forEach(this::renew);
  }

  private void renew(Running run) {
    try {
      JobStore.Renewal renewal =
          store.jobs().renew(run.job.id(), run.job.attempt(), clock.instant(), lease, run.progress);
      run.stop |= renewal == JobStore.Renewal.STOP;
      run.lost |= renewal == JobStore.Renewal.LOST;
    } catch (RuntimeException e) {
      // Whether the job is still ours is decided when the outcome is written: by its fence.
      LOG.warn("lease of solve {} not renewed", run.job.id());
    }
  }

  /** Hands what is under way back for others to take, and ends. */
  @Override
  public void close() {
    closing = true;
    running.values().forEach(run -> run.handBack = true);
    news.release(threads.size());
    try {
      for (Thread thread : threads) {
        thread.join(lease.toMillis());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    renewing.shutdownNow();
  }

  /** One solve under way: what its search asks, and what the leases say. */
  private static final class Running implements Watch {
    private final Job job;
    private volatile Optional<Progress> progress = Optional.empty();
    private volatile boolean stop;
    private volatile boolean lost;
    private volatile boolean handBack;

    Running(Job job) {
      this.job = job;
      this.stop = job.stopAsked();
    }

    @Override
    public Signal signal() {
      return stop || lost || handBack ? Signal.STOP_BY_CALLER : Signal.GO_ON;
    }

    @Override
    public void progress(Progress news) {
      progress = Optional.of(news);
    }
  }
}
