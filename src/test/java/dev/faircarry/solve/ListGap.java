package dev.faircarry.solve;

import dev.faircarry.trip.Trip;
import java.util.List;

/** How far a list is from what masses alone allow, for the benchmark. */
public final class ListGap {
  private ListGap() {}

  /**
   * The widest distance, in steps, of a level from its bound: the step below which no split can
   * bring it while the levels before are as in the list.
   *
   * @param steps of every hiker-morning, highest first
   */
  public static int widest(Trip trip, List<Long> steps) {
    Bound bound = new Bound(ModelBuilder.of(trip));
    int[] list = steps.stream().mapToInt(Math::toIntExact).toArray();
    int widest = 0;
    for (int level = 0; level < list.length; level++) {
      widest = Math.max(widest, list[level] - bound.atLevel(list, level, list[level]));
    }
    return widest;
  }
}
