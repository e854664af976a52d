package dev.faircarry.unit;

import dev.faircarry.unit.Parse.Fault;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Reads "1 lb 12 oz" and its like: numbers, each with a unit, from the larger unit to the smaller.
 */
final class QuantityText {
  static final int MAX_LENGTH = 40;

  private static final Pattern PLAIN_NUMBER = Pattern.compile("[0-9]+(\\.[0-9]*)?|\\.[0-9]+");

  /** Spaces that typesetters put between a number and its unit and that strip() leaves alone. */
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2007\\u202F]+");

  private final String text;
  private int at;

  private QuantityText(String text) {
    this.text = text;
  }

  /**
   * The amount in the smallest unit of the table, exact.
   *
   * @param factors unit name in lower case to its exact worth in the kept unit
   */
  static Parse<BigDecimal> read(String text, Map<String, BigDecimal> factors) {
    if (text.length() > MAX_LENGTH) {
      return new Parse.Unreadable<>(Fault.TOO_LONG);
    }
    String plain = SPACES.matcher(text).replaceAll(" ").strip();
    if (plain.isEmpty()) {
      return new Parse.Unreadable<>(Fault.EMPTY);
    }
    return new QuantityText(plain).terms(factors);
  }

  private Parse<BigDecimal> terms(Map<String, BigDecimal> factors) {
    BigDecimal sum = BigDecimal.ZERO;
    BigDecimal lastFactor = null;
    boolean lastWhole = true;
    while (at < text.length()) {
      if (isMinus(text.charAt(at))) {
        return new Parse.Unreadable<>(Fault.NEGATIVE);
      }
      String digits = digits();
      if (!PLAIN_NUMBER.matcher(digits).matches() || exponentFollows()) {
        return new Parse.Unreadable<>(Fault.NOT_A_NUMBER);
      }
      String unit = unit();
      if (unit.isEmpty()) {
        return new Parse.Unreadable<>(Fault.NO_UNIT);
      }
      BigDecimal factor = isMega(unit) ? null : factors.get(unit.toLowerCase(Locale.ROOT));
      if (factor == null) {
        return new Parse.Unreadable<>(Fault.UNKNOWN_UNIT);
      }
      if (lastFactor != null && (!lastWhole || factor.compareTo(lastFactor) >= 0)) {
        return new Parse.Unreadable<>(Fault.OUT_OF_ORDER);
      }
      BigDecimal number = new BigDecimal(digits);
      lastFactor = factor;
      lastWhole = number.stripTrailingZeros().scale() <= 0;
      sum = sum.add(number.multiply(factor));
    }
    return new Parse.Read<>(sum);
  }

  /** Everything that could be meant as one number, right or not: "1,05" must not become "1". */
  private String digits() {
    int start = at;
    while (at < text.length()
        && (isDigit(at) || text.charAt(at) == '.' || text.charAt(at) == ',')) {
      at++;
    }
    return text.substring(start, at);
  }

  private boolean exponentFollows() {
    if (at >= text.length() || Character.toLowerCase(text.charAt(at)) != 'e') {
      return false;
    }
    char next = at + 1 < text.length() ? text.charAt(at + 1) : ' ';
    return isDigit(at + 1) || next == '+' || isMinus(next);
  }

  /** Up to the next number, whatever is written there. */
  private String unit() {
    int start = at;
    while (at < text.length() && !isDigit(at) && !isMinus(text.charAt(at)) && !pointBeforeDigit()) {
      at++;
    }
    return text.substring(start, at).strip();
  }

  private boolean pointBeforeDigit() {
    return text.charAt(at) == '.' && isDigit(at + 1);
  }

  /** ASCII only: other digits read from right to left or look like letters. */
  private boolean isDigit(int index) {
    return index < text.length() && text.charAt(index) >= '0' && text.charAt(index) <= '9';
  }

  private static boolean isMinus(char c) {
    return c == '-' || c == '\u2212';
  }

  /**
   * Units are read without regard to case, but Mg, ML and Mm are a thousand million of mg, mL, mm.
   */
  private static boolean isMega(String unit) {
    return unit.length() == 2 && unit.charAt(0) == 'M' && "gGlLmM".indexOf(unit.charAt(1)) >= 0;
  }
}
