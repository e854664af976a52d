package dev.faircarry.store;

import dev.faircarry.app.Store;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;

/** The queue on a real SQLite file. */
class SqliteJobsTest extends JobContract {
  @TempDir Path directory;

  @Override
  Store open() throws IOException {
    return Stores.sqlite(directory.resolve("trips.db"), StoreContract.SEAL);
  }
}
