package dev.faircarry.kit;

import java.util.List;
import java.util.Optional;

/**
 * A hiker's kit and load, or the whole group's.
 *
 * @param hiker id; empty for the group
 * @param mornings weights on every morning there is somebody
 * @param ownBaseMilligrams base weight of own kit alone, without anything shared
 * @param byPurpose what is carried and worn on the first morning, by what it is for
 * @param byPlace the same by where it is stowed; what is worn and the pack itself are places of
 *     their own
 * @param heaviest the heaviest few things carried
 * @param drifts claimed against weighed
 * @param claimedOnlyMilligrams mass that nobody has weighed
 * @param costHundredths what everything with a stated cost is worth
 * @param costUnknown how many things have no stated cost
 * @param baseGoal base weight wanted, against that of the first morning
 * @param spendingGoal money wanted to be spent at most, against the cost
 */
public record KitOf(
    Optional<String> hiker,
    List<Weights> mornings,
    long ownBaseMilligrams,
    List<Share> byPurpose,
    List<Share> byPlace,
    List<Carried> heaviest,
    List<Drift> drifts,
    long claimedOnlyMilligrams,
    long costHundredths,
    int costUnknown,
    Optional<Goal> baseGoal,
    Optional<Goal> spendingGoal,
    List<StowAdvice> advice) {
  public KitOf {
    mornings = List.copyOf(mornings);
    byPurpose = List.copyOf(byPurpose);
    byPlace = List.copyOf(byPlace);
    heaviest = List.copyOf(heaviest);
    drifts = List.copyOf(drifts);
    advice = List.copyOf(advice);
  }

  /** Claimed against weighed, all things together. */
  public long driftMilligrams() {
    return drifts.stream().mapToLong(Drift::driftMilligrams).sum();
  }
}
