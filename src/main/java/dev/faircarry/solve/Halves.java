package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * All bundles of a pool whose mass on one morning lies in a window, by meeting in the middle: the
 * sums of each half of the entries are listed once and sorted, and two pointers walk them (Horowitz
 * and Sahni 1974).
 */
final class Halves {
  /** Takes a bundle; false ends the walk. */
  interface Taker {
    boolean take(long bits, long counts);
  }

  private static final int INDEX_BITS = 20;

  private final Half left;
  private final Half right;

  /** Sorted sums of one half; the low bits of a key are the index of its words. */
  private record Half(long[] keys, long[] bits, long[] counts) {
    long sum(int at) {
      return keys[at] >>> INDEX_BITS;
    }

    int word(int at) {
      return (int) (keys[at] & ((1 << INDEX_BITS) - 1));
    }
  }

  private Halves(Half left, Half right) {
    this.left = left;
    this.right = right;
  }

  /**
   * How many combinations the larger half would have; more than {@code limit} is reported as limit
   * + 1.
   */
  static long size(Pool pool, int position, long limit) {
    List<List<Integer>> sides = sides(pool, position);
    return Math.max(
        combinations(pool, sides.get(0), limit), combinations(pool, sides.get(1), limit));
  }

  /** Lists the halves for one hiker of the group: entries that hiker may not hold are left out. */
  static Halves of(Pool pool, int position, int day) {
    List<List<Integer>> sides = sides(pool, position);
    return new Halves(half(pool, sides.get(0), day), half(pool, sides.get(1), day));
  }

  /** Deals the entries to two sides so that both have about as many combinations. */
  private static List<List<Integer>> sides(Pool pool, int position) {
    List<Integer> one = new ArrayList<>();
    List<Integer> other = new ArrayList<>();
    long ones = 1;
    long others = 1;
    for (int e = 0; e < pool.entries.size(); e++) {
      if (pool.sample(e).allowed()[0][pool.group[position]]) {
        int options = pool.entries.get(e).size() + 1;
        if (ones <= others) {
          one.add(e);
          ones = Math.min(ones * options, 1L << 40);
        } else {
          other.add(e);
          others = Math.min(others * options, 1L << 40);
        }
      }
    }
    return List.of(one, other);
  }

  private static long combinations(Pool pool, List<Integer> side, long limit) {
    long product = 1;
    for (int e : side) {
      product *= pool.entries.get(e).size() + 1;
      if (product > limit) {
        return limit + 1;
      }
    }
    return product;
  }

  private static Half half(Pool pool, List<Integer> side, int day) {
    int size = (int) combinations(pool, side, (1 << INDEX_BITS) - 1);
    long[] sums = new long[size];
    long[] bits = new long[size];
    long[] counts = new long[size];
    int filled = 1;
    for (int e : side) {
      long mass = pool.sample(e).massSince()[0][day];
      int units = pool.entries.get(e).size();
      int before = filled;
      for (int u = 1; u <= units; u++) {
        for (int k = 0; k < before; k++) {
          sums[filled] = sums[k] + u * mass;
          bits[filled] = bits[k] | (pool.isBit[e] ? pool.unit[e] : 0);
          counts[filled] = counts[k] + (pool.isBit[e] ? 0 : u * pool.unit[e]);
          filled++;
        }
      }
    }
    long[] keys = new long[size];
    for (int k = 0; k < size; k++) {
      keys[k] = (sums[k] << INDEX_BITS) | k;
    }
    Arrays.sort(keys);
    return new Half(keys, bits, counts);
  }

  /** Hands over every bundle with {@code from <= mass <= to}; returns the steps it took. */
  long walk(long from, long to, Taker taker) {
    long steps = left.keys.length;
    int lo = right.keys.length - 1;
    int hi = right.keys.length - 1;
    for (int a = 0; a < left.keys.length; a++) {
      long sum = left.sum(a);
      if (sum > to) {
        break;
      }
      while (hi >= 0 && sum + right.sum(hi) > to) {
        hi--;
        steps++;
      }
      while (lo >= 0 && sum + right.sum(lo) >= from) {
        lo--;
        steps++;
      }
      int wa = left.word(a);
      for (int b = lo + 1; b <= hi; b++) {
        int wb = right.word(b);
        steps++;
        if (!taker.take(left.bits[wa] | right.bits[wb], left.counts[wa] + right.counts[wb])) {
          return steps;
        }
      }
    }
    return steps;
  }

  int length() {
    return left.keys.length + right.keys.length;
  }
}
