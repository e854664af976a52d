package dev.faircarry.unit;

import java.math.BigDecimal;
import java.util.Map;

/**
 * A mass as somebody entered it, kept word for word, and its worth in whole milligrams.
 *
 * <p>Conversion factors are exact by definition: NIST Special Publication 811 (2008), appendix B: 1
 * lb = 453.592 37 g, 1 oz = 28.349 523 125 g.
 *
 * @param entered the text as it came, for example {@code "1 lb 12 oz"}
 * @param milligrams its worth, rounded once, half up
 */
public record Mass(String entered, long milligrams) {
  private static final Map<String, BigDecimal> MILLIGRAMS_IN =
      Map.of(
          "mg", BigDecimal.ONE,
          "g", new BigDecimal("1000"),
          "kg", new BigDecimal("1000000"),
          "oz", new BigDecimal("28349.523125"),
          "lb", new BigDecimal("453592.37"),
          "lbs", new BigDecimal("453592.37"));

  /** Reads a mass with its unit: mg, g, kg, oz, lb, or several from large to small. */
  public static Parse<Mass> parse(String text) {
    Parse<BigDecimal> amount = QuantityText.read(text, MILLIGRAMS_IN);
    if (amount instanceof Parse.Unreadable<BigDecimal> bad) {
      return new Parse.Unreadable<>(bad.fault());
    }
    BigDecimal milligrams = ((Parse.Read<BigDecimal>) amount).value();
    if (milligrams.compareTo(BigDecimal.valueOf(MAX_MILLIGRAMS)) > 0) {
      return new Parse.Unreadable<>(Parse.Fault.TOO_LARGE);
    }
    return new Parse.Read<>(new Mass(text, Rounding.halfUpToWhole(milligrams)));
  }

  /**
   * The largest mass that can be entered: one tonne. Sums of all pieces of a trip stay far inside a
   * long.
   */
  public static final long MAX_MILLIGRAMS = 1_000_000_000L;

  /** A mass the service itself states, in grams with the milligrams behind the point. */
  public static Mass ofMilligrams(long milligrams) {
    return new Mass(MassText.plainGrams(milligrams) + " g", milligrams);
  }
}
