package dev.faircarry.solve;

/**
 * Which whole numbers are sums of some of a set of numbers: one bit for each, from nothing up to a
 * limit.
 */
final class SubsetSums {
  private final long[] bits;

  /** Only the empty sum, with room for sums up to at least so much. */
  SubsetSums(long most) {
    bits = new long[(int) (most >>> 6) + 1];
    bits[0] = 1;
  }

  private SubsetSums(long[] bits) {
    this.bits = bits;
  }

  SubsetSums copy() {
    return new SubsetSums(bits.clone());
  }

  /** The greatest sum there is room for. */
  long most() {
    return bits.length * 64L - 1;
  }

  /** Words of memory, which is what joining costs. */
  int words() {
    return bits.length;
  }

  /**
   * Adds the sums of others with one more number; sums without room for them are left out. The
   * others may be these: it walks downwards.
   */
  void join(SubsetSums others, long number) {
    long[] so = others.bits;
    int words = (int) Math.min(bits.length, number >>> 6);
    int rest = (int) (number & 63);
    for (int w = bits.length - 1; w >= words; w--) {
      long moved = so[w - words] << rest;
      if (rest != 0 && w > words) {
        moved |= so[w - words - 1] >>> (64 - rest);
      }
      bits[w] |= moved;
    }
  }

  /** The greatest sum that is at most {@code limit}, which is within {@link #most}. */
  long atMost(long limit) {
    int word = (int) (limit >>> 6);
    long masked = bits[word] & (-1L >>> (63 - (limit & 63)));
    while (masked == 0) {
      masked = bits[--word];
    }
    return (long) word * 64 + 63 - Long.numberOfLeadingZeros(masked);
  }

  /** The greatest number of which both are multiples; of nothing and a number, that number. */
  static long commonMeasure(long a, long b) {
    return b == 0 ? a : commonMeasure(b, a % b);
  }
}
