package dev.faircarry.unit;

import java.math.BigDecimal;
import java.util.Map;

/**
 * A volume as somebody entered it, kept word for word, and its worth in whole millilitres.
 *
 * <p>Conversion factors are exact: NIST Special Publication 811 (2008), appendix B: 1 in = 2.54 cm,
 * 1 US gallon = 231 in³, 1 liquid quart = 1/4 gallon, 1 US fluid ounce = 1/128 gallon.
 *
 * @param entered the text as it came, for example {@code "45 L"}
 * @param milliliters its worth, rounded once, half up
 */
public record Volume(String entered, long milliliters) {
  private static final BigDecimal CUBIC_INCH = new BigDecimal("16.387064");
  private static final Map<String, BigDecimal> MILLILITERS_IN =
      Map.of(
          "ml", BigDecimal.ONE,
          "l", new BigDecimal("1000"),
          "fl oz", new BigDecimal("29.5735295625"),
          "qt", new BigDecimal("946.352946"),
          "gal", new BigDecimal("3785.411784"),
          "cu in", CUBIC_INCH,
          "in³", CUBIC_INCH);

  /** The largest volume that can be entered: ten cubic metres. */
  public static final long MAX_MILLILITERS = 10_000_000L;

  /** Reads a volume with its unit: mL, L, fl oz, qt, gal (US liquid), cu in. */
  public static Parse<Volume> parse(String text) {
    Parse<BigDecimal> amount = QuantityText.read(text, MILLILITERS_IN);
    if (amount instanceof Parse.Unreadable<BigDecimal> bad) {
      return new Parse.Unreadable<>(bad.fault());
    }
    BigDecimal milliliters = ((Parse.Read<BigDecimal>) amount).value();
    if (milliliters.compareTo(BigDecimal.valueOf(MAX_MILLILITERS)) > 0) {
      return new Parse.Unreadable<>(Parse.Fault.TOO_LARGE);
    }
    return new Parse.Read<>(new Volume(text, Rounding.halfUpToWhole(milliliters)));
  }
}
