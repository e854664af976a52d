package dev.faircarry.store;

import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Where a PostgreSQL database is.
 *
 * @param jdbcUrl address without user and password
 */
record PostgresAddress(String jdbcUrl, Optional<String> user, Optional<String> password) {
  private static final String JDBC = "jdbc:";

  /**
   * Reads {@code jdbc:postgresql://...} as the driver does, and {@code
   * postgres[ql]://user:password@host:port/name} as libpq does.
   *
   * @throws IllegalArgumentException if it is neither; the message does not quote it, for it may
   *     hold a password
   */
  static PostgresAddress of(String url) {
    if (url.startsWith(JDBC + "postgresql:")) {
      return new PostgresAddress(url, Optional.empty(), Optional.empty());
    }
    URI uri;
    try {
      uri = URI.create(url);
    } catch (IllegalArgumentException e) {
      throw refused();
    }
    if (uri.getHost() == null
        || !("postgres".equals(uri.getScheme()) || "postgresql".equals(uri.getScheme()))) {
      throw refused();
    }
    String port = uri.getPort() < 0 ? "" : ":" + uri.getPort();
    String query = uri.getRawQuery() == null ? "" : "?" + uri.getRawQuery();
    String jdbc = "jdbc:postgresql://" + uri.getHost() + port + uri.getRawPath() + query;
    String login = uri.getRawUserInfo() == null ? "" : uri.getRawUserInfo();
    int colon = login.indexOf(':');
    return new PostgresAddress(
        jdbc,
        stated(colon < 0 ? login : login.substring(0, colon)),
        stated(colon < 0 ? "" : login.substring(colon + 1)));
  }

  private static Optional<String> stated(String encoded) {
    return encoded.isEmpty()
        ? Optional.empty()
        : Optional.of(URLDecoder.decode(encoded.replace("+", "%2B"), StandardCharsets.UTF_8));
  }

  private static IllegalArgumentException refused() {
    return new IllegalArgumentException(
        "the database address is neither jdbc:postgresql://... nor postgres://...");
  }

  /** Never the password: records end up in messages. */
  @Override
  public String toString() {
    return "PostgresAddress";
  }
}
