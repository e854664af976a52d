package dev.faircarry.http;

import dev.faircarry.app.SolveCounts;
import dev.faircarry.app.SolvePool;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreTrouble;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.Timer;
import io.micrometer.core.instrument.binder.jvm.JvmGcMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmMemoryMetrics;
import io.micrometer.core.instrument.binder.jvm.JvmThreadMetrics;
import io.micrometer.core.instrument.binder.system.ProcessorMetrics;
import io.micrometer.core.instrument.binder.system.UptimeMetrics;
import io.micrometer.prometheusmetrics.PrometheusConfig;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/**
 * What is counted about the running service. Labels are patterns of addresses, methods, states and
 * kinds of trouble: a small closed set, and nothing that anybody has sent.
 */
final class Meters implements AutoCloseable {
  private static final Duration[] BUCKETS = {
    Duration.ofMillis(10),
    Duration.ofMillis(100),
    Duration.ofSeconds(1),
    Duration.ofSeconds(10),
    Duration.ofSeconds(60)
  };

  private final PrometheusMeterRegistry registry =
      new PrometheusMeterRegistry(PrometheusConfig.DEFAULT);
  private final JvmGcMetrics garbage = new JvmGcMetrics();

  /** As many as there are answers to tell apart; finding one is quicker than describing it. */
  private final Map<Answered, Timer> requests = new ConcurrentHashMap<>();

  private record Answered(String method, String route, int status) {}

  /** Counts a request that has been answered. */
  void request(String method, String route, int status, long nanos) {
    requests
        .computeIfAbsent(new Answered(method, route, status), this::timer)
        .record(nanos, TimeUnit.NANOSECONDS);
  }

  private Timer timer(Answered answered) {
    return Timer.builder("faircarry.http.requests")
        .description("requests answered, by method, pattern of the address and status")
        .tag("method", answered.method())
        .tag("route", answered.route())
        .tag("status", String.valueOf(answered.status()))
        .serviceLevelObjectives(BUCKETS)
        .register(registry);
  }

  /** Counts a request that the store could not serve. */
  void trouble(StoreTrouble.Kind kind) {
    troubles(kind).increment();
  }

  private Counter troubles(StoreTrouble.Kind kind) {
    return Counter.builder("faircarry.store.troubles")
        .description("requests that the store could not serve, by what was wrong with it")
        .tag("kind", kind.name().toLowerCase(Locale.ROOT))
        .register(registry);
  }

  void solves(SolveCounts counts) {
    for (SolveCounts.End end : SolveCounts.End.values()) {
      FunctionCounter.builder("faircarry.solves", counts, c -> c.of(end))
          .description("searches that have ended, by how they ended")
          .tag("end", end.name().toLowerCase(Locale.ROOT))
          .register(registry);
    }
    FunctionCounter.builder("faircarry.solves.seconds", counts, c -> c.nanos() / 1e9)
        .description("time spent in searches")
        .register(registry);
    FunctionCounter.builder("faircarry.solves.cut", counts, SolveCounts::cutByClock)
        .description("searches that the safety clock has cut")
        .register(registry);
  }

  void pool(SolvePool pool) {
    Gauge.builder("faircarry.pool.running", pool, SolvePool::running)
        .description("searches under way for callers who wait")
        .register(registry);
    Gauge.builder("faircarry.pool.waiting", pool, SolvePool::waiting)
        .description("searches that wait for a thread")
        .register(registry);
  }

  void store(Store store) {
    for (StoreTrouble.Kind kind : StoreTrouble.Kind.values()) {
      // From the start, so that a rate can be told from the first one on.
      troubles(kind);
    }
    Gauge.builder("faircarry.store.up", store, s -> s.ready() ? 1 : 0)
        .description("whether the store answers")
        .register(registry);
    Gauge.builder("faircarry.jobs.open", store, Meters::openJobs)
        .description(
            "stored solves that wait or run, on all instances; none while the store is away")
        .register(registry);
  }

  private static double openJobs(Store store) {
    try {
      return store.jobs().open();
    } catch (StoreTrouble e) {
      return Double.NaN;
    }
  }

  void process() {
    new JvmMemoryMetrics().bindTo(registry);
    new JvmThreadMetrics().bindTo(registry);
    new ProcessorMetrics().bindTo(registry);
    new UptimeMetrics().bindTo(registry);
    garbage.bindTo(registry);
  }

  /** All of it in the text format of Prometheus, version 0.0.4. */
  String scrape() {
    return registry.scrape();
  }

  @Override
  public void close() {
    garbage.close();
    registry.close();
  }
}
