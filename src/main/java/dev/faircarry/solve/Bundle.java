package dev.faircarry.solve;

/**
 * Blocks packed into two words: one bit for each block that is alone in its class, and a counter
 * with a guard bit above it for each class of equal blocks. Adding words adds bundles; a borrow
 * into a guard bit shows that more is taken than is there.
 */
final class Bundle {
  private Bundle() {}

  /** Whether {@code part} can be taken out of {@code rest}. */
  static boolean fits(long restBits, long restCounts, long partBits, long partCounts, long guards) {
    return (partBits & ~restBits) == 0
        && ((((restCounts | guards) - partCounts) & guards) == guards);
  }
}
