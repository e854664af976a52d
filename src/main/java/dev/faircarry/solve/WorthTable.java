package dev.faircarry.solve;

/**
 * The most that lots from each one on can be worth, by what is left of one limit (Bellman 1957).
 * The limit is counted in units, each use rounded down, so that the worth is never too low.
 */
final class WorthTable {
  private static final int MOST_UNITS = 1 << 12;

  private final long unit;
  private final int units;

  /** By lot in order, then by units left. */
  private final long[][] worth;

  /**
   * Fills the table.
   *
   * @param uses what one of each lot uses, in order
   * @param worths of one of each lot; those worth nothing are left out
   * @param numbers how many there are
   * @param limit what there is of it in all
   */
  WorthTable(long[] uses, long[] worths, int[] numbers, long limit) {
    long measure = 0;
    for (long use : uses) {
      measure = SubsetSums.commonMeasure(measure, use);
    }
    unit = Math.max(Math.max(1, measure), (limit + MOST_UNITS - 1) / MOST_UNITS);
    units = (int) (limit / unit);
    worth = new long[uses.length + 1][];
    worth[uses.length] = new long[units + 1];
    for (int k = uses.length - 1; k >= 0; k--) {
      worth[k] = worth[k + 1].clone();
      int use = (int) Math.min(units + 1, uses[k] / unit);
      for (int n = 0; n < numbers[k] && worths[k] > 0; n++) {
        add(worth[k], use, worths[k]);
      }
    }
  }

  private static void add(long[] row, int use, long worth) {
    for (int w = row.length - 1; w >= use; w--) {
      row[w] = Math.max(row[w], row[w - use] + worth);
    }
  }

  /** Work it took to fill. */
  long cells() {
    return (long) worth.length * (units + 1);
  }

  /** What lots from one on are worth at most with so much left, which is not below 0. */
  long from(int at, long left) {
    return worth[at][(int) Math.min(units, left / unit)];
  }
}
