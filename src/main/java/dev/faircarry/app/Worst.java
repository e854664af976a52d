package dev.faircarry.app;

import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Morning;
import dev.faircarry.check.Verdict;
import dev.faircarry.trip.Trip;
import java.math.BigInteger;
import java.util.Optional;

/**
 * The hiker-morning with the highest target ratio, the first in the trip's order among equals.
 *
 * @param countedMilligrams F
 * @param targetNanograms T
 */
public record Worst(
    String hiker, String name, int day, long countedMilligrams, long targetNanograms, long steps) {

  /** Empty only for a verdict without mornings. */
  public static Optional<Worst> of(Trip trip, Verdict verdict) {
    TripNames names = new TripNames(trip);
    Optional<Worst> worst = Optional.empty();
    for (HikerLoads loads : verdict.hikers()) {
      for (Morning m : loads.mornings()) {
        Worst next =
            new Worst(
                loads.hiker(),
                names.hiker(loads.hiker()),
                m.day(),
                m.countedMilligrams(),
                loads.targetNanograms(),
                m.steps());
        if (worst.isEmpty() || next.heavierThan(worst.get())) {
          worst = Optional.of(next);
        }
      }
    }
    return worst;
  }

  private boolean heavierThan(Worst other) {
    BigInteger left =
        BigInteger.valueOf(countedMilligrams).multiply(BigInteger.valueOf(other.targetNanograms));
    BigInteger right =
        BigInteger.valueOf(other.countedMilligrams).multiply(BigInteger.valueOf(targetNanograms));
    return left.compareTo(right) > 0;
  }
}
