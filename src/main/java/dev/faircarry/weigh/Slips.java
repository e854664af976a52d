package dev.faircarry.weigh;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Readings that look like a slip and are asked about instead of believed. */
final class Slips {
  /** How near a factor has to be: an eighth; the first that fits is asked about. */
  private static final long NEAR = 8;

  /** NIST Special Publication 811 (2008), appendix B: the ratios of the units of a scale. */
  private static final Map<String, BigDecimal> FACTORS = factors();

  private Slips() {}

  private static Map<String, BigDecimal> factors() {
    Map<String, BigDecimal> factors = new LinkedHashMap<>();
    factors.put("pounds and kilograms", new BigDecimal("2.20462262"));
    factors.put("pounds and ounces", new BigDecimal("16"));
    factors.put("ounces and grams", new BigDecimal("28.349523125"));
    factors.put("kilograms and ounces", new BigDecimal("35.2739619"));
    factors.put("pounds and grams", new BigDecimal("453.59237"));
    factors.put("kilograms and grams", new BigDecimal("1000"));
    return factors;
  }

  /** Which units may be mixed up. */
  static Optional<String> units(long expected, long read) {
    for (Map.Entry<String, BigDecimal> factor : FACTORS.entrySet()) {
      if (near(read, times(expected, factor.getValue()))
          || near(times(read, factor.getValue()), expected)) {
        return Optional.of(
            "The reading is off by about "
                + factor
                    .getValue()
                    .setScale(2, RoundingMode.HALF_UP)
                    .stripTrailingZeros()
                    .toPlainString()
                + ": are "
                + factor.getKey()
                + " mixed up?");
      }
    }
    return Optional.empty();
  }

  private static long times(long milligrams, BigDecimal factor) {
    return BigDecimal.valueOf(milligrams)
        .multiply(factor)
        .setScale(0, RoundingMode.HALF_UP)
        .longValueExact();
  }

  private static boolean near(long a, long b) {
    return b > 0 && Math.abs(a - b) * NEAR <= b;
  }
}
