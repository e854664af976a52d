package dev.faircarry.http;

import dev.faircarry.access.Sight;
import dev.faircarry.app.Job;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.json.KeptWriter;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import io.javalin.http.sse.SseHandler;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/** Tells followers of solves how they go, by server-sent events; one thread looks for all. */
final class SolveEvents implements AutoCloseable {
  private static final int FOLLOWERS = 200;
  private static final long LOOK_MILLIS = 300;

  /** The longest anybody follows; who wants more comes again. */
  private static final long LIFE_MILLIS = 10 * 60 * 1000L;

  private final KeptTrips trips;
  private final Set<Follower> followers = ConcurrentHashMap.newKeySet();
  private final ScheduledExecutorService looking =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "solve-events");
            thread.setDaemon(true);
            return thread;
          });

  SolveEvents(KeptTrips trips) {
    this.trips = trips;
    var unused =
        looking.scheduleWithFixedDelay(this::look, LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
  }

  void follow(Context ctx, Job job, Sight sight) {
    if (followers.size() >= FOLLOWERS) {
      throw new ProblemException(ProblemCode.BUSY, "Too many follow already.")
          .with("Retry-After", String.valueOf(ServiceLimits.RETRY_AFTER_SECONDS));
    }
    // Without the header the handler of the library answers nothing.
    new SseHandler(
            LIFE_MILLIS,
            client -> {
              client.keepAlive();
              Follower follower = new Follower(client, job, sight);
              client.onClose(() -> followers.remove(follower));
              followers.add(follower);
              follower.tell(Optional.of(job));
            })
        .handle(ctx);
  }

  private void look() {
    followers.removeIf(follower -> !told(follower));
  }

  /** Whether the follower is still there after being told. */
  private boolean told(Follower follower) {
    try {
      follower.tell(trips.store().jobs().find(follower.job.trip(), follower.job.id()));
    } catch (RuntimeException e) {
      // The store is away, or the follower is: the next look finds out.
      return !follower.client.terminated();
    }
    return !follower.client.terminated();
  }

  @Override
  public void close() {
    looking.shutdownNow();
    followers.forEach(follower -> follower.client.close());
  }

  private static final class Follower {
    private final SseClient client;
    private final Job job;
    private final Sight sight;
    private String told = "";

    Follower(SseClient client, Job job, Sight sight) {
      this.client = client;
      this.job = job;
      this.sight = sight;
    }

    synchronized void tell(Optional<Job> found) {
      if (found.isEmpty()) {
        client.close();
        return;
      }
      String text = new String(KeptWriter.job(found.get(), sight), StandardCharsets.UTF_8);
      if (!text.equals(told)) {
        told = text;
        client.sendEvent(found.get().over() ? "over" : "progress", text.replace("\n", " "));
      }
      if (found.get().over()) {
        client.close();
      }
    }
  }
}
