package dev.faircarry.solve;

import java.util.Arrays;

/** Lists of steps, from highest to lowest, and their order. */
final class Steps {
  private Steps() {}

  static int[] sortDescending(int[] list) {
    Arrays.sort(list);
    for (int a = 0, z = list.length - 1; a < z; a++, z--) {
      int kept = list[a];
      list[a] = list[z];
      list[z] = kept;
    }
    return list;
  }

  /**
   * Below 0 where the first list is the fairer one: smaller at the first position in which they
   * differ.
   */
  static int compare(int[] one, int[] other) {
    return Arrays.compare(one, other);
  }

  /**
   * The weakest list that is still fairer than {@code list} and differs first at a position: the
   * same before it, one step less from it on. A split is fairer than {@code list} exactly when, for
   * some position, its own list is nowhere above this.
   */
  static int[] fairerAt(int[] list, int position) {
    int[] wanted = list.clone();
    Arrays.fill(wanted, position, wanted.length, list[position] - 1);
    return wanted;
  }

  /** Whether {@code list} is nowhere above {@code wanted}; both from highest to lowest. */
  static boolean within(int[] list, int[] wanted) {
    for (int k = 0; k < list.length; k++) {
      if (list[k] > wanted[k]) {
        return false;
      }
    }
    return true;
  }

  /** The last of the levels that are as high as a level of a list that falls. */
  static int lastOfTie(int[] list, int level) {
    int last = level;
    while (last + 1 < list.length && list[last + 1] == list[level]) {
      last++;
    }
    return last;
  }
}
