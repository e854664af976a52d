package dev.faircarry.solve;

import java.util.Arrays;

/**
 * What no split can do, from masses alone.
 *
 * <p>A wish (a list of steps nowhere to be passed) cannot come true where own kit alone passes it;
 * where on some day the most that hikers can hold, each at a wanted step of its own, is less than
 * what the group carries that day ({@link Matching}); or where the days together need more mornings
 * above the wish's last step than it has.
 */
final class Bound {
  private final Model m;
  private final int[] ownList;
  private final Reachable reachable;

  Bound(Model model) {
    m = model;
    State empty = new State(m);
    ownList = empty.list();
    reachable = new Reachable(m);
  }

  /** The list of steps that own kit alone makes; no split is anywhere below it. */
  int[] ownList() {
    return ownList.clone();
  }

  /** Whether no split can keep the wanted list. */
  boolean excludes(int[] wanted) {
    if (!Steps.within(ownList, wanted)) {
      return true;
    }
    int last = wanted[wanted.length - 1];
    int above = 0;
    while (above < wanted.length && wanted[above] > last) {
      above++;
    }
    int needed = 0;
    for (int d = 0; d < m.days; d++) {
      int fewest = fewestAbove(d, wanted, above);
      if (fewest < 0) {
        return true;
      }
      needed += fewest;
    }
    return needed > above;
  }

  /**
   * Fewest hikers who must be above the wanted list's last step on a day; -1 where no number is
   * enough.
   */
  private int fewestAbove(int day, int[] wanted, int above) {
    int[] who = present(day);
    int most = Math.min(above, who.length);
    if (!holds(day, wanted, who, most)) {
      return -1;
    }
    int low = 0;
    int high = most;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (holds(day, wanted, who, middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
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
   * Whether the day's mass fits when the highest {@code count} wanted steps and then the last one
   * are given out.
   */
  private boolean holds(int day, int[] wanted, int[] who, int count) {
    int n = who.length;
    int last = wanted[wanted.length - 1];
    long[][] gains = new long[n][n];
    for (int r = 0; r < n; r++) {
      for (int c = 0; c < n; c++) {
        long room =
            reachable.below(who[r], day, m.capacity(who[r], day, c < count ? wanted[c] : last));
        gains[r][c] = room < 0 ? Matching.FORBIDDEN : room;
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
    int low = ownList[level];
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
