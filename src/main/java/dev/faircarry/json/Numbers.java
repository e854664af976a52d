package dev.faircarry.json;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Computed numbers as they stand in answers. */
final class Numbers {
  private Numbers() {}

  /** Grams with no more decimals than the milligrams need. */
  static BigDecimal grams(long milligrams) {
    return plain(BigDecimal.valueOf(milligrams, 3));
  }

  /** Money with no more decimals than the hundredths need. */
  static BigDecimal money(long hundredths) {
    return plain(BigDecimal.valueOf(hundredths, 2));
  }

  /** Grams for one unit of money, to a tenth, rounded half up. */
  static BigDecimal gramsPerMoney(long milligrams, long hundredths) {
    return plain(
        BigDecimal.valueOf(milligrams, 3)
            .divide(BigDecimal.valueOf(hundredths, 2), 1, RoundingMode.HALF_UP));
  }

  static BigDecimal plain(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
