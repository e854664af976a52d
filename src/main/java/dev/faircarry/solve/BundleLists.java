package dev.faircarry.solve;

import java.util.Arrays;

/**
 * For each hiker of a group, every bundle that may be part of a division within a wish, the least
 * wasteful first.
 */
final class BundleLists {
  private static final int SHARPENINGS = 6;

  final long[][] bits;
  final long[][] counts;
  final long[][] waste;

  /** Steps of each bundle by day, one row of days after the other. */
  final int[][] steps;

  final long[][] excess;
  final Windows windows;
  private final Pool pool;
  private final Model m;
  private final Effort effort;
  private final BundleRules rules;
  private final int limit;
  private boolean complete = true;
  private boolean impossible;

  BundleLists(Pool pool, Windows windows, Wish wish, int limit, Effort effort) {
    this.pool = pool;
    this.m = pool.m;
    this.windows = windows;
    this.effort = effort;
    this.limit = limit;
    rules = new BundleRules(pool);
    int n = pool.group.length;
    bits = new long[n][];
    counts = new long[n][];
    waste = new long[n][];
    steps = new int[n][];
    excess = new long[n][];
    for (int g = 0; g < n && !impossible; g++) {
      list(g, wish);
      impossible |= bits[g].length == 0;
    }
    for (int k = 0; k < SHARPENINGS && complete && !impossible && sharpen(); k++) {
      drop();
    }
    for (int g = 0; g < n && !impossible; g++) {
      sort(g);
    }
  }

  /** Whether nothing was left out. */
  boolean complete() {
    return complete;
  }

  /** Whether some hiker has no bundle, or the bundles there are cannot hold everything. */
  boolean impossible() {
    return impossible;
  }

  private void list(int g, Wish wish) {
    Halves halves = Halves.of(pool, g, windows.day);
    effort.spend(halves.length() / 4);
    long used = windows.slack;
    while (true) {
      long slackUsed = used;
      int[] found = {0};
      Bundles bundles = new Bundles(Math.min(limit, 1024));
      boolean all = true;
      long reached = Long.MAX_VALUE;
      for (int t = 0; t < windows.values.length && all; t++) {
        long to = Math.min(windows.most[g][t], reached - 1);
        long from = Math.max(0, windows.least(g, t) + windows.slack - slackUsed);
        if (to < from) {
          continue;
        }
        reached = from;
        long walked =
            halves.walk(
                from,
                to,
                (b, c) -> {
                  if (rules.read(g, b, c)) {
                    bundles.add(g, b, c);
                  }
                  return ++found[0] <= limit;
                });
        effort.spend(walked / 16 + found[0] / 4);
        all = found[0] <= limit;
      }
      if (all) {
        bundles.keep(g, wish);
        return;
      }
      complete = false;
      used = used / 4;
      if (used == 0 || effort.over()) {
        bundles.keep(g, wish);
        return;
      }
    }
  }

  /** A growing list of bundles of one hiker. */
  private final class Bundles {
    private long[] b;
    private long[] c;
    private long[] w;
    private int[] s;
    private long[] x;
    private int size;

    Bundles(int room) {
      b = new long[room];
      c = new long[room];
      w = new long[room];
      x = new long[room];
      s = new int[room * m.days];
    }

    void add(int g, long bundleBits, long bundleCounts) {
      if (size == b.length) {
        b = Arrays.copyOf(b, size * 2);
        c = Arrays.copyOf(c, size * 2);
        w = Arrays.copyOf(w, size * 2);
        x = Arrays.copyOf(x, size * 2);
        s = Arrays.copyOf(s, size * 2 * m.days);
      }
      int hiker = pool.group[g];
      long over = 0;
      long fixed = 0;
      for (int block : pool.fixed.get(g)) {
        fixed += m.blocks.get(block).massSince()[0][windows.day];
      }
      for (int d = 0; d < m.days; d++) {
        s[size * m.days + d] = m.step(hiker, d, rules.mass[d]);
        over += m.excess(hiker, d, rules.mass[d]);
      }
      b[size] = bundleBits;
      c[size] = bundleCounts;
      x[size] = over;
      w[size] = windows.waste(g, rules.mass[windows.day] - fixed);
      size++;
    }

