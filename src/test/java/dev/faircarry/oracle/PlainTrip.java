package dev.faircarry.oracle;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The numbers of a trip, read a third time and in the plainest way, from the page "How the trip
 * format is read". Nothing is shared with the solver or the checker. Days count from 1.
 */
final class PlainTrip {
  private static final BigInteger THOUSAND = BigInteger.valueOf(1000);

  final Trip trip;
  final List<Thing> things = new ArrayList<>();

  PlainTrip(Trip trip) {
    this.trip = trip;
    for (SharedItem item : trip.shared()) {
      if (item.form() instanceof Form.Parts parts) {
        for (Form.Part part : parts.parts()) {
          things.add(Thing.part(item, part));
        }
      } else {
        things.add(Thing.of(trip, item));
      }
    }
  }

  int hikers() {
    return trip.hikers().size();
  }

  Hiker hiker(int i) {
    return trip.hikers().get(i);
  }

  int lastDay(int i) {
    return Math.min(trip.days(), hiker(i).leavesAfterDay().orElse(trip.days()));
  }

  boolean present(int i, int day) {
    return day <= lastDay(i);
  }

  /** Day 1 and every day after somebody has left. */
  boolean stageStarts(int day) {
    if (day == 1) {
      return true;
    }
    for (int i = 0; i < hikers(); i++) {
      if (lastDay(i) == day - 1) {
        return true;
      }
    }
    return false;
  }

  /** T in nanograms. */
  BigInteger target(int i) {
    Hiker h = hiker(i);
    if (h.targetLoad().isPresent()) {
      return nanograms(h.targetLoad().get().milligrams());
    }
    Fraction fraction = trip.policy().targetFraction();
    if (h.minor() && fraction.millionths() > Policy.MINOR_TARGET_FRACTION.millionths()) {
      fraction = Policy.MINOR_TARGET_FRACTION;
    }
    return ofBody(h, h.targetFraction().orElse(fraction));
  }

  private static BigInteger ofBody(Hiker h, Fraction fraction) {
    return BigInteger.valueOf(h.bodyMass().orElseThrow().milligrams())
        .multiply(BigInteger.valueOf(fraction.millionths()));
  }

  static BigInteger nanograms(long milligrams) {
    return BigInteger.valueOf(milligrams).multiply(BigInteger.valueOf(1_000_000));
  }

  /** Everything stated that a load may not pass, in nanograms; empty when nothing is. */
  List<BigInteger> caps(int i) {
    Hiker h = hiker(i);
    List<BigInteger> caps = new ArrayList<>();
    if (h.bodyMass().isPresent()) {
      Fraction fraction = trip.policy().capFraction();
      if (h.minor() && fraction.millionths() > Policy.MINOR_CAP_FRACTION.millionths()) {
        fraction = Policy.MINOR_CAP_FRACTION;
      }
      caps.add(ofBody(h, h.capFraction().orElse(fraction)));
    }
    h.capLoad().ifPresent(mass -> caps.add(nanograms(mass.milligrams())));
    h.pack().flatMap(p -> p.loadRating()).ifPresent(mass -> caps.add(nanograms(mass.milligrams())));
    return caps;
  }

  /** Milligrams of pack and packed kit on a morning, with or without luxuries. */
  long own(int i, int day, boolean luxuries) {
    long sum = hiker(i).pack().map(p -> p.mass().milligrams()).orElse(0L);
    for (KitItem item : hiker(i).kit()) {
      if (item.worn() || (item.luxury() && !luxuries)) {
        continue;
      }
      long mass = item.mass().milligrams();
      if (item.use().isPresent()) {
        long goes = mass - item.use().get().leaves().milligrams();
        mass -= goes * (day - 1) / lastDay(i);
      }
      sum += mass;
    }
    return sum;
  }

  /** Millilitres left for shared pieces; negative means no limit. */
  long room(int i) {
    if (hiker(i).pack().isEmpty() || hiker(i).pack().get().volume().isEmpty()) {
      return -1;
    }
    long room = hiker(i).pack().get().volume().get().milliliters();
    for (KitItem item : hiker(i).kit()) {
      if (!item.worn() && item.stow() != Stow.OUTSIDE && item.volume().isPresent()) {
        room -= item.volume().get().milliliters();
      }
    }
    return Math.max(0, room);
  }

  /** ceil(1000 F / (grain T)), F being shared milligrams and what the basis adds. */
  long step(int i, int day, long shared) {
    boolean whole = trip.policy().basis() == Policy.Basis.LOAD;
    BigInteger counted = nanograms(shared + (whole ? own(i, day, false) : 0));
    return up(
        counted.multiply(THOUSAND),
        target(i).multiply(BigInteger.valueOf(trip.policy().grainThousandths())));
  }

  /** ceil(1000 (L - cap) / T) where the least cap is passed, else 0. */
  long excess(int i, int day, long shared) {
    BigInteger load = nanograms(shared + own(i, day, true));
    BigInteger over = BigInteger.ZERO;
    for (BigInteger cap : caps(i)) {
      over = over.max(load.subtract(cap));
    }
    return up(over.multiply(THOUSAND), target(i));
  }

  private static long up(BigInteger numerator, BigInteger denominator) {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[0].longValueExact() + parts[1].signum();
  }
}
