package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/** Weighs every pack on every morning. */
final class LoadSums {
  private static final long NANOGRAMS_PER_MILLIGRAM = 1_000_000L;

  private final Itinerary itinerary;
  private final Goods goods;
  private final Trip trip;

  LoadSums(Itinerary itinerary, Goods goods) {
    this.itinerary = itinerary;
    this.goods = goods;
    trip = itinerary.trip;
  }

  /** Loads of everybody with what the holdings say. */
  List<HikerLoads> with(Holdings holdings) {
    List<HikerLoads> all = new ArrayList<>();
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Hiker hiker = itinerary.hikers.get(i);
      List<Morning> mornings = new ArrayList<>();
      for (int day = 1; day <= itinerary.lastDay(i); day++) {
        mornings.add(on(i, day, holdings));
      }
      all.add(loads(hiker, mornings));
    }
    return all;
  }

  /** What a hiker who is there carries on a morning. */
  Morning on(int i, int day, Holdings holdings) {
    Sum sum = own(i, day);
    for (Goods.Good good : goods.all) {
      int held = holdings.held(good, day, i);
      int emptied = holdings.emptied(good, day, i);
      // Nearly everything is with somebody else.
      if (held > 0 || emptied > 0) {
        addShared(sum, good, day, held, emptied);
      }
    }
    return morning(itinerary.hikers.get(i), day, sum);
  }

  /** Loads of everybody with own kit alone. */
  List<HikerLoads> withoutShared() {
    List<HikerLoads> all = new ArrayList<>();
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Hiker hiker = itinerary.hikers.get(i);
      List<Morning> mornings = new ArrayList<>();
      for (int day = 1; day <= itinerary.lastDay(i); day++) {
        mornings.add(morning(hiker, day, own(i, day)));
      }
      all.add(loads(hiker, mornings));
    }
    return all;
  }

  private HikerLoads loads(Hiker hiker, List<Morning> mornings) {
    OptionalLong body =
        hiker
            .bodyMass()
            .map(mass -> OptionalLong.of(mass.milligrams()))
            .orElse(OptionalLong.empty());
    return new HikerLoads(hiker.id(), target(hiker), body, mornings);
  }

  /** Milligrams by what they count as. */
  private static final class Sum {
    long base;
    long consumables;
    long worn;
    long luxury;
    long shared;
  }

  private Sum own(int i, int day) {
    Hiker hiker = itinerary.hikers.get(i);
    Sum sum = new Sum();
    sum.base = hiker.pack().map(p -> p.mass().milligrams()).orElse(0L);
    for (KitItem item : hiker.kit()) {
      long mass = item.mass().milligrams();
      if (item.worn()) {
        sum.worn += mass;
        continue;
      }
      long left = mass;
      long stays = mass;
      if (item.use().isPresent()) {
        stays = item.use().get().leaves().milligrams();
        left =
            mass
                - Math.floorDiv(
                    Math.multiplyExact(mass - stays, (long) (day - 1)), itinerary.lastDay(i));
      }
      sum.base += stays;
      sum.consumables += left - stays;
      sum.luxury += item.luxury() ? left : 0;
    }
    return sum;
  }

  private void addShared(Sum sum, Goods.Good good, int day, int held, int emptied) {
    long unused = Math.multiplyExact(good.massOn(day), (long) held);
    long packaging = good.leavesMilligrams() * emptied;
    sum.shared += unused + packaging;
    boolean comesAndGoes =
        !good.item().onDays().isEmpty() && good.item().onDays().size() < itinerary.days;
    long stays = unused;
    if (comesAndGoes) {
      stays = 0;
    } else if (good.usedByUnits() || good.evenly()) {
      stays = good.leavesMilligrams() * held;
    }
    sum.base += stays + packaging;
    sum.consumables += unused - stays;
  }

  private Morning morning(Hiker hiker, int day, Sum sum) {
    long load = sum.base + sum.consumables;
    boolean whole = trip.policy().basis() == Policy.Basis.LOAD;
    long counted = whole ? load - sum.luxury : sum.shared;
    long target = target(hiker);
    OptionalLong cap = cap(hiker);
    BigInteger over =
        cap.isEmpty()
            ? BigInteger.ZERO
            : BigInteger.valueOf(load)
                .multiply(BigInteger.valueOf(NANOGRAMS_PER_MILLIGRAM))
                .subtract(BigInteger.valueOf(cap.getAsLong()))
                .max(BigInteger.ZERO);
    long excess = up(over.multiply(BigInteger.valueOf(1000)), BigInteger.valueOf(target));
    long steps =
        up(
            BigInteger.valueOf(counted)
                .multiply(BigInteger.valueOf(1000 * NANOGRAMS_PER_MILLIGRAM)),
            BigInteger.valueOf(target)
                .multiply(BigInteger.valueOf(trip.policy().grainThousandths())));
    return new Morning(
        day, load, counted, steps, cap, excess, sum.base, sum.consumables, sum.worn, sum.shared);
  }

  /** The smallest whole number not below a fraction. */
  static long up(BigInteger numerator, BigInteger denominator) {
    BigInteger[] parts = numerator.divideAndRemainder(denominator);
    return parts[0].longValueExact() + (parts[1].signum() > 0 ? 1 : 0);
  }

  /**
   * T in nanograms: stated, or fraction x body mass; a minor without an own fraction has the lower
   * of two.
   */
  long target(Hiker hiker) {
    if (hiker.targetLoad().isPresent()) {
      return Math.multiplyExact(hiker.targetLoad().get().milligrams(), NANOGRAMS_PER_MILLIGRAM);
    }
    Fraction fraction = trip.policy().targetFraction();
    if (hiker.targetFraction().isPresent()) {
      fraction = hiker.targetFraction().get();
    } else if (hiker.minor()) {
      fraction = lesser(fraction, Policy.MINOR_TARGET_FRACTION);
    }
    return fraction.ofMassInNanograms(
        hiker
            .bodyMass()
            .orElseThrow(
                () -> new IllegalArgumentException("a trip with issues cannot be weighed")));
  }

  /** The least of the stated caps, in nanograms. */
  OptionalLong cap(Hiker hiker) {
    List<Long> caps = new ArrayList<>();
    if (hiker.bodyMass().isPresent()) {
      Fraction fraction = trip.policy().capFraction();
      if (hiker.capFraction().isPresent()) {
        fraction = hiker.capFraction().get();
      } else if (hiker.minor()) {
        fraction = lesser(fraction, Policy.MINOR_CAP_FRACTION);
      }
      caps.add(fraction.ofMassInNanograms(hiker.bodyMass().get()));
    }
    hiker.capLoad().ifPresent(mass -> caps.add(mass.milligrams() * NANOGRAMS_PER_MILLIGRAM));
    hiker
        .pack()
        .flatMap(p -> p.loadRating())
        .ifPresent(mass -> caps.add(mass.milligrams() * NANOGRAMS_PER_MILLIGRAM));
    return caps.stream().mapToLong(Long::longValue).min();
  }

  private static Fraction lesser(Fraction a, Fraction b) {
    return b.millionths() < a.millionths() ? b : a;
  }
}
