package dev.faircarry.store;

import dev.faircarry.app.StoreTrouble;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteDataSource;

/** Copies a SQLite database while a service writes to it. */
public final class Backup {
  private static final int BUSY_MILLIS = 30_000;

  private Backup() {}

  /**
   * Writes everything that is kept at this moment into a new database. What is sealed stays so: the
   * keys are not in it.
   *
   * @param target must not be there yet; it appears whole or not at all
   * @throws NoSuchFileException if there is no such database
   * @throws FileAlreadyExistsException if the target is there
   * @throws IOException if it cannot be written
   * @throws StoreTrouble if the database cannot be read
   */
  public static void of(Path database, Path target) throws IOException {
    if (!Files.isRegularFile(database)) {
      throw new NoSuchFileException(database.toString());
    }
    if (Files.exists(target)) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Path whole = target.toAbsolutePath();
    Path partial = whole.resolveSibling(whole.getFileName() + ".part");
    Files.deleteIfExists(partial);
    // Made beforehand, so that nobody else can read it while it fills.
    Files.createFile(
        partial,
        PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    try {
      copy(database, partial);
      check(partial);
      try (FileChannel written = FileChannel.open(partial, StandardOpenOption.WRITE)) {
        written.force(true);
      }
      Files.move(partial, whole, StandardCopyOption.ATOMIC_MOVE);
    } catch (SQLException e) {
      throw new StoreTrouble(StoreTrouble.Kind.UNAVAILABLE, e);
    } finally {
      Files.deleteIfExists(partial);
    }
  }

  /** One statement reads one state of the database, whatever is written meanwhile. */
  private static void copy(Path database, Path partial) throws SQLException {
    try (Connection connection = source(database).getConnection();
        PreparedStatement copying = connection.prepareStatement("VACUUM INTO ?")) {
      copying.setString(1, partial.toString());
      copying.execute();
    }
  }

  private static void check(Path copy) throws SQLException {
    try (Connection connection = source(copy).getConnection();
        Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery("PRAGMA integrity_check")) {
      if (!result.next() || !"ok".equals(result.getString(1))) {
        throw new SQLException("the copy is not whole");
      }
    }
  }

  private static SQLiteDataSource source(Path file) {
    SQLiteDataSource source = new SQLiteDataSource();
    source.setUrl("jdbc:sqlite:" + file);
    source.getConfig().setBusyTimeout(BUSY_MILLIS);
    return source;
  }
}
