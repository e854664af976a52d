package dev.faircarry.solve;

/**
 * Finds one bundle for each hiker so that every block is taken once: depth first, the hiker with
 * the fewest choices next, the least wasteful bundle first.
 */
final class Cover {
  /** Tries a division: words by hiker; false sends the search on. */
  interface Taker {
    boolean take(long[] bits, long[] counts);
  }

  private final Pool pool;
  private final BundleLists lists;
  private final Wish wish;
  private final Allowance allowance;
  private final ChosenSteps chosen;
  private final LiveBundles bundles;
  private final int n;
  private final long[] chosenBits;
  private final long[] chosenCounts;
  private Taker taker = (b, c) -> true;

  Cover(Pool pool, BundleLists lists, Wish wish, Allowance allowance) {
    this.pool = pool;
    this.lists = lists;
    this.wish = wish;
    this.allowance = allowance;
    n = pool.group.length;
    chosen = new ChosenSteps(wish, n, pool.m.days);
    bundles = new LiveBundles(pool, lists, chosen, allowance);
    chosenBits = new long[n];
    chosenCounts = new long[n];
  }

  /** Searches until the taker takes a division. */
  boolean search(Taker taker) {
    this.taker = taker;
    Rest all =
        new Rest(
            pool.allBits,
            pool.allCounts,
            lists.windows.poolMass,
            lists.windows.slack,
            wish.excessLimit(),
            wish.budget().map(Budget::gains).orElse(0),
            wish.budget().map(Budget::drops).orElse(0));
    int everybody = (1 << n) - 1;
    int[][] fitting = bundles.narrow(bundles.all(), everybody, all, 0);
    return fitting != null && descend(all, fitting, everybody, 0);
  }

  private boolean descend(Rest rest, int[][] live, int open, int depth) {
    if (Integer.bitCount(open) == 1) {
      return last(Integer.numberOfTrailingZeros(open), rest, depth);
    }
    int next = -1;
    for (int g = 0; g < n; g++) {
      if ((open & 1 << g) != 0 && (next < 0 || live[g].length < live[next].length)) {
        next = g;
      }
    }
    // The heaviest block must be in somebody's bundle; often fewer bundles hold it than any one
    // hiker has.
    long heaviest = Long.lowestOneBit(rest.bits());
    if (heaviest != 0
        && live[next].length > 8
        && holding(heaviest, live, open) < live[next].length) {
      for (int g = 0; g < n; g++) {
        if ((open & 1 << g) != 0 && branch(g, heaviest, rest, live, open, depth)) {
          return true;
        }
        if (allowance.cut()) {
          return false;
        }
      }
      return false;
    }
    return branch(next, 0, rest, live, open, depth);
  }

  private int holding(long bit, int[][] live, int open) {
    int count = 0;
    int seen = 0;
    for (int g = 0; g < n; g++) {
      if ((open & 1 << g) != 0) {
        long[] bits = lists.of(g).bits;
        seen += live[g].length;
        for (int k : live[g]) {
          count += (bits[k] & bit) != 0 ? 1 : 0;
        }
      }
    }
    allowance.pay(seen / 32);
    return count;
  }

  /** Tries the live bundles of a hiker that hold certain blocks. */
  private boolean branch(int g, long bits, Rest rest, int[][] live, int open, int depth) {
    int others = open & ~(1 << g);
    BundleList list = lists.of(g);
    for (int k : live[g]) {
      if ((list.bits[k] & bits) != bits) {
        continue;
      }
      if (allowance.pay(1) || list.waste[k] > rest.slack()) {
        return false;
      }
      if (!rest.affords(list, k) || !chosen.note(list, k, depth)) {
        continue;
      }
      chosenBits[g] = list.bits[k];
      chosenCounts[g] = list.counts[k];
      Rest after = rest.without(list, k);
      boolean found;
      if (Integer.bitCount(others) == 1) {
        found = last(Integer.numberOfTrailingZeros(others), after, depth + 1);
      } else {
        int[][] narrowed = bundles.narrow(live, others, after, depth + 1);
        found = narrowed != null && descend(after, narrowed, others, depth + 1);
      }
      if (found || allowance.cut()) {
        return found;
      }
    }
    return false;
  }

  /**
   * What is left over must be a bundle of the last hiker: its mass gives its waste, by which the
   * list is sorted.
   */
  private boolean last(int g, Rest rest, int depth) {
    allowance.pay(1);
    long waste = lists.windows.waste(g, rest.mass());
    if (waste > rest.slack()) {
      return false;
    }
    BundleList list = lists.of(g);
    int low = 0;
    int high = list.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (list.waste[middle] < waste) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    for (int k = low; k < list.size() && list.waste[k] == waste; k++) {
      if (list.bits[k] == rest.bits() && list.counts[k] == rest.counts()) {
        if (!rest.affords(list, k) || !chosen.note(list, k, depth)) {
          return false;
        }
        chosenBits[g] = rest.bits();
        chosenCounts[g] = rest.counts();
        allowance.pay(16);
        return taker.take(chosenBits, chosenCounts);
      }
    }
    return false;
  }
}
