package dev.faircarry.solve;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The dearest bundle of one hiker within some limits, lot by lot, the dearest for their size first.
 *
 * <p>Size is all limits in one, each weighed by how much it presses (surrogate relaxation; Glover
 * 1968): no bundle that keeps them all is larger than their weighed sum, so what is left of it
 * bounds what the lots still to come can add (Dantzig 1957). Where that does not end a search soon,
 * one limit of mass is taken out of the sum and counted exactly ({@link WorthTable}).
 */
final class Knapsack {
  private static final int FULL = 1 << 16;
  private static final int TUNING = 8;
  private static final int MOST_PRESSURE = 200;

  /** So many nodes before a table is worth its while. */
  private static final int NODES_WITHOUT_TABLE = 400;

  private static final int NODES_A_STEP = 4;

  /** So many nodes more once something was found. */
  private static final int PATIENCE = 1000;

  private final BundleLimits limits;
  private final int[] fewest;

  /** How much each limit presses, kept from one search to the next. */
  private int[] pressure;

  private final long[] used;
  private final int[] counts;

  private long[] prices = {};
  private BundleLimits.Fines fines;
  private int[] number = {};
  private LotOrder order;
  private Allowance allowance;
  private long best;
  private int[] found = {};
  private int patience;
  private int nodesLeft;
  private int nodes;
  private @Nullable WorthTable table;
  private int leading;

  /** What a lot presses on all limits but the leading one, at its worth. */
  private long[] othersWorth = {};

  private long worth;
  private long ofSize = 1;

  /**
   * The bundles within some limits.
   *
   * @param fewest blocks of each lot that must be in it; read at every search
   */
  Knapsack(BundleLimits limits, int[] fewest) {
    this.limits = limits;
    this.fewest = fewest;
    used = new long[limits.size()];
    pressure = new int[limits.size()];
    Arrays.fill(pressure, 1);
    counts = new int[fewest.length];
    fines = limits.fines(new long[] {0});
    order = new LotOrder(limits, prices, number, pressure, FULL);
    allowance = new Allowance(new Effort(0, Watch.NONE), 0);
  }

  /**
   * Searches.
   *
   * @param most blocks of each lot that may be in it
   * @param prices of a block of each lot
   * @param above only a bundle worth more than this is of interest
   * @return how many blocks of each lot the dearest such bundle has; nothing where there is none,
   *     or none was found before the allowance was cut
   */
  int[] search(
      int[] most, long[] prices, BundleLimits.Fines fines, long above, Allowance allowance) {
    this.prices = prices;
    this.fines = fines;
    this.allowance = allowance;
    best = above;
    found = new int[0];
    Arrays.fill(used, 0);
    Arrays.fill(counts, 0);
    number = new int[counts.length];
    long price = 0;
    for (int c = 0; c < counts.length; c++) {
      number[c] = Math.min(most[c], limits.most(c)) - fewest[c];
      if (number[c] < 0) {
        return found;
      }
      if (fewest[c] > 0) {
        take(c, fewest[c]);
        price += prices[c] * fewest[c];
      }
    }
    if (!limits.keep(used) || limits.clash(counts)) {
      return found;
    }
    tune();
    table = null;
    patience = PATIENCE;
    nodesLeft = NODES_WITHOUT_TABLE;
    descend(0, price, left(-1), 0);
    if (nodesLeft < 0 && !settled() && !allowance.cut()) {
      addTable();
      nodesLeft = Integer.MAX_VALUE;
      descend(0, price, left(-1), left(leading) * worth / ofSize + 1);
    }
    return found;
  }

  /** Whether the last search was ended before it knew that nothing is dearer. */
  boolean settled() {
    return patience < 0;
  }

  private void take(int lot, int blocks) {
    counts[lot] += blocks;
    limits.use(used, lot, blocks);
  }

  /** A few nodes are as much work as one step. */
  private boolean pay() {
    nodes++;
    return nodes % NODES_A_STEP == 0 && allowance.pay(1);
  }

