package dev.faircarry.app;

import dev.faircarry.trip.Trip;
import java.util.Optional;
import java.util.Set;

/**
 * All of a stored trip that a change can touch; each revision keeps one.
 *
 * @param keptPrivate ids of hikers who keep their body mass even from the leader
 * @param agreedSplit id of the split the group agreed on
 */
public record TripState(Trip trip, Set<String> keptPrivate, Optional<String> agreedSplit) {
  public TripState {
    keptPrivate = Set.copyOf(keptPrivate);
  }

  /** Of a trip nobody has said anything about. */
  public static TripState of(Trip trip) {
    return new TripState(trip, Set.of(), Optional.empty());
  }
}
