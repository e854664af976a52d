package dev.faircarry.http;

import dev.faircarry.app.Job;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.StoreLimits;
import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lets callers wait for a solve as long as they prefer (RFC 7240), if that is not too long and not
 * too many wait: a caller who waits holds a thread.
 */
final class Waiting {
  private static final int AT_ONCE = 16;
  private static final int ABSENT_SECONDS = 5;
  private static final long LOOK_MILLIS = 40;
  private static final Pattern WAIT = Pattern.compile("(?:^|[,;\\s])wait\\s*=\\s*([0-9]{1,6})");

  private final KeptTrips trips;
  private final Runnable wake;
  private final Semaphore seats = new Semaphore(AT_ONCE);

  /**
   * @param wake tells the workers of this instance that there is something to do
   */
  Waiting(KeptTrips trips, Runnable wake) {
    this.trips = trips;
    this.wake = wake;
  }

  /** The job when it is over, or nothing when the caller's time is. */
  Optional<Job> forJob(Context ctx, String trip, String id) {
    wake.run();
    int seconds = seconds(ctx);
    if (seconds == 0 || !seats.tryAcquire()) {
      return Optional.empty();
    }
    try {
      return look(trip, id, System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds));
    } finally {
      seats.release();
    }
  }

  private Optional<Job> look(String trip, String id, long endNanos) {
    while (true) {
      Optional<Job> job = trips.store().jobs().find(trip, id).filter(Job::over);
      if (job.isPresent() || System.nanoTime() - endNanos >= 0) {
        return job;
      }
      try {
        TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return Optional.empty();
      }
    }
  }

  private static int seconds(Context ctx) {
    String prefer = ctx.header("Prefer");
    if (prefer == null) {
      return ABSENT_SECONDS;
    }
    String text = prefer.toLowerCase(Locale.ROOT);
    Matcher wait = WAIT.matcher(text);
    if (wait.find()) {
      int seconds = Math.min(Integer.parseInt(wait.group(1)), StoreLimits.WAIT_SECONDS);
      ctx.header("Preference-Applied", "wait=" + seconds);
      return seconds;
    }
    if (text.contains("respond-async")) {
      ctx.header("Preference-Applied", "respond-async");
      return 0;
    }
    return ABSENT_SECONDS;
  }
}
