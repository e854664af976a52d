package dev.faircarry.weigh;

/**
 * How far two readings of the same thing may differ and still agree: the larger of the two.
 *
 * @param thousandths of what is expected
 */
public record Tolerance(long milligrams, int thousandths) {
  /** 50 g or 0.5 % (common practice for hanging scales). */
  public static final Tolerance DEFAULT = new Tolerance(50_000, 5);

  long of(long expectedMilligrams) {
    return Math.max(milligrams, expectedMilligrams * thousandths / 1000);
  }
}
