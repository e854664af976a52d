package dev.faircarry.solve;

/**
 * What a step costs in local search: integers that grow from step to step, gently in early phases
 * and steeply in late ones, so that lowering the highest step comes to outweigh everything below
 * it. Each day has its own aim, so that mornings of light days are evened out too.
 */
final class Weights {
  private static final int TABLE = 1 << 11;
  private static final int BELOW = 1 << 8;
  private static final long MOST = 1L << 44;
  private static final long AT_AIM = 1L << 12;

  private final int[] aims;
  private final long[] table = new long[TABLE];

  private Weights(int[] aims) {
    this.aims = aims;
  }

  /** The square of the distance above a step a little below the day's aim. */
  static Weights quadratic(int[] aims, int margin) {
    Weights weights = new Weights(aims);
    for (int k = 0; k < TABLE; k++) {
      long above = Math.max(0, k - BELOW + margin);
      weights.table[k] = above * above * 16;
    }
    return weights;
  }

  /** Grows by numerator / denominator from step to step around the day's aim. */
  static Weights growing(int[] aims, int numerator, int denominator) {
    Weights weights = new Weights(aims);
    long value = AT_AIM;
    for (int k = BELOW; k < TABLE; k++) {
      weights.table[k] = value;
      long grown = value * numerator / denominator + 1;
      value = grown > MOST ? value + (1L << 30) : grown;
    }
    value = AT_AIM;
    for (int k = BELOW - 1; k >= 0; k--) {
      value = value * denominator / numerator;
      weights.table[k] = value;
    }
    return weights;
  }

  /** The cost of a morning at a step. */
  long of(int day, int step) {
    int at = step - aims[day] + BELOW;
    if (at < 0) {
      return 0;
    }
    if (at >= TABLE) {
      return table[TABLE - 1] + (long) (at - TABLE + 1) * (1L << 30);
    }
    return table[at];
  }
}
