package dev.faircarry.solve;

import java.util.Arrays;

/**
 * What no split can do, from masses alone.
 *
 * <p>A wish (a list of steps nowhere to be passed) cannot come true where own kit and what a hiker
 * must hold anyway ({@link ForcedMass}) pass it, or where on some day the most that hikers can hold
 * exactly, each at a wanted step of its own, is less than what the group carries that day ({@link
 * Matching}). With several days the highest wanted steps must be shared among them, see {@link
 * Shares} and {@link DayWeights}.
 */
final class Bound {
  private static final int MOST_MORNINGS_SHARED = 120;
  private static final int ROUNDS = 4;

  private final Model m;

  /** Milligrams that a hiker holds in every split, by hiker and day. */
  private final long[][] forced;

  /** The list if everybody held what is forced and no more. */
  private final int[] forcedList;

  private final Reachable reachable;
  private final DayWeights weights;
  private final boolean weighing;

  Bound(Model model) {
    this(model, true);
  }

  /**
   * Bounds of a trip.
   *
   * @param weighing whether to weigh days, which takes much longer than all else
   */
  Bound(Model model, boolean weighing) {
    m = model;
    this.weighing = weighing;
    forced = ForcedMass.of(m);
    forcedList = forcedList();
    reachable = new Reachable(m);
    weights = new DayWeights(m, reachable);
  }

  private int[] forcedList() {
    int[] list = new int[m.mornings()];
    int at = 0;
    for (int i = 0; i < m.hikers; i++) {
      for (int d = 0; d <= m.lastDay[i]; d++) {
        list[at++] = m.step(i, d, forced[i][d]);
      }
    }
    return Steps.sortDescending(list);
  }

  /**
   * For each day, the step at which the hikers who are not above it by own kit alone could hold
   * everything together.
   */
  int[] aims() {
    int[] aims = new int[m.days];
    for (int d = 0; d < m.days; d++) {
      int low = 0;
      int high = 1;
      while (roomAt(d, high) < m.leastTotal[d]) {
        low = high + 1;
        high *= 2;
      }
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (roomAt(d, middle) >= m.leastTotal[d]) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      aims[d] = low;
    }
    return aims;
  }

  private long roomAt(int day, int step) {
    long room = 0;
    for (int i : present(day)) {
      room += Math.max(0, m.capacity(i, day, step));
    }
    return room;
  }

  /** Whether no split can keep the wanted list. */
  boolean excludes(int[] wanted) {
    if (!Steps.within(forcedList, wanted)) {
      return true;
    }
    boolean eachValue = m.days > 1 && m.days * m.hikers <= MOST_MORNINGS_SHARED;
    return new Shares(wanted, eachValue).excluded()
        || (eachValue && weighing && weights.excludes(wanted));
  }

  /**
   * How the highest wanted steps must be shared among the days. Going down the wanted values, each
   * day needs at least so many hikers above a value; what other days need is not there for it,
   * which leaves it fewer high steps, and so it may need more. Repeated until nothing changes or
   * more are needed above some value than are wanted there.
   */
  private final class Shares {
    private final int[] values;

    /** How many wanted steps are above each value. */
    private final int[] above;

    /** Fewest hikers above each value, by day and value. */
    private final int[][] need;

    private final boolean eachValue;

    Shares(int[] wanted, boolean eachValue) {
      this.eachValue = eachValue;
      DistinctSteps distinct = DistinctSteps.of(wanted);
      values = distinct.values();
      above = distinct.above();
      need = new int[m.days][values.length];
    }

    boolean excluded() {
      boolean changed = true;
      for (int round = 0; changed && round < ROUNDS; round++) {
        changed = false;
        for (int d = 0; d < m.days; d++) {
          for (int j = eachValue ? 0 : values.length - 1; j < values.length; j++) {
            int fewest = fewestAbove(d, j);
            if (fewest < 0) {
              return true;
            }
            changed |= fewest > need[d][j];
            need[d][j] = Math.max(need[d][j], fewest);
          }
        }
        for (int j = 0; j < values.length; j++) {
          if (free(-1, j) < 0) {
            return true;
          }
        }
        changed &= m.days > 1;
      }
      return false;
    }

    /** How many of the steps above a value the other days leave for a day. */
    private int free(int day, int j) {
      int free = above[j];
      for (int d = 0; d < m.days; d++) {
        free -= d == day ? 0 : need[d][j];
      }
      return free;
    }

    /**
     * Fewest hikers who must be above a value on a day; -1 where the steps left for it are not
     * enough.
     */
    private int fewestAbove(int day, int j) {
      int[] who = present(day);
      int[] tokens = new int[who.length];
      for (int k = 0; k < tokens.length; k++) {
        int lowest = 0;
        for (int v = 0; v <= j; v++) {
          lowest = free(day, v) <= k ? v : lowest;
        }
        tokens[k] = values[lowest];
      }
      if (!holds(day, who, tokens, tokens.length, values[j])) {
        return -1;
      }
      int low = Math.min(need[day][j], who.length);
      int high = who.length;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (holds(day, who, tokens, middle, values[j])) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      return low;
    }
  }

  private int[] present(int day) {
    int[] who = new int[m.hikers];
    int size = 0;
    for (int i = 0; i < m.hikers; i++) {
      if (m.present(i, day)) {
        who[size++] = i;
      }
    }
    return Arrays.copyOf(who, size);
  }

  /**
   * Whether the day's mass fits when the first {@code count} steps and then the lowest one are
   * given out.
   */
  private boolean holds(int day, int[] who, int[] tokens, int count, int lowest) {
    int n = who.length;
    long[][] gains = new long[n][n];
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < n; c++) {
        int step = c < count ? Math.max(tokens[c], lowest) : lowest;
        if (c > 0 && step == (c - 1 < count ? Math.max(tokens[c - 1], lowest) : lowest)) {
          gains[r][c] = gains[r][c - 1];
          continue;
        }
        long room = reachable.below(who[r], day, m.capacity(who[r], day, step));
        gains[r][c] = room < forced[who[r]][day] ? Matching.FORBIDDEN : room;
      }
    }
    Matching matching = Matching.greatest(gains);
    return matching.possible() && matching.total() >= m.leastTotal[day];
  }

  /**
   * The step below which no split can bring a level, the earlier levels being as in the list.
   *
   * @param reached a step that the level has in some split with these earlier levels
   */
  int atLevel(int[] list, int level, int reached) {
    int low = forcedList[level];
    int high = reached;
    while (low < high) {
      int middle = Math.floorDiv(low + high, 2);
      int[] wanted = list.clone();
      Arrays.fill(wanted, level, wanted.length, middle);
      if (excludes(wanted)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
