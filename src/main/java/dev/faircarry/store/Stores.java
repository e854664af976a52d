package dev.faircarry.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.pool.HikariPool.PoolInitializationException;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreTrouble;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** Opens stores; brings their schema up to date first. */
public final class Stores {
  /** How long a writer waits for another process that writes. */
  private static final int BUSY_MILLIS = 5_000;

  /** How long a request waits for a connection before the store counts as unavailable. */
  private static final long CONNECTION_MILLIS = 3_000;

  private static final int SQLITE_READERS = 4;
  private static final int POSTGRES_CONNECTIONS = 10;
  private static final Object MIGRATING = new Object();

  private Stores() {}

  /**
   * Opens, or makes, a SQLite database.
   *
   * @param file the database; its journal stands beside it
   * @throws IOException if the directory cannot be used
   * @throws StoreTrouble if it does not open
   * @throws Seal.WrongKey if what is in it was kept with other keys
   */
  public static Store sqlite(Path file, Seal seal) throws IOException {
    try {
      return checked(openSqlite(file, seal));
    } catch (PoolInitializationException | FlywayException e) {
      throw new StoreTrouble(StoreTrouble.Kind.UNAVAILABLE, e);
    }
  }

  private static SqlStore checked(SqlStore store) {
    try {
      store.requireKeys();
      return store;
    } catch (RuntimeException e) {
      store.close();
      throw e;
    }
  }

  private static SqlStore openSqlite(Path file, Seal seal) throws IOException {
    HikariDataSource writing =
        pool("sqlite-writer", sqliteSource(file, SQLiteConfig.TransactionMode.IMMEDIATE), 1);
    HikariDataSource reading;
    DataVersion version;
    try {
      migrateAlone(file, writing);
      HikariConfig readers =
          config(
              "sqlite-readers",
              sqliteSource(file, SQLiteConfig.TransactionMode.DEFERRED),
              SQLITE_READERS);
      readers.setConnectionInitSql("PRAGMA query_only = ON");
      reading = new HikariDataSource(readers);
      version = new DataVersion(sqliteSource(file, SQLiteConfig.TransactionMode.DEFERRED));
    } catch (IOException | RuntimeException e) {
      writing.close();
      throw e;
    } catch (SQLException e) {
      writing.close();
      throw new IOException("the database cannot be opened", e);
    }
    return new SqlStore(
        new Work.Each(
            Jdbi.create(reading),
            Jdbi.create(writing),
            false,
            () -> writing.getHikariPoolMXBean().softEvictConnections(),
            Optional.of(Unchanged.since(version))),
        new Documents(seal),
        () -> {
          version.close();
          reading.close();
          writing.close();
        });
  }

  /**
   * Opens a PostgreSQL database.
   *
   * @param url a JDBC address with user and password in it, or as libpq writes it
   * @throws IllegalArgumentException if it is neither
   * @throws StoreTrouble if the database does not answer
   * @throws Seal.WrongKey if what is in it was kept with other keys
   */
  public static Store postgres(String url, Seal seal) {
    try {
      return checked(openPostgres(url, seal));
    } catch (PoolInitializationException | FlywayException e) {
      throw new StoreTrouble(StoreTrouble.Kind.UNAVAILABLE, e);
    }
  }

  private static SqlStore openPostgres(String url, Seal seal) {
    HikariConfig config = new HikariConfig();
    config.setPoolName("postgres");
    PostgresAddress address = PostgresAddress.of(url);
    config.setJdbcUrl(address.jdbcUrl());
    address.user().ifPresent(config::setUsername);
    address.password().ifPresent(config::setPassword);
    config.setMaximumPoolSize(POSTGRES_CONNECTIONS);
    config.setConnectionTimeout(CONNECTION_MILLIS);
    // An acknowledged write is on the disk, whatever the server's default is.
    config.setConnectionInitSql("SET synchronous_commit = on; SET statement_timeout = '10s'");
    config.addDataSourceProperty("socketTimeout", "15");
    config.addDataSourceProperty("connectTimeout", "3");
    HikariDataSource source = new HikariDataSource(config);
    try {
      migrate(source, "db/postgresql");
    } catch (RuntimeException e) {
      source.close();
      throw e;
    }
    Jdbi jdbi = Jdbi.create(source);
    return new SqlStore(
        new Work.Each(
            jdbi,
            jdbi,
            true,
            () -> source.getHikariPoolMXBean().softEvictConnections(),
            Optional.empty()),
        new Documents(seal),
        source::close);
  }

  private static DataSource sqliteSource(Path file, SQLiteConfig.TransactionMode mode) {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setBusyTimeout(BUSY_MILLIS);
    config.setTransactionMode(mode);
    config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file);
    return source;
  }

  private static HikariDataSource pool(String name, DataSource source, int size) {
    return new HikariDataSource(config(name, source, size));
  }

  private static HikariConfig config(String name, DataSource source, int size) {
    HikariConfig config = new HikariConfig();
    config.setPoolName(name);
    config.setDataSource(source);
    config.setMaximumPoolSize(size);
    config.setConnectionTimeout(CONNECTION_MILLIS);
    config.setMaxLifetime(0);
    return config;
  }

  /** SQLite has no lock that a migration could hold across its steps; a file lock stands in. */
  private static void migrateAlone(Path file, DataSource source) throws IOException {
    Path lockFile = file.resolveSibling(file.getFileName() + ".lock");
    synchronized (MIGRATING) {
      try (FileChannel channel =
              FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          FileLock lock = channel.lock()) {
        if (lock.isValid()) {
          migrate(source, "db/sqlite");
        }
      }
    }
    if (!Files.exists(file)) {
      throw new IOException("the database is not where it should be");
    }
  }

  private static void migrate(DataSource source, String location) {
    Flyway.configure()
        .dataSource(source)
        .locations("classpath:" + location)
        .loggers("slf4j")
        .load()
        .migrate();
  }
}
