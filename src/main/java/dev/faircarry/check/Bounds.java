package dev.faircarry.check;

import dev.faircarry.trip.Trip;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What no split can do, worked out from the trip alone and in another way than any solver here does
 * it.
 *
 * <p>Own kit: with nothing shared the sorted list of steps is nowhere above that of any split,
 * because pieces only add.
 *
 * <p>Sheer total: suppose a split had the list v up to position k and at most r from there on. On a
 * day, hiker i at step t holds at most t g T_i - own_i of shared mass. Summed over the hikers
 * there, that is at most sum(r g T_i - own_i) plus, for the k highest steps, (v_j - r) g T: by the
 * rearrangement inequality (Hardy, Littlewood, Polya, Inequalities, theorem 368) no more than when
 * the highest steps go to the highest targets. If the day's shared mass is more than that, there is
 * no such split.
 */
public final class Bounds {
  private static final BigInteger NANOGRAMS_PER_MILLIGRAM = BigInteger.valueOf(1_000_000);
  private static final BigInteger THOUSAND = BigInteger.valueOf(1000);

  private final Itinerary itinerary;
  private final Goods goods;
  private final List<HikerLoads> own;
  private final List<Long> ownSteps;
  private final long grain;

  private Bounds(Trip trip) {
    itinerary = new Itinerary(trip);
    goods = new Goods(itinerary);
    own = new LoadSums(itinerary, goods).withoutShared();
    ownSteps = SplitCheck.steps(own);
    grain = trip.policy().grainThousandths();
  }

  /**
   * How many levels of a list, from the highest, no split can improve, as far as these bounds tell.
   *
   * @param steps the list of a split, from highest to lowest
   */
  public static int provedLevels(Trip trip, List<Long> steps) {
    Bounds bounds = new Bounds(trip);
    int proved = 0;
    while (proved < steps.size() && bounds.proves(steps, proved)) {
      proved++;
    }
    return proved;
  }

  private boolean proves(List<Long> steps, int level) {
    if (ownSteps.get(level).equals(steps.get(level))) {
      return true;
    }
    long rest = steps.get(level) - 1;
    for (int day = 1; day <= itinerary.days; day++) {
      if (mostHeld(steps.subList(0, level), rest, day).compareTo(carried(day)) < 0) {
        return true;
      }
    }
    return false;
  }

  /** Thousandths of nanograms that the hikers of a day can hold at most. */
  private BigInteger mostHeld(List<Long> highest, long rest, int day) {
    BigInteger most = BigInteger.ZERO;
    List<Long> targets = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      if (itinerary.present(i, day)) {
        long target = own.get(i).targetNanograms();
        targets.add(target);
        BigInteger counted =
            BigInteger.valueOf(own.get(i).mornings().get(day - 1).countedMilligrams())
                .multiply(NANOGRAMS_PER_MILLIGRAM)
                .multiply(THOUSAND);
        most = most.add(held(rest, target)).subtract(counted);
      }
    }
    targets.sort(Collections.reverseOrder());
    for (int k = 0; k < Math.min(highest.size(), targets.size()); k++) {
      most = most.add(held(Math.max(0, highest.get(k) - rest), targets.get(k)));
    }
    return most;
  }

  private BigInteger held(long step, long targetNanograms) {
    return BigInteger.valueOf(step)
        .multiply(BigInteger.valueOf(grain))
        .multiply(BigInteger.valueOf(targetNanograms));
  }

  /**
   * Thousandths of nanograms of shared mass that are with somebody on a morning, whoever left
   * before.
   */
  private BigInteger carried(int day) {
    int stageStart = 1;
    for (int i = 0; i < own.size(); i++) {
      if (itinerary.lastDay(i) < day) {
        stageStart = Math.max(stageStart, itinerary.lastDay(i) + 1);
      }
    }
    long milligrams = 0;
    for (Goods.Good good : goods.all) {
      int unused = good.count() - good.usedBefore(day);
      int emptied = good.usedBefore(day) - good.usedBefore(stageStart);
      milligrams +=
          unused * good.massOn(day) + emptied * (good.usedByUnits() ? good.leavesMilligrams() : 0);
    }
    return BigInteger.valueOf(milligrams).multiply(NANOGRAMS_PER_MILLIGRAM).multiply(THOUSAND);
  }
}