    void keep(int g, Wish wish) {
      int kept = 0;
      for (int k = 0; k < size; k++) {
        boolean fits = w[k] <= windows.slack && x[k] <= wish.excessLimit();
        for (int d = 0; d < m.days && fits; d++) {
          fits = s[k * m.days + d] <= wish.steps()[0];
        }
        if (fits) {
          b[kept] = b[k];
          c[kept] = c[k];
          w[kept] = w[k];
          x[kept] = x[k];
          System.arraycopy(s, k * m.days, s, kept * m.days, m.days);
          kept++;
        }
      }
      bits[g] = Arrays.copyOf(b, kept);
      counts[g] = Arrays.copyOf(c, kept);
      waste[g] = Arrays.copyOf(w, kept);
      excess[g] = Arrays.copyOf(x, kept);
      steps[g] = Arrays.copyOf(s, kept * m.days);
    }
  }

  /** Lowers what each hiker can hold to what some bundle really holds; true if the slack shrank. */
  private boolean sharpen() {
    long before = windows.slack;
    for (int g = 0; g < bits.length; g++) {
      long[] top = new long[windows.values.length];
      Arrays.fill(top, -1);
      for (int k = 0; k < bits[g].length; k++) {
        long mass = massOf(bits[g][k], counts[g][k]);
        for (int t = 0; t < top.length; t++) {
          if (mass <= windows.most[g][t]) {
            top[t] = Math.max(top[t], mass);
          }
        }
      }
      System.arraycopy(top, 0, windows.most[g], 0, top.length);
    }
    windows.weigh();
    impossible |= windows.slack < 0;
    return !impossible && windows.slack < before;
  }

  private long massOf(long bundleBits, long bundleCounts) {
    long mass = 0;
    for (int e = 0; e < pool.entries.size(); e++) {
      mass += pool.held(e, bundleBits, bundleCounts) * pool.sample(e).massSince()[0][windows.day];
    }
    return mass;
  }

  /** Leaves out bundles that waste more than the sharpened slack. */
  private void drop() {
    for (int g = 0; g < bits.length; g++) {
      int kept = 0;
      for (int k = 0; k < bits[g].length; k++) {
        long wasted = windows.waste(g, massOf(bits[g][k], counts[g][k]));
        if (wasted <= windows.slack) {
          bits[g][kept] = bits[g][k];
          counts[g][kept] = counts[g][k];
          waste[g][kept] = wasted;
          excess[g][kept] = excess[g][k];
          System.arraycopy(steps[g], k * m.days, steps[g], kept * m.days, m.days);
          kept++;
        }
      }
      bits[g] = Arrays.copyOf(bits[g], kept);
      counts[g] = Arrays.copyOf(counts[g], kept);
      waste[g] = Arrays.copyOf(waste[g], kept);
      excess[g] = Arrays.copyOf(excess[g], kept);
      steps[g] = Arrays.copyOf(steps[g], kept * m.days);
      impossible |= kept == 0;
      effort.spend(kept / 4);
    }
  }

  private void sort(int g) {
    Integer[] order = new Integer[bits[g].length];
    Arrays.setAll(order, k -> k);
    Arrays.sort(
        order,
        (p, q) -> {
          int byWaste = Long.compare(waste[g][p], waste[g][q]);
          return byWaste != 0 ? byWaste : Integer.compare(p, q);
        });
    long[] b = bits[g].clone();
    long[] c = counts[g].clone();
    long[] w = waste[g].clone();
    long[] x = excess[g].clone();
    int[] s = steps[g].clone();
    for (int k = 0; k < order.length; k++) {
      int from = order[k];
      bits[g][k] = b[from];
      counts[g][k] = c[from];
      waste[g][k] = w[from];
      excess[g][k] = x[from];
      System.arraycopy(s, from * m.days, steps[g], k * m.days, m.days);
    }
    effort.spend(order.length / 2);
  }
}
