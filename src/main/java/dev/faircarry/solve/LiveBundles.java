package dev.faircarry.solve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Which bundles of each hiker can still be part of a {@link Cover}: leaves out those that no longer
 * fit, and those without a block that nobody else's bundles hold.
 */
final class LiveBundles {
  private final BundleLists lists;
  private final long guards;
  private final ChosenSteps chosen;
  private final Allowance allowance;
  private final int n;

  LiveBundles(Pool pool, BundleLists lists, ChosenSteps chosen, Allowance allowance) {
    this.lists = lists;
    this.chosen = chosen;
    this.allowance = allowance;
    guards = pool.guards;
    n = pool.group.length;
  }

  /** Places in the lists, all of them, by position in the group. */
  int[][] all() {
    int[][] live = new int[n][];
    for (int g = 0; g < n; g++) {
      live[g] = new int[lists.of(g).size()];
      Arrays.setAll(live[g], k -> k);
    }
    return live;
  }

  /**
   * The bundles that still fit, or nothing where somebody has none or the least wasteful ones waste
   * too much together.
   *
   * @param open who has none yet, a bit for each position in the group
   * @param depth how many have one
   */
  int @Nullable [][] narrow(int[][] live, int open, Rest rest, int depth) {
    int[] highest = chosen.highestLeft(depth);
    int[][] narrowed = new int[n][];
    long steps = 0;
    long least = 0;
    int leastGains = 0;
    int leastDrops = 0;
    for (int g = 0; g < n; g++) {
      if ((open & 1 << g) == 0) {
        narrowed[g] = live[g];
        continue;
      }
      BundleList list = lists.of(g);
      int[] kept = new int[live[g].length];
      int size = 0;
      int gains = Integer.MAX_VALUE;
      int drops = Integer.MAX_VALUE;
      for (int k : live[g]) {
        steps++;
        if (list.waste[k] > rest.slack() - least) {
          break;
        }
        if (Bundle.fits(rest.bits(), rest.counts(), list.bits[k], list.counts[k], guards)
            && chosen.below(list, k, highest)
            && rest.affords(list, k)) {
          kept[size++] = k;
          gains = Math.min(gains, list.gains[k]);
          drops = Math.min(drops, list.drops[k]);
        }
      }
      if (size == 0) {
        allowance.pay(1 + steps / 16);
        return null;
      }
      least += list.waste[kept[0]];
      leastGains += gains;
      leastDrops += drops;
      narrowed[g] = Arrays.copyOf(kept, size);
    }
    allowance.pay(1 + steps / 16);
    if (leastGains > rest.gains()
        || leastDrops > rest.drops()
        || least > rest.slack()
        || !force(narrowed, open, rest.bits())) {
      return null;
    }
    for (int g = 0; g < n; g++) {
      if ((open & 1 << g) != 0) {
        long own = lists.of(g).waste[narrowed[g][0]];
        narrowed[g] = within(lists.of(g), narrowed[g], rest.slack() - least + own);
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
          long[] bits = lists.of(g).bits;
          seen += live[g].length;
          for (int k : live[g]) {
            held[g] |= bits[k];
          }
          twice |= once & held[g];
          once |= held[g];
        }
      }
      allowance.pay(1 + seen / 32);
      if ((restBits & ~once) != 0) {
        return false;
      }
      for (int g = 0; g < n; g++) {
        long must = held[g] & ~twice;
        if ((open & 1 << g) == 0 || must == 0) {
          continue;
        }
        int before = live[g].length;
        live[g] = holding(lists.of(g).bits, live[g], must);
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
  private static int[] within(BundleList list, int[] live, long limit) {
    int size = live.length;
    while (size > 0 && list.waste[live[size - 1]] > limit) {
      size--;
    }
    return size == live.length ? live : Arrays.copyOf(live, size);
  }
}