  /** What all limits but one still have, weighed. */
  private long left(int without) {
    long left = 0;
    for (int r = 0; r < pressure.length; r++) {
      long scaled = 0;
      for (int c = 0; c < counts.length; c++) {
        scaled += counts[c] * limits.part(c, r, FULL);
      }
      left += r == without ? 0 : pressure[r] * (FULL - scaled);
    }
    return left;
  }

  private void descend(int at, long price, long left, long others) {
    long fine = fines.of(used);
    if (price - fine > best) {
      best = price - fine;
      found = counts.clone();
    }
    long now = price - Math.max(fine, fines.least());
    if (at == order.length() || now + order.atMost(at, left) <= best || pay()) {
      return;
    }
    nodesLeft--;
    if (nodesLeft < 0
        || (table != null && now + others + table.from(at, limits.left(leading, used)) <= best)) {
      return;
    }
    if (found.length > 0 && --patience < 0) {
      return;
    }
    int c = order.lot(at);
    int blocks = 0;
    int most = limits.clash(c, counts) ? 0 : number[c];
    while (blocks < most && limits.fits(used, c)) {
      take(c, 1);
      blocks++;
    }
    boolean over = false;
    for (int k = blocks; k >= 0 && !over; k--) {
      descend(
          at + 1,
          price + k * prices[c],
          left - k * order.size(c),
          table == null ? 0 : others - k * othersWorth[c]);
      over = settled() || nodesLeft < 0 || allowance.cut();
      if (k > 0) {
        take(c, over ? -k : -1);
      }
    }
  }

  /**
   * A table by the limit of mass that presses most; all other limits count by the worth of what
   * presses them.
   */
  private void addTable() {
    leading = 0;
    for (int r = 1; r < pressure.length; r++) {
      boolean more = pressure[r] > pressure[leading];
      if (limits.isMass(r) && (more || !limits.isMass(leading))) {
        leading = r;
      }
    }
    int critical = order.lot(order.critical(left(-1)));
    worth = prices[critical];
    ofSize = Math.max(1, order.size(critical));
    othersWorth = new long[counts.length];
    long[] uses = new long[order.length()];
    long[] worths = new long[order.length()];
    int[] numbers = new int[order.length()];
    for (int k = 0; k < order.length(); k++) {
      int c = order.lot(k);
      long others = order.size(c) - pressure[leading] * limits.part(c, leading, FULL);
      othersWorth[c] = others * worth / ofSize;
      uses[k] = limits.uses(c, leading);
      worths[k] = prices[c] - othersWorth[c];
      numbers[k] = number[c];
    }
    table = new WorthTable(uses, worths, numbers, limits.left(leading, used));
    allowance.pay(table.cells() / 512);
  }

  /** Weighs the limits so that the bound for the whole search is low. */
  private void tune() {
    long lowest = Long.MAX_VALUE;
    int[] chosen = pressure.clone();
    boolean changed = true;
    for (int round = 0; round < TUNING && changed; round++) {
      LotOrder tried = new LotOrder(limits, prices, number, pressure, FULL);
      long left = left(-1);
      long bound = tried.atMost(0, left);
      if (bound < lowest) {
        lowest = bound;
        chosen = pressure.clone();
        order = tried;
      }
      changed = press(filled(tried.filling(left)));
      allowance.pay(tried.length() / 4);
    }
    pressure = chosen;
  }

  /** What is used of each limit when so many 256ths of blocks are added. */
  private long[] filled(long[] filling) {
    long[] filled = new long[pressure.length];
    for (int r = 0; r < filled.length; r++) {
      for (int c = 0; c < counts.length; c++) {
        filled[r] += (limits.part(c, r, FULL) * ((counts[c] << 8) + filling[c])) >> 8;
      }
    }
    return filled;
  }

  /** Lets limits that would be passed press more, and those with much left less. */
  private boolean press(long[] filled) {
    boolean changed = false;
    for (int r = 0; r < pressure.length; r++) {
      int before = pressure[r];
      if (filled[r] > FULL) {
        pressure[r] = Math.min(MOST_PRESSURE, before + 1 + before / 4);
      } else if (filled[r] < FULL - FULL / 32) {
        pressure[r] -= (before + 3) / 4;
      }
      changed |= pressure[r] != before;
    }
    return changed;
  }
}
