package dev.faircarry.solve;

import java.util.Arrays;

/**
 * What a group search looks for: a division whose list of steps is nowhere above the wanted one.
 *
 * @param steps the wanted list of the group's mornings, from highest to lowest
 * @param excessLimit thousandths by which the group may pass its caps
 * @param keptFree position in the group of a hiker who is to keep some milligrams free below the
 *     wanted step; -1 for nobody
 */
record Wish(int[] steps, long excessLimit, int keptFree, long freeMilligrams) {

  Wish(int[] steps, long excessLimit) {
    this(steps, excessLimit, -1, 0);
  }

  /** The highest so many of the wanted steps. */
  int[] highest(int count) {
    return Arrays.copyOf(steps, count);
  }
}
