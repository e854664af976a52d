package dev.faircarry.solve;

/**
 * Divides what a group of hikers holds anew among them, exactly: lists for each hiker every bundle
 * whose mass fits some wanted step as tightly as the total demands, then looks for bundles that
 * together take every block once.
 *
 * <p>Tightness: with potentials u, v of the assignment of wanted steps to hikers (see {@link
 * Matching}) every division within the wish satisfies sum(u_i + v_step(i) - load_i) = slack, each
 * term at least 0. So a bundle whose own term passes the slack is in no such division, and terms of
 * chosen bundles add up.
 *
 * <p>For trips where nobody leaves early; others are searched piece by piece.
 */
final class GroupSearch {
  /** What came of a search. */
  enum Result {
    /** A division within the wish is in the state. */
    FOUND,
    /** No division is within the wish. */
    NONE,
    /** Effort or room ended first. */
    UNKNOWN
  }

  static final int HALF_LIMIT = 1 << 17;

  private final Model m;
  private final State state;
  private final Effort effort;
  private final Pool pool;
  private final int size;
  private final int bundleLimit;

  GroupSearch(State state, int[] group, int bundleLimit, Effort effort) {
    this.m = state.m;
    this.state = state;
    this.effort = effort;
    this.bundleLimit = bundleLimit;
    pool = new Pool(m, state, group);
    size = group.length;
  }

  /** Whether the group is small enough to be listed. */
  boolean listable() {
    if (!pool.fitsWords) {
      return false;
    }
    for (int g = 0; g < size; g++) {
      if (Halves.size(pool, g, HALF_LIMIT) > HALF_LIMIT) {
        return false;
      }
    }
    return true;
  }

  /**
   * Looks for a division within the wish; on success the state holds it.
   *
   * @param stepLimit search steps it may take
   */
  Result search(Wish wish, long stepLimit) {
    Windows[] windows = new Windows[m.days];
    int tightest = 0;
    for (int d = 0; d < m.days; d++) {
      windows[d] = Windows.of(pool, wish, d);
      if (windows[d].slack < 0) {
        return Result.NONE;
      }
      tightest = windows[d].slack < windows[tightest].slack ? d : tightest;
    }
    BundleLists lists = new BundleLists(pool, windows, tightest, wish, bundleLimit, effort);
    if (!lists.complete() && lists.impossible()) {
      return Result.UNKNOWN;
    }
    if (lists.impossible()) {
      return Result.NONE;
    }
    Allowance allowance = new Allowance(effort, stepLimit);
    if (new Cover(pool, lists, wish, allowance).search(this::take)) {
      return Result.FOUND;
    }
    return !allowance.cut() && lists.complete() ? Result.NONE : Result.UNKNOWN;
  }

  /**
   * Puts a division into the state; takes it back and says no if a rule beyond single packs is
   * broken.
   */
  private boolean take(long[] bits, long[] counts) {
    int[][] before = new int[m.blocks.size()][];
    for (var entry : pool.entries) {
      for (int block : entry) {
        before[block] = state.holder[block].clone();
        state.take(block);
      }
    }
    int[] next = new int[pool.entries.size()];
    for (int g = 0; g < size; g++) {
      for (int e = 0; e < next.length; e++) {
        for (int u = pool.held(e, bits[g], counts[g]); u > 0; u--) {
          state.put(pool.entries.get(e).get(next[e]++), pool.group[g]);
        }
      }
    }
    if (state.broken() == 0) {
      return true;
    }
    for (int block = 0; block < before.length; block++) {
      if (before[block] != null) {
        state.take(block);
      }
    }
    for (int block = 0; block < before.length; block++) {
      if (before[block] != null) {
        state.put(block, before[block]);
      }
    }
    return false;
  }

  /** The steps of a group of hikers on a day as the state has them, from highest to lowest. */
  static int[] list(State state, int[] group, int day) {
    int[] list = new int[group.length];
    for (int g = 0; g < group.length; g++) {
      list[g] = state.step[group[g] * state.m.days + day];
    }
    return Steps.sortDescending(list);
  }

  /** Thousandths by which a group passes its caps as the state has it. */
  static long excess(State state, int[] group) {
    long sum = 0;
    for (int i : group) {
      for (int d = 0; d < state.m.days; d++) {
        sum += state.excess[i * state.m.days + d];
      }
    }
    return sum;
  }
}
