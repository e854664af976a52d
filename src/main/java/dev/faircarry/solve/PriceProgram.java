package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The linear program behind {@link PriceSearch}: bundles in parts, so that all lots are held, every
 * hiker holds one bundle at most, needs are met and no more mornings are above a value than the
 * wish has there. What is lacking costs; so its duals are prices of blocks.
 *
 * <p>Which bundles are admitted depends on how many blocks of a lot each hiker must and may hold;
 * the others stay in the program at a cost, so that one case of a search goes on where another
 * ended.
 */
final class PriceProgram {
  private static final long HEAVIEST_COST = 32;
  private static final long MOST_PRICE = 1L << 30;

  /** Blocks of each lot that each hiker must hold, and may hold. */
  final int[][] fewest;

  final int[][] most;

  private final Model m;
  private final Lots lots;
  private final KnownBundles known;
  private final List<DearestBundle> dearest = new ArrayList<>();
  private final IntegerSimplex simplex;
  private final int[] asked;

  /**
   * Whose own kit alone is above some value of the wish: they count there even with nothing, so
   * that holding nothing is a bundle like others, or none where it is above the highest.
   */
  private final boolean[] laden;

  private final int firstColumn;
  private final List<Column> columns = new ArrayList<>();

  /** A bundle of a hiker in the program. */
  private record Column(int number, int hiker, int[] counts) {}

  PriceProgram(Lots lots, KnownBundles known, long excessLimit) {
    this.lots = lots;
    this.known = known;
    m = lots.m;
    int kinds = lots.lots.size();
    fewest = new int[m.hikers][kinds];
    most = new int[m.hikers][kinds];
    for (int i = 0; i < m.hikers; i++) {
      dearest.add(new DearestBundle(lots, i, fewest[i], most[i], excessLimit));
    }
    asked = new int[lots.rows()];
    long[] costs = new long[asked.length];
    long heaviest = 1;
    for (int c = 0; c < kinds; c++) {
      heaviest = Math.max(heaviest, lots.sample(c).peakMass());
    }
    for (int c = 0; c < kinds; c++) {
      asked[c] = lots.size(c);
      costs[c] = Math.max(1, lots.sample(c).peakMass() * HEAVIEST_COST / heaviest);
    }
    for (int i = 0; i < m.hikers; i++) {
      asked[lots.hikerRow(i)] = 1;
    }
    for (int n = 0; n < lots.demands.size(); n++) {
      asked[lots.demandRow(n)] = lots.demands.get(n).atLeast();
      costs[lots.demandRow(n)] = HEAVIEST_COST;
    }
    for (int v = 1; v < lots.values.length; v++) {
      asked[lots.valueRow(v)] = lots.above[v];
    }
    simplex = new IntegerSimplex(asked, costs);
    firstColumn = simplex.columns();
    for (int i = 0; i < m.hikers; i++) {
      for (int[] bundle : known.of(i)) {
        if (dearest.get(i).keeps(bundle)) {
          add(i, bundle);
        }
      }
    }
    laden = new boolean[m.hikers];
    for (int i = 0; i < m.hikers; i++) {
      int[] nothing = new int[kinds];
      boolean keeps = dearest.get(i).keeps(nothing);
      laden[i] = !keeps || Arrays.stream(dearest.get(i).mornings(nothing)).sum() > 0;
      if (laden[i]) {
        simplex.price(lots.hikerRow(i), HEAVIEST_COST);
      }
      if (laden[i] && keeps) {
        add(i, nothing);
      }
    }
  }

  int bundles() {
    return columns.size();
  }

  /** Solves the program for the bundles it has; false when it was cut. */
  boolean run(Allowance allowance) {
    return simplex.run(allowance);
  }

  /** Whether bundles in parts keep every condition. */
  boolean kept() {
    return simplex.value() == 0;
  }

  /** What the parts are parts of. */
  long whole() {
    return simplex.denominator();
  }

  /** How many blocks of each lot each hiker holds, in parts of {@link #whole}. */
  long[][] held() {
    long[][] held = new long[m.hikers][lots.lots.size()];
    simplex.uses(
        (number, amount) -> {
          if (number >= firstColumn) {
            Column column = columns.get(number - firstColumn);
            for (int c = 0; c < column.counts().length; c++) {
              held[column.hiker()][c] += column.counts()[c] * amount;
            }
          }
        });
    return held;
  }

  /** Whether parts of bundles that differ in a lot make up what a hiker holds of it. */
  boolean[][] mixed(long[][] held) {
    boolean[][] mixed = new boolean[m.hikers][lots.lots.size()];
    simplex.uses(
        (number, amount) -> {
          if (number >= firstColumn) {
            Column column = columns.get(number - firstColumn);
            for (int c = 0; c < column.counts().length; c++) {
              mixed[column.hiker()][c] |= column.counts()[c] * whole() != held[column.hiker()][c];
            }
          }
        });
    return mixed;
  }

