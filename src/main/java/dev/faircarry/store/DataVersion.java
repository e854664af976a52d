package dev.faircarry.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.OptionalLong;
import javax.sql.DataSource;

/**
 * Tells whether anything in a SQLite file has changed: a number that is another one after every
 * change by any other connection, of this process or not. Its own connection never writes. Asking
 * costs about a tenth of a query.
 */
final class DataVersion implements AutoCloseable {
  private final Connection connection;
  private final PreparedStatement question;

  DataVersion(DataSource source) throws SQLException {
    connection = source.getConnection();
    question = connection.prepareStatement("PRAGMA data_version");
  }

  /** The number; none when the file does not answer, which whoever reads it next will tell. */
  synchronized OptionalLong now() {
    try (ResultSet answer = question.executeQuery()) {
      return answer.next() ? OptionalLong.of(answer.getLong(1)) : OptionalLong.empty();
    } catch (SQLException e) {
      return OptionalLong.empty();
    }
  }

  @Override
  public synchronized void close() {
    try {
      question.close();
      connection.close();
    } catch (SQLException e) {
      // It only ever read; nothing is lost with it.
    }
  }
}
