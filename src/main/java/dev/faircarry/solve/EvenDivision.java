package dev.faircarry.solve;

/**
 * Divides differences of products, which may need twice as many bits as a long has, by a number
 * that divides them evenly, into results that fit a long.
 *
 * <p>Of an even quotient the lowest 64 bits are the product with the inverse of the divisor modulo
 * 2^64, which exists where the divisor is odd; factors of two are shifted out first (Jebelean
 * 1993).
 */
final class EvenDivision {
  private final int twos;
  private final long inverse;

  /**
   * Division by a number.
   *
   * @param divisor above 0
   */
  EvenDivision(long divisor) {
    twos = Long.numberOfTrailingZeros(divisor);
    long odd = divisor >> twos;
    // Right to 3 bits at first, then to twice as many with every turn (Newton).
    long x = odd;
    for (int bits = 3; bits < Long.SIZE; bits *= 2) {
      x *= 2 - odd * x;
    }
    inverse = x;
  }

  /** (a b - c d) / divisor. */
  long difference(long a, long b, long c, long d) {
    long one = a * b;
    long other = c * d;
    long low = one - other;
    if (twos == 0) {
      return low * inverse;
    }
    long borrow = Long.compareUnsigned(one, other) < 0 ? 1 : 0;
    long high = Math.multiplyHigh(a, b) - Math.multiplyHigh(c, d) - borrow;
    return ((low >>> twos) | (high << (Long.SIZE - twos))) * inverse;
  }

  /** The order of a b and c d. */
  static int compare(long a, long b, long c, long d) {
    int byHigh = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
    return byHigh != 0 ? byHigh : Long.compareUnsigned(a * b, c * d);
  }
}
