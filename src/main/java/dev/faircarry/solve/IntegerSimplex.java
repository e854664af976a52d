package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Linear programs in whole numbers: the least cost of columns that are not negative and meet every
 * condition, exactly.
 *
 * <p>Simplex method with an inverse of the basis kept as whole numbers over one common denominator,
 * the determinant of the basis, so that every division comes out even (integer pivoting; Edmonds
 * 1967, Bareiss 1968). Conditions that are not met yet are met by a shortfall at a price; so there
 * always is a solution, and shortfalls that cannot be priced out show that there is none without.
 * Columns may be added, and costs changed, between runs; the basis stays.
 */
final class IntegerSimplex {
  /** Larger entries could overflow when costs and counts are added up. */
  private static final long MOST = 1L << 44;

  /** So many steps without gain, then the first candidate instead of the best (Bland 1977). */
  private static final int STALLED = 40;

  private final int rows;
  private final List<Column> columns = new ArrayList<>();
  private final long[][] inverse;
  private final long[] level;
  private final int[] basis;
  private long denominator = 1;
  private boolean failed;

  /** A column: conditions it counts in, by how much, and its cost. */
  private static final class Column {
    final int[] rows;
    final int[] counts;
    long cost;
    boolean basic;

    Column(int[] rows, int[] counts, long cost) {
      this.rows = rows;
      this.counts = counts;
      this.cost = cost;
    }
  }

  /**
   * A program without columns.
   *
   * @param bounds what each condition asks: at least so much, or at most
   * @param shortfallCost price of lacking one, by condition; 0 for conditions that say at most
   */
  IntegerSimplex(int[] bounds, long[] shortfallCost) {
    rows = bounds.length;
    inverse = new long[rows][rows];
    level = new long[rows];
    basis = new int[rows];
    for (int r = 0; r < rows; r++) {
      inverse[r][r] = 1;
      level[r] = bounds[r];
      basis[r] = add(new int[] {r}, new int[] {1}, shortfallCost[r]);
      columns.get(basis[r]).basic = true;
    }
    for (int r = 0; r < rows; r++) {
      if (shortfallCost[r] > 0) {
        add(new int[] {r}, new int[] {-1}, 0);
      }
    }
  }

  /**
   * Adds a column.
   *
   * @param counts by how much it counts in each condition
   * @return its number
   */
  int add(int[] counts, long cost) {
    int[] in = IntStream.range(0, rows).filter(r -> counts[r] != 0).toArray();
    return add(in, Arrays.stream(in).map(r -> counts[r]).toArray(), cost);
  }

  private int add(int[] inRows, int[] counts, long cost) {
    columns.add(new Column(inRows, counts, cost));
    return columns.size() - 1;
  }

  /** How many columns there are, shortfalls and surpluses among them. */
  int columns() {
    return columns.size();
  }

  /** Changes what a column costs. */
  void price(int column, long cost) {
    columns.get(column).cost = cost;
  }

  /** Whether numbers grew too large; nothing here means anything then. */
  boolean failed() {
    return failed;
  }

  /** What all other results are to be divided by; above 0. */
  long denominator() {
    return denominator;
  }

  /** The least cost found, times the denominator. */
  long value() {
    long value = 0;
    for (int r = 0; r < rows; r++) {
      value += columns.get(basis[r]).cost * level[r];
    }
    return value;
  }

  /** What one more of each condition would cost, times the denominator. */
  long[] duals() {
    long[] duals = new long[rows];
    for (int r = 0; r < rows; r++) {
      long cost = columns.get(basis[r]).cost;
      if (cost != 0) {
        for (int k = 0; k < rows; k++) {
          duals[k] += cost * inverse[r][k];
        }
      }
    }
    return duals;
  }

  /** Told of every column that is used: its number and how much of it, times the denominator. */
  interface Use {
    void of(int column, long amount);
  }

  /** Goes through the columns in use. */
  void uses(Use use) {
    for (int r = 0; r < rows; r++) {
      if (level[r] != 0) {
        use.of(basis[r], level[r]);
      }
    }
  }

  /** Runs to the least cost; false when it was cut or failed. */
  boolean run(Allowance allowance) {
    int stalled = 0;
    while (!failed) {
      if (allowance.pay(((long) rows * rows + columns.size() * 4L) / 64)) {
        return false;
      }
      long before = value();
      if (before == 0) {
        return true;
      }
      int entering = entering(stalled > STALLED);
      if (entering < 0) {
        return true;
      }
      long old = denominator;
      pivot(entering);
      boolean gain = EvenDivision.compare(value(), old, before, denominator) < 0;
      stalled = gain ? 0 : stalled + 1;
    }
    return false;
  }

  /** The column that pays most for each of it, or the first that pays; -1 where none does. */
  private int entering(boolean first) {
    long[] duals = duals();
    long best = 0;
    int found = -1;
    for (int c = 0; c < columns.size(); c++) {
      Column column = columns.get(c);
      if (column.basic) {
        continue;
      }
      long gain = -column.cost * denominator;
      for (int k = 0; k < column.rows.length; k++) {
        gain += duals[column.rows[k]] * column.counts[k];
      }
      if (gain > best) {
        best = gain;
        found = c;
        if (first) {
          return c;
        }
      }
    }
    return found;
  }

  private void pivot(int entering) {
    Column column = columns.get(entering);
    long[] change = new long[rows];
    for (int r = 0; r < rows; r++) {
      for (int k = 0; k < column.rows.length; k++) {
        change[r] += inverse[r][column.rows[k]] * column.counts[k];
      }
    }
    int leaving = leaving(change);
    if (leaving < 0) {
      // Costs are not negative, so the least cost is never without bound; only wrapped numbers
      // get here.
      failed = true;
      return;
    }
    long pivot = change[leaving];
    EvenDivision by = new EvenDivision(denominator);
    for (int r = 0; r < rows; r++) {
      if (r != leaving && (change[r] != 0 || pivot != denominator)) {
        long[] row = inverse[r];
        long[] other = inverse[leaving];
        for (int k = 0; k < rows; k++) {
          row[k] = by.difference(pivot, row[k], change[r], other[k]);
          failed |= row[k] > MOST || row[k] < -MOST;
        }
        level[r] = by.difference(pivot, level[r], change[r], level[leaving]);
        failed |= level[r] > MOST;
      }
    }
    failed |= pivot > MOST;
    columns.get(basis[leaving]).basic = false;
    basis[leaving] = entering;
    column.basic = true;
    denominator = pivot;
  }

  /** The row that gets to 0 first; of several the one whose column came first. */
  private int leaving(long[] change) {
    int best = -1;
    for (int r = 0; r < rows; r++) {
      if (change[r] > 0) {
        if (best < 0) {
          best = r;
          continue;
        }
        int order = EvenDivision.compare(level[r], change[best], level[best], change[r]);
        if (order < 0 || (order == 0 && basis[r] < basis[best])) {
          best = r;
        }
      }
    }
    return best;
  }
}
