package dev.faircarry.solve;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a group search looks for: a division whose steps are nowhere above wanted lists. The days
 * are in tracks; the steps of all mornings of a track, sorted, are held against the track's list.
 *
 * @param trackOfDay track of each day
 * @param steps the wanted list of each track, from highest to lowest
 * @param excessLimit thousandths by which the group may pass its caps
 * @param keptFree position in the group of a hiker who is to keep some milligrams free below the
 *     wanted step on {@code freeDay}; -1 for nobody
 * @param budget how many units may change hands, where that matters
 */
record Wish(
    int[] trackOfDay,
    int[][] steps,
    long excessLimit,
    int keptFree,
    int freeDay,
    long freeMilligrams,
    Optional<Budget> budget) {

  /** All mornings in one list: exactly the splits that are as fair as it. */
  static Wish overall(int days, int[] list, long excessLimit) {
    return new Wish(new int[days], new int[][] {list}, excessLimit, -1, 0, 0, Optional.empty());
  }

  /** Each day by itself: narrower, and so faster to search, but no proof of anything. */
  static Wish byDay(int[][] lists, long excessLimit) {
    int[] tracks = new int[lists.length];
    Arrays.setAll(tracks, d -> d);
    return new Wish(tracks, lists, excessLimit, -1, 0, 0, Optional.empty());
  }

  Wish keepingFree(int position, int day, long milligrams) {
    return new Wish(trackOfDay, steps, excessLimit, position, day, milligrams, budget);
  }

  Wish within(Budget moves) {
    return new Wish(
        trackOfDay, steps, excessLimit, keptFree, freeDay, freeMilligrams, Optional.of(moves));
  }

  /** The highest so many of the steps wanted for a day. */
  int[] highest(int day, int count) {
    return Arrays.copyOf(steps[trackOfDay[day]], count);
  }
}
