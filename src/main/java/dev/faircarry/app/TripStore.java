package dev.faircarry.app;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Keeps trips, their history and their splits. When a method returns, what it changed is on the
 * disk. Methods throw {@link StoreTrouble} when the store cannot do its work.
 */
public interface TripStore {

  /**
   * Keeps a new trip as revision 1.
   *
   * @param key who pays for it: limits count trips by this
   */
  void create(String id, TripState state, Author by, Instant at, String key);

  /** How many trips of a key are kept, deleted ones that are not yet erased included. */
  int countOf(String key);

  /** The newest revision; deleted trips are found too. */
  Optional<StoredTrip> find(String id);

  /** Any revision that is not erased. */
  Optional<StoredTrip> find(String id, int revision);

  /** Keeps a change as the next revision, if nobody came first. */
  ChangeResult change(String id, Change change);

  /**
   * The history, newest first.
   *
   * @param before only revisions with lower numbers
   */
  List<RevisionLine> history(String id, int before, int limit);

  /** Marks a trip as deleted. It can be taken back until the time it is erased. */
  ChangeResult delete(String id, int expected, Instant eraseAt);

  /** Takes a deletion back; false when there is nothing to take back. */
  boolean restore(String id);

  /** Erases a trip at once, with everything that belongs to it; false when there is none. */
  boolean erase(String id);

  /** Erases the deleted trips whose time has come; their number. */
  int eraseDue(Instant now);

  /**
   * Erases what history knows of a hiker: documents of revisions and splits that name them, their
   * links, and their name beside changes. The newest revision must not name them any more.
   */
  void eraseHiker(String id, String hiker);

  /** Keeps a split. */
  void addSplit(StoredSplit split);

  Optional<StoredSplit> split(String trip, String id);

  /**
   * Splits of a trip, newest first.
   *
   * @param before only splits kept before this one; empty for the newest
   */
  List<StoredSplit> splits(String trip, Optional<String> before, int limit);
}
