package dev.faircarry.unit;

import dev.faircarry.unit.Parse.Fault;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads "1 lb 12 oz" and its like: numbers, each with a unit, from the larger unit to the smaller.
 */
final class QuantityText {
  static final int MAX_LENGTH = 40;

  private static final Pattern TERM =
      Pattern.compile(
          "\\s*(-?[0-9][0-9.,]*|-?\\.[0-9]+)\\s*(\\p{L}[\\p{L} ³]*?)?(?=\\s*(?:-?[.0-9]|$))");
  private static final Pattern PLAIN_NUMBER = Pattern.compile("[0-9]+(\\.[0-9]*)?|\\.[0-9]+");
  private static final int MAX_DIGITS = 15;

  private QuantityText() {}

  /**
   * The amount in the smallest unit of the table, exact.
   *
   * @param factors unit name in lower case to its exact worth in the kept unit
   */
  static Parse<BigDecimal> read(String text, Map<String, BigDecimal> factors) {
    String rest = text.strip();
    if (rest.isEmpty()) {
      return new Parse.Unreadable<>(Fault.EMPTY);
    }
    if (rest.length() > MAX_LENGTH) {
      return new Parse.Unreadable<>(Fault.TOO_LONG);
    }
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal lastFactor = null;
    boolean lastWhole = true;
    Matcher term = TERM.matcher(rest);
    int at = 0;
    while (at < rest.length()) {
      term.region(at, rest.length());
      if (!term.lookingAt()) {
        return new Parse.Unreadable<>(Fault.NOT_A_NUMBER);
      }
      at = term.end();
      String digits = term.group(1);
      if (digits.startsWith("-")) {
        return new Parse.Unreadable<>(Fault.NEGATIVE);
      }
      if (!PLAIN_NUMBER.matcher(digits).matches()) {
        return new Parse.Unreadable<>(Fault.NOT_A_NUMBER);
      }
      if (digits.length() > MAX_DIGITS) {
        return new Parse.Unreadable<>(Fault.TOO_LARGE);
      }
      String unit = term.group(2);
      if (unit == null) {
        return new Parse.Unreadable<>(Fault.NO_UNIT);
      }
      BigDecimal factor =
          factors.get(unit.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT));
      if (factor == null) {
        return new Parse.Unreadable<>(Fault.UNKNOWN_UNIT);
      }
      if (lastFactor != null && (!lastWhole || factor.compareTo(lastFactor) >= 0)) {
        return new Parse.Unreadable<>(Fault.OUT_OF_ORDER);
      }
      BigDecimal number = new BigDecimal(digits.endsWith(".") ? digits + "0" : digits);
      lastFactor = factor;
      lastWhole = number.stripTrailingZeros().scale() <= 0;
      sum = sum.add(number.multiply(factor));
    }
    return new Parse.Read<>(sum);
  }
}
