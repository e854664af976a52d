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
  /** Longer than any address, scope included. */
  private static final int ADDRESS_LENGTH = 80;

  private final int perMinute;
  private final boolean behindProxy;
  private final Map<String, Bucket> buckets =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
          return size() > StoreLimits.COUNTED_BEARERS;
        }
      };

  /**
   * @param behindProxy whether the last address in X-Forwarded-For is the caller's; without a proxy
   *     that sets it, callers could write there what they like
   */
  RateLimits(int perMinute, boolean behindProxy) {
    this.perMinute = perMinute;
    this.behindProxy = behindProxy;
  }

  /** Ends the request when its bearer, and then when its address, has sent too many. */
  void count(Context ctx) {
    count("address " + address(ctx));
    Visits.bearer(ctx).ifPresent(token -> count("link " + token.split("\\.", 2)[0]));
  }

  private String address(Context ctx) {
    String last = "";
    if (behindProxy) {
      for (var all = ctx.req().getHeaders("X-Forwarded-For"); all.hasMoreElements(); ) {
        String line = all.nextElement();
        last = line.substring(line.lastIndexOf(',') + 1).strip();
      }
    }
    return last.isEmpty() || last.length() > ADDRESS_LENGTH ? ctx.req().getRemoteAddr() : last;
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
