package dev.faircarry.store;

import dev.faircarry.access.Role;
import dev.faircarry.app.Author;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;

/** Reads columns that stand in several tables. */
final class Rows {
  private Rows() {}

  static Author author(ResultSet row) throws SQLException {
    return new Author(
        Role.valueOf(row.getString("by_role")), Optional.ofNullable(row.getString("by_hiker")));
  }

  /** A time that may be missing. */
  static Optional<Instant> time(ResultSet row, String column) throws SQLException {
    long millis = row.getLong(column);
    return row.wasNull() ? Optional.empty() : Optional.of(Instant.ofEpochMilli(millis));
  }

  static Optional<byte[]> bytes(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getBytes(column));
  }
}
