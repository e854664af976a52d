package dev.faircarry.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.access.Role;
import dev.faircarry.access.Token;
import dev.faircarry.app.Author;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.Store;
import dev.faircarry.app.TripState;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A copy taken while others write, and a service that goes on from it. */
class BackupTest {
  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");
  private static final Author LEADER = new Author(Role.LEADER, Optional.empty());
  private static final int BEFORE = 40;

  private final Seal seal = Seal.ofKeyset(Seal.newKeyset());
  private final SecureRandom random = new SecureRandom();

  @TempDir Path directory;

  private String keep(Store store, String name) {
    String id = Token.freshId(random);
    store.trips().create(id, TripState.of(Trips.named(name)), LEADER, NOON, "open");
    return id;
  }

  @Test
  void copyTakenDuringWritesHasEverythingAcknowledgedBefore() throws Exception {
    Path copy = directory.resolve("copy.db");
    List<String> before = new CopyOnWriteArrayList<>();
    AtomicBoolean stop = new AtomicBoolean();
    CountDownLatch enough = new CountDownLatch(BEFORE);
    ExecutorService writing = Executors.newSingleThreadExecutor();
    try (Store store = Stores.sqlite(directory.resolve("trips.db"), seal)) {
      Future<Integer> written =
          writing.submit(
              () -> {
                int count = 0;
                while (!stop.get()) {
                  before.add(keep(store, "Trip " + count++));
                  enough.countDown();
                }
                return count;
              });
      assertTrue(enough.await(60, TimeUnit.SECONDS), "nothing is written");
      List<String> acknowledged = List.copyOf(before);
      Backup.of(directory.resolve("trips.db"), copy);
      stop.set(true);
      int all = written.get(60, TimeUnit.SECONDS);
      assertTrue(all >= acknowledged.size());
      try (Store restored = Stores.sqlite(copy, seal)) {
        for (String id : acknowledged) {
          assertEquals(store.trips().find(id), restored.trips().find(id));
          assertEquals(
              store.trips().history(id, Integer.MAX_VALUE, 10),
              restored.trips().history(id, Integer.MAX_VALUE, 10));
        }
        // It goes on from there, and the first knows nothing of that.
        String later = keep(restored, "Later");
        assertTrue(store.trips().find(later).isEmpty());
      }
    } finally {
      writing.shutdownNow();
    }
  }

  /** Links open the same trips after a restore: their hashes are in the copy. */
  @Test
  void linksOpenARestoredTrip() throws IOException {
    Path copy = directory.resolve("copy.db");
    String trip;
    String token;
    try (Store store = Stores.sqlite(directory.resolve("trips.db"), seal)) {
      KeptTrips trips = new KeptTrips(store, InstantSource.system(), random);
      KeptTrips.Issued made = trips.create(Trips.named("One"), "open").orElseThrow();
      trip = made.link().trip();
      token = made.token().text();
      Backup.of(directory.resolve("trips.db"), copy);
    }
    try (Store restored = Stores.sqlite(copy, seal)) {
      KeptTrips trips = new KeptTrips(restored, InstantSource.system(), random);
      assertTrue(trips.enter(trip, Optional.of(token)).isPresent());
    }
    assertThrows(Seal.WrongKey.class, () -> Stores.sqlite(copy, Seal.ofKeyset(Seal.newKeyset())));
  }

  @Test
  void copyIsItsOwnersAloneAndReplacesNothing() throws IOException {
    Path database = directory.resolve("trips.db");
    Stores.sqlite(database, seal).close();
    Path copy = directory.resolve("copy.db");
    Backup.of(database, copy);
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(copy)));
    byte[] first = Files.readAllBytes(copy);
    assertThrows(FileAlreadyExistsException.class, () -> Backup.of(database, copy));
    assertEquals(first.length, Files.size(copy));
    assertThrows(
        NoSuchFileException.class,
        () -> Backup.of(directory.resolve("none.db"), directory.resolve("other.db")));
    assertThrows(IOException.class, () -> Backup.of(database, directory.resolve("none/copy.db")));
    assertFalse(Files.exists(directory.resolve("copy.db.part")));
    assertFalse(Files.exists(directory.resolve("none.db")));
  }
}
