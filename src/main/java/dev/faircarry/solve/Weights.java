package dev.faircarry.solve;

/**
 * What a step costs in local search: integers that grow from step to step, gently in early phases
 * and steeply in late ones, so that lowering the highest step comes to outweigh everything below
 * it.
 */
final class Weights {
  private static final int TABLE = 1 << 10;
  private static final long MOST = 1L << 36;

  private final int base;
  private final long[] table = new long[TABLE];

  private Weights(int base) {
    this.base = base;
  }

  /** The square of the distance from a step well below the aim. */
  static Weights quadratic(int aim) {
    Weights weights = new Weights(aim - TABLE / 2);
    for (int k = 0; k < TABLE; k++) {
      weights.table[k] = 1L + (long) k * k;
    }
    return weights;
  }

  /** Grows by numerator / denominator from step to step around the aim. */
  static Weights growing(int aim, int numerator, int denominator) {
    Weights weights = new Weights(aim - TABLE / 2);
    long value = 1L << 12;
    int at = TABLE / 2;
    for (int k = at; k < TABLE; k++) {
      weights.table[k] = Math.min(value, MOST);
      value = Math.min(MOST, value * numerator / denominator + 1);
    }
    value = 1L << 12;
    for (int k = at - 1; k >= 0; k--) {
      value = value * denominator / numerator;
      weights.table[k] = value;
    }
    return weights;
  }

  /** The cost of a morning at a step. */
  long of(int step) {
    int at = step - base;
    if (at < 0) {
      return 0;
    }
    if (at >= TABLE) {
      return table[TABLE - 1] + (long) (at - TABLE + 1) * (1L << 14);
    }
    return table[at];
  }
}
