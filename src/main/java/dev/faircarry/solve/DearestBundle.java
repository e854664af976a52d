package dev.faircarry.solve;

/**
 * The dearest bundle that one hiker can hold, at a price for each block and a fine for each morning
 * above a value of a wish. Bundles with all mornings within the lowest value first, then those with
 * some morning above it, and so on: what must be paid in fines at least bounds what each is worth.
 */
final class DearestBundle {
  private final Lots program;
  private final BundleLimits[] limits;
  private final Knapsack[] knapsacks;
  private final int[] most;
  private boolean settled;

  /**
   * The bundles of a hiker.
   *
   * @param fewest blocks of each lot that the hiker must hold; read at every search
   * @param most blocks of each lot that the hiker may hold; lowered here to what limits leave room
   *     for
   */
  DearestBundle(Lots program, int hiker, int[] fewest, int[] most, long excessLimit) {
    this.program = program;
    this.most = most;
    limits = new BundleLimits[program.values.length];
    knapsacks = new Knapsack[limits.length];
    for (int v = 0; v < limits.length; v++) {
      limits[v] = new BundleLimits(program, hiker, v, excessLimit);
      knapsacks[v] = new Knapsack(limits[v], fewest);
    }
    for (int c = 0; c < most.length; c++) {
      most[c] = limits[0].most(c);
    }
  }

  /**
   * Searches.
   *
   * @param prices of a block of each lot for this hiker
   * @param fines for a morning above a value of the wish, by value; nothing may be above the first
   * @param above only a bundle worth more than this is of interest
   * @return how many blocks of each lot the dearest such bundle has; nothing where there is none,
   *     or none was found before the allowance was cut
   */
  int[] search(long[] prices, long[] fines, long above, Allowance allowance) {
    settled = false;
    int[] found = {};
    long best = above;
    for (int v = limits.length - 1; v >= 0; v--) {
      if (v > 0 && fines[v] == 0) {
        continue;
      }
      BundleLimits.Fines charged = limits[v].fines(fines);
      int[] bundle = knapsacks[v].search(most, prices, charged, best, allowance);
      settled |= knapsacks[v].settled();
      if (bundle.length > 0) {
        found = bundle;
        best = worth(bundle, prices, fines);
      }
    }
    return found;
  }

  private long worth(int[] bundle, long[] prices, long[] fines) {
    long worth = -limits[0].fines(fines).of(used(bundle));
    for (int c = 0; c < bundle.length; c++) {
      worth += bundle[c] * prices[c];
    }
    return worth;
  }

  private long[] used(int[] bundle) {
    long[] used = new long[limits[0].size()];
    for (int c = 0; c < bundle.length; c++) {
      limits[0].use(used, c, bundle[c]);
    }
    return used;
  }

  /** Whether the last search was ended before it knew that nothing is dearer. */
  boolean settled() {
    return settled;
  }

  /** Whether a bundle that was found for another wish keeps the limits of this one. */
  boolean keeps(int[] bundle) {
    for (int c = 0; c < bundle.length; c++) {
      if (bundle[c] > most[c]) {
        return false;
      }
    }
    return limits[0].keep(used(bundle));
  }

  /** Mornings above each value with a bundle. */
  int[] mornings(int[] bundle) {
    long[] used = used(bundle);
    int[] over = new int[program.values.length];
    for (int v = 1; v < over.length; v++) {
      long[] one = new long[over.length];
      one[v] = 1;
      over[v] = (int) limits[0].fines(one).of(used);
    }
    return over;
  }
}
