package dev.faircarry.solve;

import java.util.Arrays;

/**
 * What no split over several days can do, from masses alone: one assignment of all wanted steps to
 * all hiker-mornings, with a weight for each day.
 *
 * <p>A split within the wish gives every morning a step of its own under which its load fits. So
 * for any weights w that are not negative, the sum of w x mass over the days is at most the
 * greatest sum of w x room over all assignments (Lagrangian relaxation of the demand that each
 * day's mass fits that day; Geoffrion 1974). Weights that show a contradiction are looked for by
 * steps against the days that lack room.
 */
final class DayWeights {
  private static final int FIRST_WEIGHT = 64;
  private static final int[] CHANGES = {32, 32, 16, 16, 8, 8, 4, 4, 2, 2, 1, 1};

  private final Model m;
  private final Reachable reachable;
  private final int[] hikerOf;
  private final int[] dayOf;

  DayWeights(Model model, Reachable reachable) {
    m = model;
    this.reachable = reachable;
    int mornings = m.mornings();
    hikerOf = new int[mornings];
    dayOf = new int[mornings];
    int at = 0;
    for (int i = 0; i < m.hikers; i++) {
      for (int d = 0; d <= m.lastDay[i]; d++) {
        hikerOf[at] = i;
        dayOf[at++] = d;
      }
    }
  }

  /** Whether no split can keep the wanted list, from highest to lowest. */
  boolean excludes(int[] wanted) {
    long[][] room = room(wanted);
    int[] weights = new int[m.days];
    Arrays.fill(weights, FIRST_WEIGHT);
    for (int change : CHANGES) {
      Matching matching = Matching.greatest(weighted(room, weights));
      if (!matching.possible() || matching.total() < weightedMass(weights)) {
        return true;
      }
      long[] left = new long[m.days];
      for (int cell = 0; cell < room.length; cell++) {
        left[dayOf[cell]] += room[cell][matching.columnOfRow()[cell]];
      }
      boolean fits = true;
      for (int d = 0; d < m.days; d++) {
        left[d] -= m.leastTotal[d];
        fits &= left[d] >= 0;
      }
      if (fits) {
        return false;
      }
      for (int d = 0; d < m.days; d++) {
        weights[d] = left[d] < 0 ? weights[d] + change : Math.max(0, weights[d] - change);
      }
    }
    return false;
  }

  private long[][] room(int[] wanted) {
    int n = hikerOf.length;
    long[][] room = new long[n][n];
    for (int cell = 0; cell < n; cell++) {
      int hiker = hikerOf[cell];
      int day = dayOf[cell];
      for (int k = 0; k < n; k++) {
        if (k > 0 && wanted[k] == wanted[k - 1]) {
          room[cell][k] = room[cell][k - 1];
        } else {
          long below = reachable.below(hiker, day, m.capacity(hiker, day, wanted[k]));
          room[cell][k] = below < 0 ? Matching.FORBIDDEN : below;
        }
      }
    }
    return room;
  }

  private long[][] weighted(long[][] room, int[] weights) {
    long[][] gains = new long[room.length][room.length];
    for (int cell = 0; cell < room.length; cell++) {
      int weight = weights[dayOf[cell]];
      for (int k = 0; k < room.length; k++) {
        long each = room[cell][k];
        gains[cell][k] = each == Matching.FORBIDDEN ? each : each * weight;
      }
    }
    return gains;
  }

  private long weightedMass(int[] weights) {
    long mass = 0;
    for (int d = 0; d < m.days; d++) {
      mass += weights[d] * m.leastTotal[d];
    }
    return mass;
  }
}
