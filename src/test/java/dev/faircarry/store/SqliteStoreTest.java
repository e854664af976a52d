package dev.faircarry.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.faircarry.app.Store;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The contract on real SQLite files. */
class SqliteStoreTest extends StoreContract {
  @TempDir Path directory;

  @Override
  Store open() throws IOException {
    return Stores.sqlite(directory.resolve("trips.db"), SEAL);
  }

  @Test
  void journalIsWalAndWritesAreSynced() throws Exception {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + directory.resolve("trips.db"));
        Statement statement = connection.createStatement();
        ResultSet mode = statement.executeQuery("PRAGMA journal_mode")) {
      assertEquals("wal", mode.getString(1));
    }
  }

  @Test
  void noBodyMassAndNoNameStandsOpenInTheFiles() throws IOException {
    String id = kept("Quiet valley");
    store.trips().addSplit(split(id, "s1", "asha", Optional.empty()));
    for (String file : new String[] {"trips.db", "trips.db-wal"}) {
      String bytes = Files.readString(directory.resolve(file), StandardCharsets.ISO_8859_1);
      assertFalse(bytes.contains("58.25"), file);
      assertFalse(bytes.contains("Quiet valley"), file);
    }
  }

  @Test
  void anotherKeyOpensNothing() throws IOException {
    Seal other = Seal.ofKeyset(Seal.newKeyset());
    Stores.sqlite(directory.resolve("trips.db"), other).close();
    kept("One");
    assertThrows(Seal.WrongKey.class, () -> Stores.sqlite(directory.resolve("trips.db"), other));
  }
}
