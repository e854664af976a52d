package dev.faircarry.store;

import dev.faircarry.app.LinkStore;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.StoredTrip;
import java.util.Optional;

/** What every request about a trip asks for first, as it was read since the last change. */
record Unchanged(Lately<Optional<LinkStore.Kept>> links, Lately<Found> trips) {
  /**
   * What was found.
   *
   * @param sealedBytes what stands for the memory that it takes
   */
  record Found(Optional<StoredTrip> trip, int sealedBytes) {
    static final Found NOTHING = new Found(Optional.empty(), 0);
  }

  static Unchanged since(DataVersion version) {
    return new Unchanged(
        new Lately<>(version, StoreLimits.LATELY_LINKS, link -> 1),
        new Lately<>(
            version, StoreLimits.OPENED_BYTES, found -> found.sealedBytes() + NOTHING_BYTES));
  }

  private static final int NOTHING_BYTES = 500;
}
