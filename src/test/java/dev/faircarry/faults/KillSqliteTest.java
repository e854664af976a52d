package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** kill -9 with a SQLite file. */
class KillSqliteTest extends KillContract {
  @Override
  Program.Setup setup() {
    return Program.Setup.sqlite(folder);
  }

  @Override
  void intact() throws SQLException {
    intact(folder.resolve("trips.db"));
  }

  /** SQLite's own check of a file: its pages, its indexes, and what refers to what. */
  static void intact(Path file) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      try (ResultSet check = statement.executeQuery("PRAGMA integrity_check")) {
        assertEquals("ok", check.getString(1));
      }
      try (ResultSet dangling = statement.executeQuery("PRAGMA foreign_key_check")) {
        assertFalse(dangling.next());
      }
    }
  }
}
