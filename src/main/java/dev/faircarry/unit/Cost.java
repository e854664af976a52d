package dev.faircarry.unit;

import java.util.regex.Pattern;

/**
 * An amount of money in the group's own currency, kept as entered, with at most two decimals.
 *
 * @param entered the text as it came, for example {@code "180.00"}
 * @param hundredths its worth in hundredths of the currency unit
 */
public record Cost(String entered, long hundredths) {
  private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,9}(\\.[0-9]{1,2})?");

  /** Reads a plain amount such as {@code "180"} or {@code "180.50"}. */
  public static Parse<Cost> parse(String text) {
    if (text.length() > QuantityText.MAX_LENGTH) {
      return new Parse.Unreadable<>(Parse.Fault.TOO_LONG);
    }
    String amount = text.strip();
    if (amount.isEmpty()) {
      return new Parse.Unreadable<>(Parse.Fault.EMPTY);
    }
    if (amount.startsWith("-")) {
      return new Parse.Unreadable<>(Parse.Fault.NEGATIVE);
    }
    if (!AMOUNT.matcher(amount).matches()) {
      return new Parse.Unreadable<>(Parse.Fault.NOT_A_NUMBER);
    }
    return new Parse.Read<>(
        new Cost(text, new java.math.BigDecimal(amount).movePointRight(2).longValueExact()));
  }
}
