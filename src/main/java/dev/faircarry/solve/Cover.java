package dev.faircarry.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Finds one bundle for each hiker so that every block is taken once: depth first, the hiker with
 * the fewest choices next.
 */
final class Cover {
  /** Tries a division: words by hiker; false sends the search on. */
  interface Taker {
    boolean take(long[] bits, long[] counts);
  }

  private record Words(long bits, long counts) {}

  private final Pool pool;
  private final BundleLists lists;
  private final Wish wish;
  private final Effort effort;
  private final int n;
  private final int days;
  private final long[] chosenBits;
  private final long[] chosenCounts;
  private final int[][] listAtDepth;
  private long stepsLeft;
  private boolean cut;
  private Taker taker = (b, c) -> true;

  /** Bundle number by words, for the hiker whose bundle is what the others leave. */
  private final Map<Words, Integer>[] lookup;

  @SuppressWarnings({"unchecked", "rawtypes"})
  Cover(Pool pool, BundleLists lists, Wish wish, Effort effort, long stepLimit) {
    this.pool = pool;
    this.lists = lists;
    this.wish = wish;
    this.effort = effort;
    stepsLeft = stepLimit;
    n = pool.group.length;
    days = pool.m.days;
    chosenBits = new long[n];
    chosenCounts = new long[n];
    listAtDepth = new int[n + 1][];
    lookup = new Map[n];
  }

  /** Whether the search came to its natural end. */
  boolean exhausted() {
    return !cut;
  }

  boolean search(Taker taker) {
    this.taker = taker;
    int[][] live = new int[n][];
    for (int g = 0; g < n; g++) {
      live[g] = new int[lists.bits[g].length];
      Arrays.setAll(live[g], k -> k);
    }
    listAtDepth[0] = new int[0];
    return descend(
        pool.allBits,
        pool.allCounts,
        live,
        (1 << n) - 1,
        lists.windows.slack,
        wish.excessLimit(),
        0);
  }

  private boolean pay(long steps) {
    stepsLeft -= steps;
    boolean over = effort.spend(steps);
    cut = cut || over || stepsLeft < 0;
    return cut;
  }

  private boolean descend(
      long restBits,
      long restCounts,
      int[][] live,
      int open,
      long slack,
      long excessLeft,
      int depth) {
    int next = -1;
    for (int g = 0; g < n; g++) {
      if ((open & 1 << g) != 0 && (next < 0 || live[g].length < live[next].length)) {
        next = g;
      }
    }
    if (Integer.bitCount(open) == 1) {
      return last(next, restBits, restCounts, slack, excessLeft, depth);
    }
    int others = open & ~(1 << next);
    for (int k : live[next]) {
      if (pay(1)) {
        return false;
      }
      long slackAfter = slack - lists.waste[next][k];
      if (slackAfter < 0) {
        return false;
      }
      long excessAfter = excessLeft - lists.excess[next][k];
      if (excessAfter < 0 || !note(next, k, depth)) {
        continue;
      }
      chosenBits[next] = lists.bits[next][k];
      chosenCounts[next] = lists.counts[next][k];
      long afterBits = restBits & ~chosenBits[next];
      long afterCounts = restCounts - chosenCounts[next];
      boolean found;
      if (Integer.bitCount(others) == 1) {
        found =
            last(
                Integer.numberOfTrailingZeros(others),
                afterBits,
                afterCounts,
                slackAfter,
                excessAfter,
                depth + 1);
      } else {
        int[][] narrowed = narrow(live, others, afterBits, afterCounts, slackAfter);
        found =
            narrowed != null
                && descend(
                    afterBits, afterCounts, narrowed, others, slackAfter, excessAfter, depth + 1);
      }
      if (found || cut) {
        return found;
      }
    }
    return false;
  }

  /** What is left over must be a bundle of the last hiker. */
  private boolean last(
      int g, long restBits, long restCounts, long slack, long excessLeft, int depth) {
    if (lookup[g] == null) {
      lookup[g] = new HashMap<>();
      for (int k = 0; k < lists.bits[g].length; k++) {
        lookup[g].put(new Words(lists.bits[g][k], lists.counts[g][k]), k);
      }
      pay(lists.bits[g].length);
    }
    Integer k = lookup[g].get(new Words(restBits, restCounts));
    if (k == null
        || lists.waste[g][k] > slack
        || lists.excess[g][k] > excessLeft
        || !note(g, k, depth)) {
      return false;
    }
    chosenBits[g] = restBits;
    chosenCounts[g] = restCounts;
    pay(4);
    return taker.take(chosenBits, chosenCounts);
  }

  /**
   * Adds the steps of a bundle to those chosen so far; false where the sorted list passes the wish.
   */
  private boolean note(int g, int bundle, int depth) {
    int[] so = listAtDepth[depth];
    int[] list = Arrays.copyOf(so, so.length + days);
    System.arraycopy(lists.steps[g], bundle * days, list, so.length, days);
    Steps.sortDescending(list);
    if (!Steps.within(list, wish.steps())) {
      return false;
    }
    listAtDepth[depth + 1] = list;
    return true;
  }

  private int @org.jspecify.annotations.Nullable [][] narrow(
      int[][] live, int others, long restBits, long restCounts, long slack) {
    int[][] narrowed = new int[n][];
    long reached = 0;
    long steps = 0;
    for (int g = 0; g < n; g++) {
      if ((others & 1 << g) == 0) {
        narrowed[g] = live[g];
        continue;
      }
      int[] kept = new int[live[g].length];
      int size = 0;
      for (int k : live[g]) {
        steps++;
        if (lists.waste[g][k] > slack) {
          break;
        }
        if (Bundle.fits(restBits, restCounts, lists.bits[g][k], lists.counts[g][k], pool.guards)) {
          kept[size++] = k;
          reached |= lists.bits[g][k];
        }
      }
      if (size == 0) {
        pay(steps / 8);
        return null;
      }
      narrowed[g] = Arrays.copyOf(kept, size);
    }
    pay(1 + steps / 8);
    return (restBits & ~reached) == 0 ? narrowed : null;
  }
}
