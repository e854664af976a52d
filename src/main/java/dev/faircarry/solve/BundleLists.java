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

  /** One list by position in the group. */
  private final BundleList[] lists;

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
    lists = new BundleList[n];
    halvesOf = new Halves[n];
    moveCount = wish.budget().map(b -> new MoveCount(pool, b.moves()));
    for (int g = 0; g < n && !impossible; g++) {
      lists[g] = list(g, wish);
      impossible |= lists[g].size() == 0;
    }
    for (int k = 0; k < SHARPENINGS && complete && !impossible && sharpen(); k++) {
      drop();
    }
    for (int g = 0; g < n && !impossible; g++) {
      lists[g] = lists[g].sorted();
      effort.spend(lists[g].size() / 2);
    }
  }

  /** The bundles of the hiker at a position in the group. */
  BundleList of(int position) {
    return lists[position];
  }

  /** Whether nothing was left out. */
  boolean complete() {
    return complete;
  }

  /** Whether some hiker has no bundle, or the bundles there are cannot hold everything. */
  boolean impossible() {
    return impossible;
  }

  private BundleList list(int g, Wish wish) {
    BundleList bundles = new BundleList(Math.min(limit, 1024), m.days);
    Halves halves = halves(g);
    long byMass = wish.budget().isEmpty() ? 0 : count(halves, g, windows.slack);
    if (byMass <= FEW || !listByMoves(g, wish.budget().get(), byMass, bundles)) {
      bundles.clear();
      listByMass(g, halves, bundles);
    }
    keep(bundles, wish);
    return bundles;
  }

  /** Lists by what may change hands, if that is little enough. */
  private boolean listByMoves(int g, Budget budget, long byMass, BundleList bundles) {
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
              return bundles.size() <= limit;
            });
    effort.spend(walked < 0 ? limit : walked / 4);
    return walked >= 0;
  }

  private void offer(int g, long bundleBits, long bundleCounts, BundleList bundles) {
    if (rules.read(g, bundleBits, bundleCounts) && fitsOtherDays(g)) {
      add(g, bundleBits, bundleCounts, bundles);
    }
  }

  private void listByMass(int g, Halves halves, BundleList bundles) {
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

  /** Adds the bundle that was just read. */
  private void add(int g, long bundleBits, long bundleCounts, BundleList bundles) {
    int at = bundles.add();
    int hiker = pool.group[g];
    long over = 0;
    for (int d = 0; d < m.days; d++) {
      bundles.steps[at * m.days + d] = m.step(hiker, d, rules.mass[d]);
      over += m.excess(hiker, d, rules.mass[d]);
    }
    bundles.bits[at] = bundleBits;
    bundles.counts[at] = bundleCounts;
    bundles.excess[at] = over;
    moveCount.ifPresent(
        count -> {
          count.read(g, bundleBits, bundleCounts);
          bundles.gains[at] = count.gained;
          bundles.drops[at] = count.dropped;
        });
    bundles.mass[at] = rules.mass[windows.day] - fixed(g, windows.day);
    bundles.waste[at] = windows.waste(g, bundles.mass[at]);
  }

  private void keep(BundleList bundles, Wish wish) {
    int mostGains = wish.budget().map(Budget::gains).orElse(0);
    int mostDrops = wish.budget().map(Budget::drops).orElse(0);
    bundles.keep(
        k ->
            bundles.waste[k] <= windows.slack
                && bundles.excess[k] <= wish.excessLimit()
                && bundles.gains[k] <= mostGains
                && bundles.drops[k] <= mostDrops
                && below(bundles, k, wish));
  }

  /** Whether no day's step is above the highest one wanted. */
  private boolean below(BundleList bundles, int k, Wish wish) {
    for (int d = 0; d < m.days; d++) {
      if (bundles.steps[k * m.days + d] > wish.steps()[wish.trackOfDay()[d]][0]) {
        return false;
      }
    }
    return true;
  }

  /** Lowers what each hiker can hold to what some bundle really holds; true if the slack shrank. */
  private boolean sharpen() {
    long before = windows.slack;
    for (int g = 0; g < lists.length; g++) {
      long[] top = new long[windows.values.length];
      Arrays.fill(top, -1);
      for (int k = 0; k < lists[g].size(); k++) {
        long mass = lists[g].mass[k];
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

  /** Leaves out bundles that waste more than the sharpened slack. */
  private void drop() {
    for (int g = 0; g < lists.length; g++) {
      int position = g;
      BundleList bundles = lists[g];
      bundles.keep(
          k -> {
            bundles.waste[k] = windows.waste(position, bundles.mass[k]);
            return bundles.waste[k] <= windows.slack;
          });
      impossible |= bundles.size() == 0;
      effort.spend(bundles.size() / 4);
    }
  }
}
