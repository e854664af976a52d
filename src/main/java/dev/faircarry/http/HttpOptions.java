package dev.faircarry.http;

import dev.faircarry.app.StoreLimits;
import java.util.List;

/**
 * What whoever runs the service chooses about HTTP.
 *
 * @param corsOrigins web origins whose pages may ask; none by default
 * @param requestsPerMinute most requests about stored trips, of one link and of one address
 * @param behindProxy whether the last address in X-Forwarded-For is the caller's
 * @param metrics whether /metrics answers
 */
public record HttpOptions(
    List<String> corsOrigins, int requestsPerMinute, boolean behindProxy, boolean metrics) {
  /** What holds when nothing is set. */
  public static final HttpOptions STANDARD =
      new HttpOptions(List.of(), StoreLimits.REQUESTS_PER_MINUTE, false, true);

  public HttpOptions {
    corsOrigins = List.copyOf(corsOrigins);
  }
}
