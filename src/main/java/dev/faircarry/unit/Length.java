package dev.faircarry.unit;

import java.math.BigDecimal;
import java.util.Map;

/**
 * A distance or a height as somebody entered it, kept word for word, and its worth in whole
 * millimetres.
 *
 * <p>Conversion factors are exact by definition: NIST Special Publication 811 (2008), appendix B: 1
 * ft = 0.3048 m, 1 mi = 1609.344 m.
 *
 * @param entered the text as it came, for example {@code "12.5 km"} or {@code "-30 m"}
 * @param millimeters its worth, rounded once, half up; negative for heights below the sea
 */
public record Length(String entered, long millimeters) {
  private static final Map<String, BigDecimal> MILLIMETERS_IN =
      Map.of(
          "mm", BigDecimal.ONE,
          "cm", new BigDecimal("10"),
          "m", new BigDecimal("1000"),
          "km", new BigDecimal("1000000"),
          "ft", new BigDecimal("304.8"),
          "mi", new BigDecimal("1609344"));

  /** The largest length that can be entered: 100,000 km. */
  public static final long MAX_MILLIMETERS = 100_000_000_000L;

  /** Reads a length with its unit: m, km, ft, mi, cm, mm. */
  public static Parse<Length> parse(String text) {
    Parse<BigDecimal> amount = QuantityText.read(text, MILLIMETERS_IN);
    if (amount instanceof Parse.Unreadable<BigDecimal> bad) {
      return new Parse.Unreadable<>(bad.fault());
    }
    BigDecimal millimeters = ((Parse.Read<BigDecimal>) amount).value();
    if (millimeters.compareTo(BigDecimal.valueOf(MAX_MILLIMETERS)) > 0) {
      return new Parse.Unreadable<>(Parse.Fault.TOO_LARGE);
    }
    return new Parse.Read<>(new Length(text, Rounding.halfUpToWhole(millimeters)));
  }

  /** Reads a height, which may lie below the sea: {@code "-30 m"}. */
  public static Parse<Length> parseHeight(String text) {
    String height = text.strip();
    if (!height.startsWith("-")) {
      return parse(text);
    }
    Parse<Length> size = parse(height.substring(1));
    return size instanceof Parse.Read<Length> read
        ? new Parse.Read<>(new Length(text, -read.value().millimeters()))
        : size;
  }
}
