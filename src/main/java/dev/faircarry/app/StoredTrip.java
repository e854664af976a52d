package dev.faircarry.app;

import java.time.Instant;
import java.util.Optional;

/**
 * A trip as it is kept.
 *
 * @param line the revision this state is of
 * @param head number of the newest revision
 * @param eraseAt when a deleted trip is erased for good; empty while it is not deleted
 */
public record StoredTrip(
    String id, RevisionLine line, int head, TripState state, Optional<Instant> eraseAt) {

  /** Whether it has been deleted and only waits to be erased. */
  public boolean deleted() {
    return eraseAt.isPresent();
  }
}
