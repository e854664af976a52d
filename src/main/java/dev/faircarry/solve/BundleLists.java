package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * For each hiker of a group, every bundle that may be part of a division within a wish, the least
 * wasteful first.
 */
final class BundleLists {
  private static final int SHARPENINGS = 6;

  /** So few bundles are listed by mass, whatever may change hands. */
  private static final int FEW = 3000;

  /** With several days most bundles that fit the tightest one fail another. */
  private static final int SCANNED_PER_KEPT = 10;

  /** Enough for the largest list; wastes stay below 2^43 milligrams. */
  private static final int INDEX_BITS = 20;

  final long[][] bits;
  final long[][] counts;
  final long[][] waste;

  /** Milligrams of pool blocks on the windows' morning. */
  final long[][] mass;

  /** Steps of each bundle by day, one row of days after the other. */
  final int[][] steps;

  final long[][] excess;

  /** Units gained and dropped with each bundle; nothing without a budget. */
  final int[][] gains;

  final int[][] drops;
  final Windows windows;
  private final Windows[] byDay;
  private final Pool pool;
  private final Model m;
  private final Effort effort;
  private final BundleRules rules;
  private final Halves[] halvesOf;
  private final Optional<MoveCount> moveCount;
  private final int limit;
  private boolean complete = true;
  private boolean impossible;

  BundleLists(Pool pool, Windows[] byDay, int tightest, Wish wish, int limit, Effort effort) {
    this.pool = pool;
    this.m = pool.m;
    this.byDay = byDay;
    this.windows = byDay[tightest];
    this.effort = effort;
    this.limit = limit;
    rules = new BundleRules(pool);
    int n = pool.group.length;
    bits = new long[n][];
    counts = new long[n][];
    waste = new long[n][];
    mass = new long[n][];
    halvesOf = new Halves[n];
    steps = new int[n][];
    excess = new long[n][];
    gains = new int[n][];
    drops = new int[n][];
    moveCount = wish.budget().map(b -> new MoveCount(pool, b.moves()));
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
    Bundles bundles = new Bundles(Math.min(limit, 1024));
    Halves halves = halves(g);
    long byMass = wish.budget().isEmpty() ? 0 : count(halves, g, windows.slack);
    if (byMass <= FEW || !listByMoves(g, wish.budget().get(), byMass, bundles)) {
      bundles.clear();
      listByMass(g, halves, bundles);
    }
    bundles.keep(g, wish);
  }

  /** Lists by what may change hands, if that is little enough. */
  private boolean listByMoves(int g, Budget budget, long byMass, Bundles bundles) {
    long most = 0;
    long least = Long.MAX_VALUE;
    for (int t = 0; t < windows.values.length; t++) {
      least = Math.min(least, windows.least(g, t));
    }
    for (long mass : windows.most[g]) {
      most = Math.max(most, mass);
    }
    long walked =
        ByMoves.walk(
            pool,
            g,
            windows.day,
            budget,
            least,
            most,
            Math.min(4 * byMass, 4L * limit),
            (b, c) -> {
              offer(g, b, c, bundles);
              return bundles.size <= limit;
            });
    effort.spend(walked < 0 ? limit : walked / 4);
    return walked >= 0;
  }

  private void offer(int g, long bundleBits, long bundleCounts, Bundles bundles) {
    if (rules.read(g, bundleBits, bundleCounts) && fitsOtherDays(g)) {
      bundles.add(g, bundleBits, bundleCounts);
    }
  }

  private void listByMass(int g, Halves halves, Bundles bundles) {
    long used = windows.slack;
    int scanned = m.days == 1 ? limit : SCANNED_PER_KEPT * limit;
    while (count(halves, g, used) > scanned) {
      complete = false;
      used = used * 3 / 4;
      if (used == 0 || effort.over()) {
        break;
      }
    }
    int[] found = {0};
    for (Window window : windows(g, used)) {
      long walked =
          halves.walk(
              window.from,
              window.to,
              (b, c) -> {
                offer(g, b, c, bundles);
                return ++found[0] <= 2 * scanned;
              });
      effort.spend(walked / 32 + found[0] / 4);
    }
  }

