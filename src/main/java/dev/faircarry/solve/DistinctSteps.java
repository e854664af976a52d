package dev.faircarry.solve;

import java.util.Arrays;

/**
 * The distinct values of a list of steps.
 *
 * @param values each value once, from highest to lowest
 * @param above how many steps of the list are above each
 */
record DistinctSteps(int[] values, int[] above) {
  /** Of a list from highest to lowest. */
  static DistinctSteps of(int[] list) {
    int[] values = new int[list.length];
    int[] above = new int[list.length];
    int size = 0;
    for (int k = 0; k < list.length; k++) {
      if (k == 0 || list[k] != list[k - 1]) {
        values[size] = list[k];
        above[size++] = k;
      }
    }
    return new DistinctSteps(Arrays.copyOf(values, size), Arrays.copyOf(above, size));
  }
}
