package dev.faircarry.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.faircarry.app.StoreTrouble;
import java.nio.file.Path;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What real databases say when they cannot write, and what the store makes of it. */
class TroublesTest {
  private static final int PAGES = 16;
  private static final int MORE_BYTES_THAN_FIT = 1_000_000;

  @TempDir Path directory;

  private static Handle postgres() {
    PostgresAddress address = PostgresAddress.of(Postgres.newDatabase());
    return Jdbi.create(
            address.jdbcUrl(), address.user().orElseThrow(), address.password().orElseThrow())
        .open();
  }

  private Handle sqlite() {
    Handle handle = Jdbi.create("jdbc:sqlite:" + directory.resolve("trips.db")).open();
    handle.execute("CREATE TABLE IF NOT EXISTS t (x BLOB UNIQUE)");
    return handle;
  }

  private static StoreTrouble.Kind kind(Handle handle, String statement) {
    return assertThrows(
            StoreTrouble.class, () -> Troubles.told(() -> handle.execute(statement)), statement)
        .kind();
  }

  @Test
  void sqliteWithoutRoomIsFull() {
    try (Handle handle = sqlite()) {
      handle.execute("PRAGMA max_page_count = " + PAGES);
      String tooMuch = "INSERT INTO t VALUES (zeroblob(" + MORE_BYTES_THAN_FIT + "))";
      assertEquals(StoreTrouble.Kind.FULL, kind(handle, tooMuch));
    }
  }

  @Test
  void sqliteThatMayOnlyBeReadIsReadOnly() {
    try (Handle handle = sqlite()) {
      handle.execute("PRAGMA query_only = ON");
      assertEquals(StoreTrouble.Kind.READ_ONLY, kind(handle, "INSERT INTO t VALUES (1)"));
    }
  }

  @Test
  void sqliteRowThatStandsAlreadyIsContended() {
    try (Handle handle = sqlite()) {
      handle.execute("INSERT INTO t VALUES (1)");
      assertEquals(StoreTrouble.Kind.CONTENDED, kind(handle, "INSERT INTO t VALUES (1)"));
    }
  }

  @Test
  void sqliteFileThatIsNoneIsUnavailable() {
    try (Handle handle = sqlite()) {
      assertEquals(StoreTrouble.Kind.UNAVAILABLE, kind(handle, "INSERT INTO nowhere VALUES (1)"));
    }
  }

  /**
   * The server itself sends these states: it is asked to raise them, as a disk cannot be filled
   * here. Appendix A of its manual says what they mean; a spent quota is 53100 there too.
   */
  @ParameterizedTest
  @CsvSource({
    "53100, FULL",
    "25006, READ_ONLY",
    "23505, CONTENDED",
    "40001, CONTENDED",
    "57014, UNAVAILABLE",
  })
  void postgresStatesAreRead(String state, StoreTrouble.Kind kind) {
    try (Handle handle = postgres()) {
      String raise = "DO $$ BEGIN RAISE EXCEPTION USING ERRCODE = '" + state + "'; END $$";
      assertEquals(kind, kind(handle, raise));
    }
  }

  @Test
  void postgresThatMayOnlyBeReadIsReadOnly() {
    try (Handle handle = postgres()) {
      handle.execute("SET default_transaction_read_only = on");
      assertEquals(StoreTrouble.Kind.READ_ONLY, kind(handle, "CREATE TABLE t (x int)"));
    }
  }
}