  /** Whether the bundle just read wastes no more than the slack of any other day. */
  private boolean fitsOtherDays(int g) {
    for (int d = 0; d < m.days; d++) {
      if (byDay[d] != windows && byDay[d].waste(g, rules.mass[d] - fixed(g, d)) > byDay[d].slack) {
        return false;
      }
    }
    return true;
  }

  private long fixed(int g, int day) {
    long fixed = 0;
    for (int block : pool.fixed.get(g)) {
      fixed += m.blocks.get(block).massSince()[0][day];
    }
    return fixed;
  }

  private Halves halves(int g) {
    long reach = Halves.reach(pool, g);
    for (int other = 0; other < g; other++) {
      if (halvesOf[other] != null && Halves.reach(pool, other) == reach) {
        halvesOf[g] = halvesOf[other];
        return halvesOf[g];
      }
    }
    halvesOf[g] = Halves.of(pool, g, windows.day);
    effort.spend(halvesOf[g].length() / 16);
    return halvesOf[g];
  }

  private record Window(long from, long to) {}

  /**
   * The masses that waste no more than a part of the slack, as windows that do not overlap, from
   * high to low.
   */
  private List<Window> windows(int g, long slackUsed) {
    List<Window> list = new ArrayList<>();
    long reached = Long.MAX_VALUE;
    for (int t = 0; t < windows.values.length; t++) {
      long to = Math.min(windows.most[g][t], reached - 1);
      long from = Math.max(0, windows.least(g, t) + windows.slack - slackUsed);
      if (from <= to) {
        list.add(new Window(from, to));
        reached = from;
      }
    }
    return list;
  }

  private long count(Halves halves, int g, long slackUsed) {
    long count = 0;
    for (Window window : windows(g, slackUsed)) {
      count += halves.count(window.from, window.to);
    }
    effort.spend(halves.length() / 32);
    return count;
  }

  /** A growing list of bundles of one hiker. */
  private final class Bundles {
    private long[] b;
    private long[] c;
    private long[] w;
    private long[] mg;
    private int[] s;
    private long[] x;
    private int[] gained;
    private int[] dropped;
    private int size;

    Bundles(int room) {
      b = new long[room];
      c = new long[room];
      w = new long[room];
      mg = new long[room];
      x = new long[room];
      gained = new int[room];
      dropped = new int[room];
      s = new int[room * m.days];
    }

    void add(int g, long bundleBits, long bundleCounts) {
      if (size == b.length) {
        b = Arrays.copyOf(b, size * 2);
        c = Arrays.copyOf(c, size * 2);
        w = Arrays.copyOf(w, size * 2);
        mg = Arrays.copyOf(mg, size * 2);
        x = Arrays.copyOf(x, size * 2);
        gained = Arrays.copyOf(gained, size * 2);
        dropped = Arrays.copyOf(dropped, size * 2);
        s = Arrays.copyOf(s, size * 2 * m.days);
      }
      int hiker = pool.group[g];
      long over = 0;
      for (int d = 0; d < m.days; d++) {
        s[size * m.days + d] = m.step(hiker, d, rules.mass[d]);
        over += m.excess(hiker, d, rules.mass[d]);
      }
      b[size] = bundleBits;
      c[size] = bundleCounts;
      x[size] = over;
      int at = size;
      moveCount.ifPresent(
          count -> {
            count.read(g, bundleBits, bundleCounts);
            gained[at] = count.gained;
            dropped[at] = count.dropped;
          });
      mg[size] = rules.mass[windows.day] - fixed(g, windows.day);
      w[size] = windows.waste(g, mg[size]);
      size++;
    }

    void clear() {
      size = 0;
    }

