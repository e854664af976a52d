package dev.faircarry.store;

import dev.faircarry.app.StoreTrouble;
import java.sql.SQLException;
import java.util.function.Supplier;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Turns what the databases throw into what the port promises. */
final class Troubles {
  private static final String PG_DISK_FULL = "53100";
  private static final String PG_READ_ONLY = "25006";
  private static final String PG_CONSTRAINT_CLASS = "23";

  /** Deadlocks and what could not be put in a line with others. */
  private static final String PG_ROLLED_BACK_CLASS = "40";

  private static final int PRIMARY_CODE = 0xff;

  private Troubles() {}

  static <T> T told(Supplier<T> work) {
    try {
      return work.get();
    } catch (JdbiException e) {
      throw told(e);
    }
  }

  private static RuntimeException told(JdbiException e) {
    for (Throwable each = e; each != null; each = each.getCause()) {
      if (each instanceof SQLiteException sqlite) {
        return ofSqlite(sqlite, e);
      }
      if (each instanceof SQLException sql && sql.getSQLState() != null) {
        return ofPostgres(sql.getSQLState(), e);
      }
    }
    return new StoreTrouble(StoreTrouble.Kind.UNAVAILABLE, e);
  }

  private static RuntimeException ofSqlite(SQLiteException thrown, JdbiException e) {
    int primary = thrown.getResultCode().code & PRIMARY_CODE;
    if (primary == SQLiteErrorCode.SQLITE_CONSTRAINT.code) {
      return new StoreTrouble(StoreTrouble.Kind.CONTENDED, e);
    }
    if (primary == SQLiteErrorCode.SQLITE_FULL.code) {
      return new StoreTrouble(StoreTrouble.Kind.FULL, e);
    }
    if (primary == SQLiteErrorCode.SQLITE_READONLY.code) {
      return new StoreTrouble(StoreTrouble.Kind.READ_ONLY, e);
    }
    return new StoreTrouble(StoreTrouble.Kind.UNAVAILABLE, e);
  }

  private static RuntimeException ofPostgres(String state, JdbiException e) {
    if (state.startsWith(PG_CONSTRAINT_CLASS) || state.startsWith(PG_ROLLED_BACK_CLASS)) {
      return new StoreTrouble(StoreTrouble.Kind.CONTENDED, e);
    }
    return new StoreTrouble(
        switch (state) {
          case PG_DISK_FULL -> StoreTrouble.Kind.FULL;
          case PG_READ_ONLY -> StoreTrouble.Kind.READ_ONLY;
          default -> StoreTrouble.Kind.UNAVAILABLE;
        },
        e);
  }
}
