package dev.faircarry.solve;

/** How many levels of a list cannot be lowered, by masses alone ({@link Bound}). */
final class MassProof {
  private final Bound bound;

  MassProof(Bound bound) {
    this.bound = bound;
  }

  /**
   * Levels proved from the highest on.
   *
   * @param proved so many levels are proved already
   */
  int levels(int[] list, int proved) {
    int level = proved;
    while (level < list.length) {
      int last = Steps.lastOfTie(list, level);
      if (!bound.excludes(Steps.fairerAt(list, last))) {
        return ofTie(list, level, last);
      }
      level = last + 1;
    }
    return level;
  }

  /** Levels proved when the last level of a tie cannot be proved, those before the tie are. */
  int ofTie(int[] list, int level, int last) {
    int low = level;
    int high = last;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (bound.excludes(Steps.fairerAt(list, middle))) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
