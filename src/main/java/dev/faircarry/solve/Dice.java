package dev.faircarry.solve;

/**
 * Reproducible pseudo-random numbers (SplitMix64, Steele, Lea and Flood 2014): integer arithmetic
 * only, the same on every machine and in every release of Java.
 */
final class Dice {
  private long state;

  Dice(long seed) {
    state = seed;
  }

  long nextLong() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** A number from 0 to bound - 1; the bias of at most bound / 2^31 does not matter to a search. */
  int below(int bound) {
    return (int) (((nextLong() >>> 33) * bound) >>> 31);
  }

  /** Puts an array into random order. */
  void shuffle(int[] values) {
    for (int k = values.length - 1; k > 0; k--) {
      int other = below(k + 1);
      int kept = values[k];
      values[k] = values[other];
      values[other] = kept;
    }
  }
}
