package dev.faircarry.solve;

/**
 * What a {@link Cover} has still to take, and what may still be wasted, passed and moved.
 *
 * @param bits blocks still to be taken, with {@code counts} as in {@link Bundle}
 * @param mass milligrams of those blocks on the windows' morning
 * @param slack milligrams that may still be wasted
 * @param excess thousandths by which caps may still be passed
 * @param gains units that may still be gained, as {@code drops} for those dropped
 */
record Rest(long bits, long counts, long mass, long slack, long excess, int gains, int drops) {
  /** Whether a bundle passes caps and moves units no more than is left. */
  boolean affords(BundleList list, int k) {
    return list.excess[k] <= excess && list.gains[k] <= gains && list.drops[k] <= drops;
  }

  /** What is left once a bundle is taken. */
  Rest without(BundleList list, int k) {
    return new Rest(
        bits & ~list.bits[k],
        counts - list.counts[k],
        mass - list.mass[k],
        slack - list.waste[k],
        excess - list.excess[k],
        gains - list.gains[k],
        drops - list.drops[k]);
  }
}
