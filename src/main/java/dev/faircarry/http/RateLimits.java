package dev.faircarry.http;

import dev.faircarry.app.StoreLimits;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Counts the requests of each link, or of each address where there is none, on this instance. What
 * is counted by is forgotten with the process and never written anywhere.
 */
final class RateLimits {
  private final int perMinute;
  private final Map<String, Bucket> buckets =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > StoreLimits.COUNTED_BEARERS;
        }
      };

  RateLimits(int perMinute) {
    this.perMinute = perMinute;
  }

  /** Ends the request when its bearer, and then when its address, has sent too many. */
  void count(Context ctx) {
    String address = ctx.req().getRemoteAddr();
    count("address " + address);
    Visits.bearer(ctx).ifPresent(token -> count("link " + token.split("\\.", 2)[0]));
  }

  private void count(String who) {
    Bucket bucket;
    synchronized (buckets) {
      bucket = buckets.computeIfAbsent(who, w -> full());
    }
    ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
    if (!probe.isConsumed()) {
      long seconds = 1 + TimeUnit.NANOSECONDS.toSeconds(probe.getNanosToWaitForRefill());
      throw new ProblemException(
              ProblemCode.TOO_MANY_REQUESTS,
              "At most " + perMinute + " requests in a minute are answered.")
          .with("Retry-After", String.valueOf(seconds));
    }
  }

  private Bucket full() {
    return Bucket.builder()
        .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, Duration.ofMinutes(1)))
        .build();
  }
}