    void keep(int g, Wish wish) {
      int mostGains = wish.budget().map(Budget::gains).orElse(0);
      int mostDrops = wish.budget().map(Budget::drops).orElse(0);
      int kept = 0;
      for (int k = 0; k < size; k++) {
        boolean fits =
            w[k] <= windows.slack
                && x[k] <= wish.excessLimit()
                && gained[k] <= mostGains
                && dropped[k] <= mostDrops;
        for (int d = 0; d < m.days && fits; d++) {
          fits = s[k * m.days + d] <= wish.steps()[wish.trackOfDay()[d]][0];
        }
        if (fits) {
          b[kept] = b[k];
          c[kept] = c[k];
          w[kept] = w[k];
          mg[kept] = mg[k];
          x[kept] = x[k];
          gained[kept] = gained[k];
          dropped[kept] = dropped[k];
          System.arraycopy(s, k * m.days, s, kept * m.days, m.days);
          kept++;
        }
      }
      bits[g] = Arrays.copyOf(b, kept);
      counts[g] = Arrays.copyOf(c, kept);
      waste[g] = Arrays.copyOf(w, kept);
      mass[g] = Arrays.copyOf(mg, kept);
      excess[g] = Arrays.copyOf(x, kept);
      gains[g] = Arrays.copyOf(gained, kept);
      drops[g] = Arrays.copyOf(dropped, kept);
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
        for (int t = 0; t < top.length; t++) {
          if (mass[g][k] <= windows.most[g][t]) {
            top[t] = Math.max(top[t], mass[g][k]);
          }
        }
      }
      System.arraycopy(top, 0, windows.most[g], 0, top.length);
    }
    windows.weigh();
    impossible |= windows.slack < 0;
    return !impossible && windows.slack < before;
  }

  /** Leaves out bundles that waste more than the sharpened slack. */
  private void drop() {
    for (int g = 0; g < bits.length; g++) {
      int kept = 0;
      for (int k = 0; k < bits[g].length; k++) {
        long wasted = windows.waste(g, mass[g][k]);
        if (wasted <= windows.slack) {
          bits[g][kept] = bits[g][k];
          counts[g][kept] = counts[g][k];
          waste[g][kept] = wasted;
          mass[g][kept] = mass[g][k];
          excess[g][kept] = excess[g][k];
          gains[g][kept] = gains[g][k];
          drops[g][kept] = drops[g][k];
          System.arraycopy(steps[g], k * m.days, steps[g], kept * m.days, m.days);
          kept++;
        }
      }
      bits[g] = Arrays.copyOf(bits[g], kept);
      counts[g] = Arrays.copyOf(counts[g], kept);
      waste[g] = Arrays.copyOf(waste[g], kept);
      mass[g] = Arrays.copyOf(mass[g], kept);
      excess[g] = Arrays.copyOf(excess[g], kept);
      gains[g] = Arrays.copyOf(gains[g], kept);
      drops[g] = Arrays.copyOf(drops[g], kept);
      steps[g] = Arrays.copyOf(steps[g], kept * m.days);
      impossible |= kept == 0;
      effort.spend(kept / 4);
    }
  }

  private void sort(int g) {
    int size = bits[g].length;
    long[] keys = new long[size];
    for (int k = 0; k < size; k++) {
      keys[k] = (waste[g][k] << INDEX_BITS) | k;
    }
    Arrays.sort(keys);
    long[] b = bits[g].clone();
    long[] c = counts[g].clone();
    long[] w = waste[g].clone();
    long[] mg = mass[g].clone();
    long[] x = excess[g].clone();
    int[] gained = gains[g].clone();
    int[] dropped = drops[g].clone();
    int[] s = steps[g].clone();
    for (int k = 0; k < size; k++) {
      int from = (int) (keys[k] & ((1 << INDEX_BITS) - 1));
      bits[g][k] = b[from];
      counts[g][k] = c[from];
      waste[g][k] = w[from];
      mass[g][k] = mg[from];
      excess[g][k] = x[from];
      gains[g][k] = gained[from];
      drops[g][k] = dropped[from];
      System.arraycopy(s, from * m.days, steps[g], k * m.days, m.days);
    }
    effort.spend(size / 2);
  }
}
