package dev.faircarry.app;

import java.time.Instant;

/**
 * A change somebody asks for.
 *
 * @param expected number of the revision it was made from; it is refused if another came meanwhile
 * @param what what it does, in a few words and ids; no quantities
 * @param document number of the revision since which the trip's document is as in {@code next}
 */
public record Change(
    int expected, TripState next, Author by, Instant at, String what, int document) {

  /** A change of the document itself. */
  public Change(int expected, TripState next, Author by, Instant at, String what) {
    this(expected, next, by, at, what, expected + 1);
  }
}
