package dev.faircarry.config;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the service runs with. The components are those of {@link Setting}, read and found good.
 *
 * @param port 0 takes any free one
 * @param corsOrigins each as a browser states it: scheme, host, and a port that is not the usual
 */
public record Settings(
    String host,
    int port,
    Optional<String> databaseUrl,
    Path databaseFile,
    Optional<String> keyset,
    Path keyFile,
    Optional<String> creationKey,
    List<String> corsOrigins,
    int requestsPerMinute,
    boolean behindProxy,
    boolean metrics,
    LogForm log) {
  public Settings {
    corsOrigins = List.copyOf(corsOrigins);
  }

  /** How a line of the log is written. */
  public enum LogForm {
    TEXT,
    JSON
  }

  /** Never the secrets: records end up in messages. */
  @Override
  public String toString() {
    return "Settings[" + host + ":" + port + "]";
  }
}
