package dev.faircarry.json;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Computed numbers as they stand in answers. */
final class Exact {
  private static final int RATIO_DECIMALS = 6;
  private static final int RELATIVE_DECIMALS = 4;

  private Exact() {}

  /** Grams, exact. */
  static BigDecimal grams(long milligrams) {
    return plain(BigDecimal.valueOf(milligrams, 3));
  }

  /** Grams, exact. */
  static BigDecimal gramsOfNanograms(long nanograms) {
    return plain(BigDecimal.valueOf(nanograms, 9));
  }

  /** Load counted over target load, six decimals, half up. */
  static BigDecimal ratio(long milligrams, long targetNanograms) {
    return BigDecimal.valueOf(milligrams)
        .movePointRight(6)
        .divide(BigDecimal.valueOf(targetNanograms), RATIO_DECIMALS, RoundingMode.HALF_UP);
  }

  /** Load over body mass, four decimals, half up. */
  static BigDecimal relative(long loadMilligrams, long bodyMassMilligrams) {
    return BigDecimal.valueOf(loadMilligrams)
        .divide(BigDecimal.valueOf(bodyMassMilligrams), RELATIVE_DECIMALS, RoundingMode.HALF_UP);
  }

  private static BigDecimal plain(BigDecimal number) {
    BigDecimal shortest = number.stripTrailingZeros();
    return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
  }
}
