package dev.faircarry.solve;

import java.util.Arrays;

/**
 * How much each hiker of a group may hold on one morning, given a wish, and how tight that is.
 *
 * <p>{@code waste(g, mass)} is the least u_g + v_t - mass over wanted steps t that the mass keeps;
 * the wastes of a whole division add up to at most {@code slack}.
 */
final class Windows {
  final int day;

  /** Wanted steps, each value once, from highest to lowest. */
  final int[] values;

  /** Most milligrams of pool blocks by hiker and value; below 0 where the value cannot be kept. */
  final long[][] most;

  private final int[] columns;

  /** Milligrams of pool blocks there are. */
  final long poolMass;

  private long[] u = {};
  private long[] v = {};

  /**
   * What the wanted steps could hold beyond what there is; below 0 where the wish cannot come true.
   */
  long slack;

  private Windows(int day, int[] values, long[][] most, int[] columns, long poolMass) {
    this.day = day;
    this.values = values;
    this.most = most;
    this.columns = columns;
    this.poolMass = poolMass;
    weigh();
  }

  /** The windows of a pool's group on a day. */
  static Windows of(Pool pool, Wish wish, int day) {
    long[] fixed = new long[pool.group.length];
    for (int g = 0; g < fixed.length; g++) {
      for (int block : pool.fixed.get(g)) {
        fixed[g] += pool.m.blocks.get(block).massSince()[0][day];
      }
    }
    long poolMass = 0;
    for (int e = 0; e < pool.entries.size(); e++) {
      poolMass += pool.entries.get(e).size() * pool.sample(e).massSince()[0][day];
    }
    return of(pool.m, pool.group, fixed, poolMass, wish, day);
  }

  /**
   * The windows of hikers who have something fixed and share out the rest.
   *
   * @param fixed milligrams each has anyway
   * @param poolMass milligrams to be shared out
   */
  static Windows of(Model m, int[] group, long[] fixed, long poolMass, Wish wish, int day) {
    int n = group.length;
    int[] wanted = wish.highest(day, n);
    int[] columns = new int[n];
    int distinct = 0;
    int[] values = new int[n];
    for (int k = 0; k < n; k++) {
      if (k == 0 || wanted[k] != wanted[k - 1]) {
        values[distinct++] = wanted[k];
      }
      columns[k] = distinct - 1;
    }
    values = Arrays.copyOf(values, distinct);
    long[][] most = new long[n][distinct];
    for (int g = 0; g < n; g++) {
      int hiker = group[g];
      long cap =
          wish.excessLimit() == 0 && m.capMilligrams[hiker] < Model.UNLIMITED
              ? m.capMilligrams[hiker] - m.ownLoad[hiker][day] - fixed[g]
              : Model.UNLIMITED;
      long free = g == wish.keptFree() && day == wish.freeDay() ? wish.freeMilligrams() : 0;
      for (int t = 0; t < distinct; t++) {
        most[g][t] = Math.min(cap, m.capacity(hiker, day, values[t]) - fixed[g]) - free;
      }
    }
    return new Windows(day, values, most, columns, poolMass);
  }

  /**
   * Computes potentials and slack from {@link #most}; called again after {@code most} was
   * sharpened.
   */
  void weigh() {
    int n = most.length;
    long[][] gains = new long[n][n];
    for (int g = 0; g < n; g++) {
      for (int k = 0; k < n; k++) {
        long gain = most[g][columns[k]];
        gains[g][k] = gain < 0 ? Matching.FORBIDDEN : gain;
      }
    }
    Matching matching = Matching.greatest(gains);
    if (!matching.possible()) {
      slack = -1;
      return;
    }
    slack = matching.total() - poolMass;
    u = matching.rowPotential();
    v = new long[values.length];
    for (int t = 0; t < v.length; t++) {
      v[t] = Long.MAX_VALUE;
    }
    for (int k = 0; k < n; k++) {
      v[columns[k]] = Math.min(v[columns[k]], matching.columnPotential()[k]);
    }
  }

  /**
   * The part of the slack that a mass uses up; {@code Long.MAX_VALUE} where it keeps no wanted
   * step.
   */
  long waste(int g, long mass) {
    long best = Long.MAX_VALUE;
    for (int t = 0; t < values.length; t++) {
      if (most[g][t] >= mass) {
        best = Math.min(best, u[g] + v[t] - mass);
      }
    }
    return best;
  }

  /** The part of the slack that a mass uses up when it is given a value. */
  long waste(int g, int t, long mass) {
    return u[g] + v[t] - mass;
  }

  /** The least mass with a value that does not waste more than the slack. */
  long least(int g, int t) {
    return u[g] + v[t] - slack;
  }
}