  /**
   * Whether at the prices of the program, rounded to what can be multiplied, the dearest bundles
   * cannot pay for all that is asked: then nothing can. Adds the bundles found.
   */
  boolean unpayable(Allowance allowance) {
    long[] exact = simplex.duals();
    long[] duals = rounded(exact);
    long[] fines = new long[lots.values.length];
    for (int v = 1; v < fines.length; v++) {
      fines[v] = -duals[lots.valueRow(v)];
    }
    boolean certain = true;
    long missing = 0;
    for (int r = 0; r < duals.length; r++) {
      boolean ofHiker = r >= lots.hikerRow(0) && r < lots.hikerRow(m.hikers);
      missing += ofHiker ? 0 : duals[r] * asked[r];
    }
    for (int i = 0; i < m.hikers; i++) {
      DearestBundle search = dearest.get(i);
      long paid = -duals[lots.hikerRow(i)];
      int[] bundle = search.search(prices(duals, i), fines, paid, allowance);
      certain &= !search.settled();
      if (bundle.length > 0) {
        paid = worth(duals, i, bundle);
        if (worth(exact, i, bundle) > -exact[lots.hikerRow(i)]) {
          add(i, bundle);
          known.add(i, bundle);
        }
      }
      missing -= paid;
    }
    return certain && !allowance.cut() && missing > 0;
  }

  /** Any prices not below 0 prove as well as the exact ones, if what they say is said exactly. */
  private long[] rounded(long[] exact) {
    long largest = 0;
    for (long dual : exact) {
      largest = Math.max(largest, Math.abs(dual));
    }
    int shift = Long.SIZE - Long.numberOfLeadingZeros(largest / MOST_PRICE);
    long[] rounded = Arrays.stream(exact).map(dual -> dual >> shift).toArray();
    for (int r = 0; r < rounded.length; r++) {
      // They are so anyway; a proof does not rest on it.
      boolean ofHiker = r >= lots.hikerRow(0) && r < lots.demandRow(0);
      boolean ofValue = r >= lots.demandRow(lots.demands.size());
      if (ofValue) {
        rounded[r] = Math.min(0, rounded[r]);
      } else if (!ofHiker) {
        rounded[r] = Math.max(0, rounded[r]);
      }
    }
    return rounded;
  }

  private long[] prices(long[] duals, int hiker) {
    long[] prices = Arrays.copyOf(duals, lots.lots.size());
    for (int n = 0; n < lots.demands.size(); n++) {
      Lots.Demand demand = lots.demands.get(n);
      if (demand.who()[hiker]) {
        for (int c = 0; c < prices.length; c++) {
          prices[c] += duals[lots.demandRow(n)] * demand.covers()[c];
        }
      }
    }
    return prices;
  }

  private long worth(long[] duals, int hiker, int[] bundle) {
    long[] prices = prices(duals, hiker);
    int[] over = dearest.get(hiker).mornings(bundle);
    long worth = 0;
    for (int c = 0; c < bundle.length; c++) {
      worth += bundle[c] * prices[c];
    }
    for (int v = 1; v < over.length; v++) {
      worth += over[v] * duals[lots.valueRow(v)];
    }
    return worth;
  }

  private void add(int hiker, int[] bundle) {
    int[] over = dearest.get(hiker).mornings(bundle);
    int[] counts = Arrays.copyOf(bundle, lots.rows());
    counts[lots.hikerRow(hiker)] = 1;
    for (int n = 0; n < lots.demands.size(); n++) {
      Lots.Demand demand = lots.demands.get(n);
      for (int c = 0; c < bundle.length && demand.who()[hiker]; c++) {
        counts[lots.demandRow(n)] += bundle[c] * demand.covers()[c];
      }
    }
    for (int v = 1; v < over.length; v++) {
      counts[lots.valueRow(v)] = over[v];
    }
    columns.add(new Column(simplex.add(counts, 0), hiker, bundle));
  }

  /**
   * Gives bundles within what hikers must and may hold for nothing, and those without at a cost.
   */
  void admit() {
    for (int i = 0; i < m.hikers; i++) {
      // Whoever must hold something has a whole bundle, not a part of one.
      boolean owes = laden[i] || Arrays.stream(fewest[i]).anyMatch(least -> least > 0);
      simplex.price(lots.hikerRow(i), owes ? HEAVIEST_COST : 0);
    }
    for (Column column : columns) {
      boolean within = true;
      for (int c = 0; c < column.counts().length && within; c++) {
        int count = column.counts()[c];
        within = count >= fewest[column.hiker()][c] && count <= most[column.hiker()][c];
      }
      simplex.price(column.number(), within ? 0 : HEAVIEST_COST);
    }
  }
}
