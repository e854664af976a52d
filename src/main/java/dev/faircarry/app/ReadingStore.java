package dev.faircarry.app;

import java.util.List;
import java.util.Optional;

/** Keeps readings of a scale: added, never changed, erased with their trip or their hiker. */
public interface ReadingStore {

  /**
   * Keeps readings of one trip, in their order, all or none.
   *
   * @param most how many a trip may have; if they would be more, none is kept
   * @return whether they were kept; not if the trip is gone or has too many
   */
  boolean add(String trip, List<StoredReading> readings, int most);

  /** All readings of a trip, the oldest first. */
  List<StoredReading> of(String trip);

  /**
   * Readings of a trip, the newest first.
   *
   * @param before only readings kept before this one; empty for the newest
   */
  List<StoredReading> page(String trip, Optional<String> before, int limit);
}
