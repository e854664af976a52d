package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Even division of differences of products, and their order, against {@link BigInteger}. */
class EvenDivisionTest {
  /** Terms of a difference that a divisor divides evenly. */
  private record Case(long a, long b, long c, long d, long divisor) {
    BigInteger difference() {
      return product(a, b).subtract(product(c, d));
    }

    /** Numbers of so many bits or fewer; d is solved for, c being prime to the divisor. */
    static Case of(SplittableRandom random, int bits, long divisor) {
      BigInteger by = BigInteger.valueOf(divisor);
      long a = number(random, bits);
      long b = number(random, bits);
      long c = number(random, bits);
      while (!BigInteger.valueOf(c).gcd(by).equals(BigInteger.ONE)) {
        c = number(random, bits);
      }
      BigInteger rest = product(a, b).multiply(BigInteger.valueOf(c).modInverse(by)).mod(by);
      BigInteger more = BigInteger.valueOf(number(random, bits)).divide(by).multiply(by);
      return new Case(a, b, c, rest.add(more).longValueExact(), divisor);
    }
  }

  private static BigInteger product(long a, long b) {
    return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
  }

  private static long number(SplittableRandom random, int bits) {
    return random.nextLong() >> (Long.SIZE - 1 - random.nextInt(1, bits + 1));
  }

  @Test
  void differences() {
    int wide = 0;
    int negative = 0;
    int fitting = 0;
    for (long seed = 0; seed < 4000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      long divisor =
          switch ((int) (seed % 4)) {
            case 0 -> 1L << random.nextInt(52);
            case 1 -> random.nextLong(1L << random.nextInt(1, 52)) | 1;
            case 2 -> (random.nextLong(1L << random.nextInt(1, 40)) | 1) << random.nextInt(1, 12);
            default -> random.nextLong(1, 1L << random.nextInt(1, 52));
          };
      Case terms = Case.of(random, 52, divisor);
      BigInteger[] even = terms.difference().divideAndRemainder(BigInteger.valueOf(divisor));
      assertEquals(BigInteger.ZERO, even[1], "seed " + seed);
      if (even[0].bitLength() < Long.SIZE) {
        fitting++;
        wide += terms.difference().bitLength() >= Long.SIZE ? 1 : 0;
        negative += terms.difference().signum() < 0 ? 1 : 0;
        long quotient =
            new EvenDivision(divisor).difference(terms.a(), terms.b(), terms.c(), terms.d());
        assertEquals(even[0].longValueExact(), quotient, "seed " + seed + " " + terms);
      }
    }
    assertTrue(
        fitting > 2000 && wide > 400 && negative > 600, fitting + " " + wide + " " + negative);
  }

  /** 2^40 x 2^40 - 2^60 x 2^10 = 2^80 - 2^70, which 2^50 divides into 2^30 - 2^20. */
  @Test
  void powersOfTwo() {
    EvenDivision by = new EvenDivision(1L << 50);
    assertEquals((1L << 30) - (1L << 20), by.difference(1L << 40, 1L << 40, 1L << 60, 1L << 10));
    assertEquals((1L << 20) - (1L << 30), by.difference(1L << 60, 1L << 10, 1L << 40, 1L << 40));
    assertEquals(0, by.difference(1L << 40, 1L << 40, 1L << 40, 1L << 40));
  }

  @Test
  void orderOfProducts() {
    int same = 0;
    for (long seed = 0; seed < 6000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      long a = number(random, 63);
      long b = number(random, 63);
      boolean swapped = random.nextInt(8) == 0;
      long c = swapped ? b : number(random, 63);
      // One more or less at times, so that only the lowest bits tell.
      long d = swapped ? a - random.nextInt(2) : number(random, 63);
      int order = product(a, b).compareTo(product(c, d));
      same += order == 0 ? 1 : 0;
      assertEquals(
          order, Integer.signum(EvenDivision.compare(a, b, c, d)), "seed " + seed + " " + a);
    }
    assertTrue(same > 150, same + " the same");
  }
}
