package dev.faircarry.solve;

import java.util.ArrayList;
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

  private final Half left;
  private final Half right;

  /** Sums of one half in rising order, with the words of each. */
  private record Half(long[] sums, long[] bits, long[] counts) {}

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

  /**
   * Lists the sums of one side in rising order, entry after entry, by merging with the same list
   * moved up.
   */
  private static Half half(Pool pool, List<Integer> side, int day) {
    Half half = new Half(new long[1], new long[1], new long[1]);
    for (int e : side) {
      long mass = pool.sample(e).massSince()[0][day];
      Half grown = half;
      for (int u = 1; u <= pool.entries.get(e).size(); u++) {
        grown =
            merge(
                grown,
                half,
                u * mass,
                pool.isBit[e] ? pool.unit[e] : 0,
                pool.isBit[e] ? 0 : u * pool.unit[e]);
      }
      half = grown;
    }
    return half;
  }

  private static Half merge(Half one, Half moved, long mass, long bit, long count) {
    int size = one.sums.length + moved.sums.length;
    long[] sums = new long[size];
    long[] bits = new long[size];
    long[] counts = new long[size];
    int p = 0;
    int q = 0;
    for (int k = 0; k < size; k++) {
      boolean first =
          q == moved.sums.length || (p < one.sums.length && one.sums[p] <= moved.sums[q] + mass);
      if (first) {
        sums[k] = one.sums[p];
        bits[k] = one.bits[p];
        counts[k] = one.counts[p++];
      } else {
        sums[k] = moved.sums[q] + mass;
        bits[k] = moved.bits[q] | bit;
        counts[k] = moved.counts[q++] + count;
      }
    }
    return new Half(sums, bits, counts);
  }

  /** How many bundles have {@code from <= mass <= to}. */
  long count(long from, long to) {
    long count = 0;
    int lo = right.sums.length - 1;
    int hi = right.sums.length - 1;
    for (long sum : left.sums) {
      while (hi >= 0 && sum + right.sums[hi] > to) {
        hi--;
      }
      while (lo >= 0 && sum + right.sums[lo] >= from) {
        lo--;
      }
      if (hi < 0) {
        break;
      }
      count += hi - lo;
    }
    return count;
  }

  /** Hands over every bundle with {@code from <= mass <= to}; returns the steps it took. */
  long walk(long from, long to, Taker taker) {
    long steps = left.sums.length;
    int lo = right.sums.length - 1;
    int hi = right.sums.length - 1;
    for (int a = 0; a < left.sums.length; a++) {
      long sum = left.sums[a];
      if (sum > to) {
        break;
      }
      while (hi >= 0 && sum + right.sums[hi] > to) {
        hi--;
        steps++;
      }
      while (lo >= 0 && sum + right.sums[lo] >= from) {
        lo--;
        steps++;
      }
      for (int b = lo + 1; b <= hi; b++) {
        steps++;
        if (!taker.take(left.bits[a] | right.bits[b], left.counts[a] + right.counts[b])) {
          return steps;
        }
      }
    }
    return steps;
  }

  int length() {
    return left.sums.length + right.sums.length;
  }

  /** Which entries a hiker may hold; hikers with the same answer share their halves. */
  static long reach(Pool pool, int position) {
    long reach = 0;
    for (int e = 0; e < pool.entries.size(); e++) {
      reach = reach * 31 + (pool.sample(e).allowed()[0][pool.group[position]] ? e + 1 : 0);
    }
    return reach;
  }
}
