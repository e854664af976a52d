package dev.faircarry.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** How a computed mass is written for people and machines. */
public final class MassText {
  private static final BigDecimal MILLIGRAMS_PER_OUNCE = new BigDecimal("28349.523125");

  private MassText() {}

  /** Grams with no more decimals than the milligrams need: {@code 12345.6}. */
  public static String plainGrams(long milligrams) {
    BigDecimal grams = BigDecimal.valueOf(milligrams, 3).stripTrailingZeros();
    return (grams.scale() < 0 ? grams.setScale(0) : grams).toPlainString();
  }

  /** Whole grams, rounded half away from nothing: {@code 1043 g}. */
  public static String grams(long milligrams) {
    return BigDecimal.valueOf(milligrams, 3).setScale(0, RoundingMode.HALF_UP).toPlainString()
        + " g";
  }

  /** Kilograms with two decimals, rounded half up: {@code 12.35 kg}. */
  public static String kilograms(long milligrams) {
    return BigDecimal.valueOf(milligrams, 6).setScale(2, RoundingMode.HALF_UP).toPlainString()
        + " kg";
  }

  /** Pounds and ounces to a tenth of an ounce, rounded half up once: {@code 27 lb 3.5 oz}. */
  public static String poundsAndOunces(long milligrams) {
    BigDecimal tenths =
        BigDecimal.valueOf(milligrams)
            .movePointRight(1)
            .divide(MILLIGRAMS_PER_OUNCE, 0, RoundingMode.HALF_UP);
    long all = tenths.longValueExact();
    String sign = all < 0 ? "-" : "";
    long size = Math.abs(all);
    long pounds = size / 160;
    long rest = size % 160;
    return String.format(Locale.ROOT, "%s%d lb %d.%d oz", sign, pounds, rest / 10, rest % 10);
  }
}
