package dev.faircarry.store;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.access.Role;
import dev.faircarry.app.Author;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.TripState;
import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One key keeps so many trips and no more; another key is not held up. */
class TripsPerKeyTest {
  @TempDir Path directory;

  @Test
  void keyKeepsSoManyTripsAndNoMore() throws IOException {
    Author leader = new Author(Role.LEADER, Optional.empty());
    TripState state = TripState.of(Trips.named("One"));
    try (Store store =
        Stores.sqlite(directory.resolve("trips.db"), Seal.ofKeyset(Seal.newKeyset()))) {
      store.atomically(
          together -> {
            for (int i = 1; i < StoreLimits.TRIPS_PER_KEY; i++) {
              together.trips().create("t" + i, state, leader, Instant.EPOCH, "key");
            }
            return true;
          });
      KeptTrips trips = new KeptTrips(store, InstantSource.system(), new SecureRandom());
      assertTrue(trips.create(state.trip(), "key").isPresent());
      assertTrue(trips.create(state.trip(), "key").isEmpty());
      assertTrue(trips.create(state.trip(), "other").isPresent());
      // One that is erased makes room again.
      assertTrue(store.trips().erase("t1"));
      assertTrue(trips.create(state.trip(), "key").isPresent());
    }
  }
}
