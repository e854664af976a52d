package dev.faircarry.solve;

import dev.faircarry.trip.Trip;
import java.util.Arrays;
import java.util.List;

/** How far a list is from what masses and prices allow, for the benchmark. */
public final class ListGap {
  private static final long STEPS = 2_000_000;

  private final Model m;
  private final Bound bound;
  private final int[] list;
  private final KnownBundles known;

  private ListGap(Trip trip, List<Long> steps) {
    m = ModelBuilder.of(trip);
    bound = new Bound(m);
    list = steps.stream().mapToInt(Math::toIntExact).toArray();
    known = new KnownBundles(m);
  }

  /**
   * A distance, in steps, that no level is further from its bound: the step below which no split
   * can bring it while the levels before are as in the list. Prices are asked at 2, 4, 8 ... steps
   * below a level, without cases, so the answer is 1 or such a number less one, or what masses say.
   *
   * @param steps of every hiker-morning, highest first
   */
  public static int widest(Trip trip, List<Long> steps) {
    return new ListGap(trip, steps).widest();
  }

  private int widest() {
    boolean priced = PriceSearch.suits(m);
    int widest = 0;
    for (int level = 0; level < list.length; level++) {
      int gap = list[level] - bound.atLevel(list, level, list[level]);
      for (int below = 2; priced && below <= gap && gap > widest; below *= 2) {
        gap = excluded(level, list[level] - below) ? below - 1 : gap;
      }
      widest = Math.max(widest, gap);
    }
    return widest;
  }

  private boolean excluded(int level, int step) {
    int[] wanted = list.clone();
    Arrays.fill(wanted, level, wanted.length, step);
    Wish wish = Wish.overall(m.days, wanted, 0);
    Effort effort = new Effort(STEPS, Watch.NONE);
    return new PriceSearch(new State(m), wish, known, effort).search(STEPS, 1)
        == GroupSearch.Result.NONE;
  }
}
