package dev.faircarry.solve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Finds one bundle for each hiker so that every block is taken once: depth first, the hiker with
 * the fewest choices next, the least wasteful bundle first.
 */
final class Cover {
  /** Tries a division: words by hiker; false sends the search on. */
  interface Taker {
    boolean take(long[] bits, long[] counts);
  }

  /** What is still to be taken, and what may still be wasted and passed. */
  private record Rest(
      long bits, long counts, long mass, long slack, long excess, int gains, int drops) {}

  private final Pool pool;
  private final BundleLists lists;
  private final Wish wish;
  private final Effort effort;
  private final int n;
  private final int days;
  private final int tracks;
  private final long[] chosenBits;
  private final long[] chosenCounts;

  /** Steps chosen so far, sorted, by depth and track. */
  private final int[][][] listAtDepth;

  private long stepsLeft;
  private boolean cut;
  private Taker taker = (b, c) -> true;

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
    tracks = wish.steps().length;
    listAtDepth = new int[n + 1][tracks][];
  }

  /** Whether the search came to its natural end. */
  boolean exhausted() {
    return !cut;
  }

  /** Searches until the taker takes a division. */
  boolean search(Taker taker) {
    this.taker = taker;
    int[][] live = new int[n][];
    for (int g = 0; g < n; g++) {
      live[g] = new int[lists.bits[g].length];
      Arrays.setAll(live[g], k -> k);
    }
    Arrays.fill(listAtDepth[0], new int[0]);
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
    int[][] fitting = narrow(live, everybody, all, listAtDepth[0]);
    return fitting != null && descend(all, fitting, everybody, 0);
  }

  private boolean pay(long steps) {
    stepsLeft -= steps;
    boolean over = effort.spend(steps);
    cut = cut || over || stepsLeft < 0;
    return cut;
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
    long heaviest = Long.lowestOneBit(rest.bits);
    if (heaviest != 0
        && live[next].length > 8
        && holding(heaviest, live, open) < live[next].length) {
      for (int g = 0; g < n; g++) {
        if ((open & 1 << g) != 0 && branch(g, heaviest, rest, live, open, depth)) {
          return true;
        }
        if (cut) {
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
        seen += live[g].length;
        for (int k : live[g]) {
          count += (lists.bits[g][k] & bit) != 0 ? 1 : 0;
        }
      }
    }
    pay(seen / 32);
    return count;
  }

  private boolean affords(Rest rest, int g, int k) {
    return lists.excess[g][k] <= rest.excess
        && lists.gains[g][k] <= rest.gains
        && lists.drops[g][k] <= rest.drops;
  }

  /** Tries the live bundles of a hiker that hold certain blocks. */
  private boolean branch(int g, long bits, Rest rest, int[][] live, int open, int depth) {
    int others = open & ~(1 << g);
    for (int k : live[g]) {
      if ((lists.bits[g][k] & bits) != bits) {
        continue;
      }
      if (pay(1) || lists.waste[g][k] > rest.slack) {
        return false;
      }
      if (!affords(rest, g, k) || !note(g, k, depth)) {
        continue;
      }
      chosenBits[g] = lists.bits[g][k];
      chosenCounts[g] = lists.counts[g][k];
      Rest after =
          new Rest(
              rest.bits & ~chosenBits[g],
              rest.counts - chosenCounts[g],
              rest.mass - lists.mass[g][k],
              rest.slack - lists.waste[g][k],
              rest.excess - lists.excess[g][k],
              rest.gains - lists.gains[g][k],
              rest.drops - lists.drops[g][k]);
      boolean found;
      if (Integer.bitCount(others) == 1) {
        found = last(Integer.numberOfTrailingZeros(others), after, depth + 1);
      } else {
        int[][] narrowed = narrow(live, others, after, listAtDepth[depth + 1]);
        found = narrowed != null && descend(after, narrowed, others, depth + 1);
      }
      if (found || cut) {
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
    pay(1);
    long waste = lists.windows.waste(g, rest.mass);
    if (waste > rest.slack) {
      return false;
    }
    long[] wastes = lists.waste[g];
    int low = 0;
    int high = wastes.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (wastes[middle] < waste) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    for (int k = low; k < wastes.length && wastes[k] == waste; k++) {
      if (lists.bits[g][k] == rest.bits && lists.counts[g][k] == rest.counts) {
        if (!affords(rest, g, k) || !note(g, k, depth)) {
          return false;
        }
        chosenBits[g] = rest.bits;
        chosenCounts[g] = rest.counts;
        pay(16);
        return taker.take(chosenBits, chosenCounts);
      }
    }
    return false;
  }

  /**
   * Adds the steps of a bundle to those chosen so far; false where the sorted list passes the wish.
   */
  private boolean note(int g, int bundle, int depth) {
    for (int t = 0; t < tracks; t++) {
      int[] so = listAtDepth[depth][t];
      int ofTrack = tracks == 1 ? days : 1;
      int[] list = listAtDepth[depth + 1][t];
      if (list == null || list.length != so.length + ofTrack) {
        list = new int[so.length + ofTrack];
        listAtDepth[depth + 1][t] = list;
      }
      System.arraycopy(so, 0, list, 0, so.length);
      int filled = so.length;
      for (int d = 0; d < days; d++) {
        if (wish.trackOfDay()[d] == t) {
          insert(list, filled++, lists.steps[g][bundle * days + d]);
        }
      }
      if (!Steps.within(list, wish.steps()[t])) {
        return false;
      }
    }
    return true;
  }

  /** For each day the highest step that can join those chosen so far within the wish. */
  private int[] highestLeft(int[][] chosen) {
    int[] highest = new int[days];
    for (int d = 0; d < days; d++) {
      int track = wish.trackOfDay()[d];
      int[] wanted = wish.steps()[track];
      int at = chosen[track].length;
      while (at > 0 && chosen[track][at - 1] <= wanted[at]) {
        at--;
      }
      highest[d] = wanted[at];
    }
    return highest;
  }

  private boolean below(int g, int bundle, int[] highest) {
    for (int d = 0; d < days; d++) {
      if (lists.steps[g][bundle * days + d] > highest[d]) {
        return false;
      }
    }
    return true;
  }

  private static void insert(int[] list, int filled, int step) {
    int at = filled;
    while (at > 0 && list[at - 1] < step) {
      list[at] = list[at - 1];
      at--;
    }
    list[at] = step;
  }

  /**
   * The bundles that still fit, or nothing where somebody has none or the least wasteful ones waste
   * too much together.
   */
  private int @Nullable [][] narrow(int[][] live, int others, Rest rest, int[][] chosen) {
    int[] highest = highestLeft(chosen);
    int[][] narrowed = new int[n][];
    long steps = 0;
    long least = 0;
    int leastGains = 0;
    int leastDrops = 0;
    for (int g = 0; g < n; g++) {
      if ((others & 1 << g) == 0) {
        narrowed[g] = live[g];
        continue;
      }
      int[] kept = new int[live[g].length];
      int size = 0;
      int gains = Integer.MAX_VALUE;
      int drops = Integer.MAX_VALUE;
      for (int k : live[g]) {
        steps++;
        if (lists.waste[g][k] > rest.slack - least) {
          break;
        }
        if (Bundle.fits(rest.bits, rest.counts, lists.bits[g][k], lists.counts[g][k], pool.guards)
            && below(g, k, highest)
            && affords(rest, g, k)) {
          kept[size++] = k;
          gains = Math.min(gains, lists.gains[g][k]);
          drops = Math.min(drops, lists.drops[g][k]);
        }
      }
      if (size == 0) {
        pay(1 + steps / 16);
        return null;
      }
      least += lists.waste[g][kept[0]];
      leastGains += gains;
      leastDrops += drops;
      narrowed[g] = Arrays.copyOf(kept, size);
    }
    pay(1 + steps / 16);
    if (leastGains > rest.gains
        || leastDrops > rest.drops
        || least > rest.slack
        || !force(narrowed, others, rest.bits)) {
      return null;
    }
    for (int g = 0; g < n; g++) {
      if ((others & 1 << g) != 0) {
        narrowed[g] = within(g, narrowed[g], rest.slack - least + lists.waste[g][narrowed[g][0]]);
      }
    }
    return narrowed;
  }

  /**
   * A block that only one hiker's bundles hold must be in that hiker's bundle; false where somebody
   * is left with none.
   */
  private boolean force(int[][] live, int open, long restBits) {
    boolean changed = true;
    while (changed) {
      changed = false;
      long once = 0;
      long twice = 0;
      long[] held = new long[n];
      int seen = 0;
      for (int g = 0; g < n; g++) {
        if ((open & 1 << g) != 0) {
          seen += live[g].length;
          for (int k : live[g]) {
            held[g] |= lists.bits[g][k];
          }
          twice |= once & held[g];
          once |= held[g];
        }
      }
      pay(1 + seen / 32);
      if ((restBits & ~once) != 0) {
        return false;
      }
      for (int g = 0; g < n; g++) {
        long must = held[g] & ~twice;
        if ((open & 1 << g) == 0 || must == 0) {
          continue;
        }
        int before = live[g].length;
        live[g] = holding(lists.bits[g], live[g], must);
        changed |= live[g].length < before;
        if (live[g].length == 0) {
          return false;
        }
      }
    }
    return true;
  }

  private static int[] holding(long[] bits, int[] live, long must) {
    int[] kept = new int[live.length];
    int size = 0;
    for (int k : live) {
      if ((bits[k] & must) == must) {
        kept[size++] = k;
      }
    }
    return size == live.length ? live : Arrays.copyOf(kept, size);
  }

  /** The bundles of a list that waste no more than a limit. */
  private int[] within(int g, int[] live, long limit) {
    int size = live.length;
    while (size > 0 && lists.waste[g][live[size - 1]] > limit) {
      size--;
    }
    return size == live.length ? live : Arrays.copyOf(live, size);
  }
}
