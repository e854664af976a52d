package dev.faircarry.check;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The opening plan of items about which a split says nothing: each unit comes from the pack that is
 * then the heaviest for its carrier's target, so that loads stay even. What a leaver hands on at
 * the camp of that day stays in the pack if somebody else can open instead.
 */
final class DefaultOpening {
  private final Itinerary itinerary;
  private final Goods goods;
  private final LoadSums sums;
  private final List<CampHandover> handovers;
  private final Set<String> planned = new HashSet<>();

  DefaultOpening(Itinerary itinerary, Goods goods, Split split) {
    this.itinerary = itinerary;
    this.goods = goods;
    sums = new LoadSums(itinerary, goods);
    handovers = split.handoversAtCamp();
    split.opened().forEach(entry -> planned.add(entry.item()));
  }

  /** Openings of a day, from what is held on its morning; fewer than used if fewer are held. */
  List<Opened> on(int day, Holdings holdings) {
    List<Goods.Good> open =
        goods.all.stream()
            .filter(good -> good.usedByUnits() && !planned.contains(good.item().id()))
            .filter(good -> good.usedOn().get(day - 1) > 0)
            .toList();
    List<Opened> openings = new ArrayList<>();
    if (!open.isEmpty()) {
      long[] counted = new long[itinerary.hikers.size()];
      for (int i = 0; i < counted.length; i++) {
        counted[i] = itinerary.present(i, day) ? sums.on(i, day, holdings).countedMilligrams() : 0;
      }
      open.forEach(good -> open(good, day, holdings, counted, openings));
    }
    return openings;
  }

  private void open(
      Goods.Good good, int day, Holdings holdings, long[] counted, List<Opened> openings) {
    int n = counted.length;
    int[] left = new int[n];
    for (int i = 0; i < n; i++) {
      left[i] = itinerary.present(i, day) ? holdings.held(good, day, i) : 0;
    }
    int[] reserved = reserved(good, day, n);
    int[] opened = new int[n];
    for (int unit = 0; unit < good.usedOn().get(day - 1); unit++) {
      int from = heaviest(left, reserved, counted);
      if (from < 0) {
        from = heaviest(left, new int[n], counted);
      }
      if (from < 0) {
        break;
      }
      left[from]--;
      opened[from]++;
      counted[from] -= good.unitMilligrams() - good.leavesMilligrams();
    }
    for (int i = 0; i < n; i++) {
      if (opened[i] > 0) {
        openings.add(new Opened(day, good.item().id(), itinerary.hikers.get(i).id(), opened[i]));
      }
    }
  }

  private int[] reserved(Goods.Good good, int day, int n) {
    int[] reserved = new int[n];
    for (CampHandover handover : handovers) {
      int from = itinerary.index(handover.from());
      if (handover.afterDay() == day && from >= 0 && handover.piece().equals(good.ref())) {
        reserved[from] =
            (int) Math.min(good.count(), (long) reserved[from] + Math.max(0, handover.units()));
      }
    }
    return reserved;
  }

  /** The first of those whose ratio of counted load to target is highest; -1 if nobody can. */
  private int heaviest(int[] left, int[] reserved, long[] counted) {
    int best = -1;
    for (int i = 0; i < left.length; i++) {
      if (left[i] > reserved[i] && (best < 0 || higher(i, best, counted))) {
        best = i;
      }
    }
    return best;
  }

  private boolean higher(int i, int j, long[] counted) {
    BigInteger first = times(counted[i], sums.target(itinerary.hikers.get(j)));
    return first.compareTo(times(counted[j], sums.target(itinerary.hikers.get(i)))) > 0;
  }

  private static BigInteger times(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }
}
