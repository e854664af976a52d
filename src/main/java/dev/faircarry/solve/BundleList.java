package dev.faircarry.solve;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** A growing list of bundles for one hiker, a column for each thing that is known of them. */
final class BundleList {
  /** Enough for the largest list; wastes stay below 2^43 milligrams. */
  private static final int INDEX_BITS = 20;

  /** What is taken, see {@link Bundle}. */
  long[] bits;

  long[] counts;

  /** Milligrams of the hiker's room that go unused on the windows' morning. */
  long[] waste;

  /** Milligrams of pool blocks on the windows' morning. */
  long[] mass;

  /** Steps of each bundle by day, one row of days after the other. */
  int[] steps;

  long[] excess;

  /** Units gained and dropped with each bundle; nothing without a budget. */
  int[] gains;

  int[] drops;
  private final int days;
  private int size;

  BundleList(int room, int days) {
    this.days = days;
    bits = new long[room];
    counts = new long[room];
    waste = new long[room];
    mass = new long[room];
    steps = new int[room * days];
    excess = new long[room];
    gains = new int[room];
    drops = new int[room];
  }

  int size() {
    return size;
  }

  /** A place for one more bundle, at the end. */
  int add() {
    if (size == bits.length) {
      room(Math.max(16, size * 2));
    }
    return size++;
  }

  void clear() {
    size = 0;
  }

  private void room(int room) {
    bits = Arrays.copyOf(bits, room);
    counts = Arrays.copyOf(counts, room);
    waste = Arrays.copyOf(waste, room);
    mass = Arrays.copyOf(mass, room);
    steps = Arrays.copyOf(steps, room * days);
    excess = Arrays.copyOf(excess, room);
    gains = Arrays.copyOf(gains, room);
    drops = Arrays.copyOf(drops, room);
  }

  /** Leaves out all others, and keeps no room for more. */
  void keep(IntPredicate wanted) {
    int kept = 0;
    for (int k = 0; k < size; k++) {
      if (wanted.test(k)) {
        move(this, k, kept++);
      }
    }
    size = kept;
    room(kept);
  }

  private void move(BundleList from, int at, int to) {
    bits[to] = from.bits[at];
    counts[to] = from.counts[at];
    waste[to] = from.waste[at];
    mass[to] = from.mass[at];
    System.arraycopy(from.steps, at * days, steps, to * days, days);
    excess[to] = from.excess[at];
    gains[to] = from.gains[at];
    drops[to] = from.drops[at];
  }

  /** The same bundles, the least wasteful first. */
  BundleList sorted() {
    long[] keys = new long[size];
    for (int k = 0; k < size; k++) {
      keys[k] = (waste[k] << INDEX_BITS) | k;
    }
    Arrays.sort(keys);
    BundleList sorted = new BundleList(size, days);
    for (int k = 0; k < size; k++) {
      sorted.move(this, (int) (keys[k] & ((1 << INDEX_BITS) - 1)), k);
    }
    sorted.size = size;
    return sorted;
  }
}
