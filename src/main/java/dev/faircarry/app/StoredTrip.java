package dev.faircarry.app;

import java.time.Instant;
import java.util.Optional;

/**
 * A trip as it is kept.
 *
 * @param line the revision this state is of
 * @param head number of the newest revision
 * @param document number of the revision since which the document is as it is here
 * @param eraseAt when a deleted trip is erased for good; empty while it is not deleted
 */
public record StoredTrip(
    String id,
    RevisionLine line,
    int head,
    int document,
    TripState state,
    Optional<Instant> eraseAt) {

  /** Whether it has been deleted and only waits to be erased. */
  public boolean deleted() {
    return eraseAt.isPresent();
  }

  /** Whether the document has changed since a split was made for it. */
  public boolean stale(StoredSplit split) {
    return split.revision() != document;
  }
}
