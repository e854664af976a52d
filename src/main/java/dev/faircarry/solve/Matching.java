package dev.faircarry.solve;

import java.util.Arrays;

/**
 * The most that hikers can hold together when each gets one of the wanted steps: an assignment
 * problem, solved by the Hungarian method with potentials (Kuhn 1955; shortest augmenting paths
 * after Jonker and Volgenant 1987).
 *
 * @param total the greatest sum of gains over all ways to give every row a column of its own
 * @param rowPotential with {@code columnPotential}: row + column is at least the gain everywhere,
 *     and the potentials sum to {@code total}
 * @param columnOfRow a way that reaches the total
 */
record Matching(long total, long[] rowPotential, long[] columnPotential, int[] columnOfRow) {
  /** The gain of a pair that must not be used. */
  static final long FORBIDDEN = -(1L << 50);

  /** Whether every row can have a column of its own without a forbidden pair. */
  boolean possible() {
    return total > FORBIDDEN / 2;
  }

  /** Solves a square problem of gains by row and column. */
  static Matching greatest(long[][] gains) {
    int n = gains.length;
    long[] u = new long[n + 1];
    long[] v = new long[n + 1];
    int[] rowOf = new int[n + 1];
    int[] before = new int[n + 1];
    for (int row = 1; row <= n; row++) {
      rowOf[0] = row;
      int column = 0;
      long[] least = new long[n + 1];
      Arrays.fill(least, Long.MAX_VALUE);
      boolean[] done = new boolean[n + 1];
      do {
        done[column] = true;
        int i = rowOf[column];
        long delta = Long.MAX_VALUE;
        int next = 0;
        for (int j = 1; j <= n; j++) {
          if (done[j]) {
            continue;
          }
          long reduced = -gains[i - 1][j - 1] - u[i] - v[j];
          if (reduced < least[j]) {
            least[j] = reduced;
            before[j] = column;
          }
          if (least[j] < delta) {
            delta = least[j];
            next = j;
          }
        }
        for (int j = 0; j <= n; j++) {
          if (done[j]) {
            u[rowOf[j]] += delta;
            v[j] -= delta;
          } else {
            least[j] -= delta;
          }
        }
        column = next;
      } while (rowOf[column] != 0);
      do {
        int previous = before[column];
        rowOf[column] = rowOf[previous];
        column = previous;
      } while (column != 0);
    }
    long total = 0;
    long[] rows = new long[n];
    long[] columns = new long[n];
    for (int k = 0; k < n; k++) {
      rows[k] = -u[k + 1];
      columns[k] = -v[k + 1];
      total += rows[k] + columns[k];
    }
    int[] columnOfRow = new int[n];
    for (int j = 1; j <= n; j++) {
      columnOfRow[rowOf[j] - 1] = j - 1;
    }
    return new Matching(total, rows, columns, columnOfRow);
  }
}
