package dev.faircarry.solve;

import java.util.Arrays;

/**
 * The steps of the bundles chosen so far, sorted, for each depth of a {@link Cover} and each track
 * of its wish.
 */
final class ChosenSteps {
  private final Wish wish;
  private final int days;
  private final int tracks;

  /** Sorted lists by depth and track. */
  private final int[][][] listAtDepth;

  ChosenSteps(Wish wish, int hikers, int days) {
    this.wish = wish;
    this.days = days;
    tracks = wish.steps().length;
    listAtDepth = new int[hikers + 1][tracks][];
    Arrays.fill(listAtDepth[0], new int[0]);
  }

  /**
   * Adds the steps of a bundle to those chosen down to a depth; false where the sorted list passes
   * the wish.
   */
  boolean note(BundleList bundles, int k, int depth) {
    for (int t = 0; t < tracks; t++) {
      int[] so = listAtDepth[depth][t];
      int ofTrack = tracks == 1 ? days : 1;
      int[] list = listAtDepth[depth + 1][t];
      if (list == null || list.length != so.length + ofTrack) {
        list = new int[so.length + ofTrack];
        listAtDepth[depth + 1][t] = list;
      }
      System.arraycopy(so, 0, list, 0, so.length);
      int filled = so.length;
      for (int d = 0; d < days; d++) {
        if (wish.trackOfDay()[d] == t) {
          insert(list, filled++, bundles.steps[k * days + d]);
        }
      }
      if (!Steps.within(list, wish.steps()[t])) {
        return false;
      }
    }
    return true;
  }

  private static void insert(int[] list, int filled, int step) {
    int at = filled;
    while (at > 0 && list[at - 1] < step) {
      list[at] = list[at - 1];
      at--;
    }
    list[at] = step;
  }

  /** For each day the highest step that can join those chosen down to a depth within the wish. */
  int[] highestLeft(int depth) {
    int[] highest = new int[days];
    for (int d = 0; d < days; d++) {
      int track = wish.trackOfDay()[d];
      int[] wanted = wish.steps()[track];
      int[] chosen = listAtDepth[depth][track];
      int at = chosen.length;
      while (at > 0 && chosen[at - 1] <= wanted[at]) {
        at--;
      }
      highest[d] = wanted[at];
    }
    return highest;
  }

  /** Whether a bundle has no step above those of a list by day. */
  boolean below(BundleList bundles, int k, int[] highest) {
    for (int d = 0; d < days; d++) {
      if (bundles.steps[k * days + d] > highest[d]) {
        return false;
      }
    }
    return true;
  }
}
