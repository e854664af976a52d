package dev.faircarry.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A temperature as somebody entered it, kept word for word, and its worth in thousandths of a
 * degree Celsius.
 *
 * <p>NIST Special Publication 811 (2008), appendix B.8: t/°C = (t/°F - 32) / 1.8.
 *
 * @param entered the text as it came, for example {@code "10 °C"} or {@code "14 F"}
 * @param millicelsius its worth, rounded once, half away from nothing
 */
public record Temperature(String entered, long millicelsius) {
  private static final Pattern TEXT =
      Pattern.compile("([-+\\u2212]?)([0-9]{1,4}(?:\\.[0-9]{1,3})?)\\s*(?:°\\s*)?([cCfF])");
  private static final long ABSOLUTE_ZERO_MILLICELSIUS = -273_150L;

  /**
   * Reads a temperature in degrees Celsius or Fahrenheit, the sign of the degree may be left out.
   */
  public static Parse<Temperature> parse(String text) {
    String stripped = text.strip();
    if (stripped.isEmpty()) {
      return new Parse.Unreadable<>(Parse.Fault.EMPTY);
    }
    if (stripped.length() > QuantityText.MAX_LENGTH) {
      return new Parse.Unreadable<>(Parse.Fault.TOO_LONG);
    }
    Matcher matcher = TEXT.matcher(stripped);
    if (!matcher.matches()) {
      boolean bare = stripped.matches("[-+\\u2212]?[0-9.]+");
      return new Parse.Unreadable<>(bare ? Parse.Fault.NO_UNIT : Parse.Fault.NOT_A_NUMBER);
    }
    BigDecimal size = new BigDecimal(matcher.group(2));
    boolean negative = !matcher.group(1).isEmpty() && !matcher.group(1).equals("+");
    BigDecimal degrees = negative ? size.negate() : size;
    BigDecimal thousandths = degrees.movePointRight(3);
    if (matcher.group(3).toLowerCase(Locale.ROOT).equals("f")) {
      thousandths =
          thousandths
              .subtract(new BigDecimal("32000"))
              .divide(new BigDecimal("1.8"), 0, RoundingMode.HALF_UP);
    }
    long millicelsius = Rounding.halfUpToWhole(thousandths);
    return millicelsius < ABSOLUTE_ZERO_MILLICELSIUS
        ? new Parse.Unreadable<>(Parse.Fault.NEGATIVE)
        : new Parse.Read<>(new Temperature(text, millicelsius));
  }
}
