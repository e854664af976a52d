package dev.faircarry.unit;

import java.math.BigDecimal;

/**
 * A fraction of body mass, such as 0.20, exact to a millionth.
 *
 * @param entered the number as it was given, with its decimals
 */
public record Fraction(BigDecimal entered) {
  private static final int DECIMALS = 6;

  public Fraction {
    if (entered.signum() < 0 || entered.stripTrailingZeros().scale() > DECIMALS) {
      throw new IllegalArgumentException("a fraction is not negative and has at most six decimals");
    }
  }

  /** Takes a number, or says why it is no fraction here. */
  public static Parse<Fraction> of(BigDecimal number) {
    if (number.signum() < 0) {
      return new Parse.Unreadable<>(Parse.Fault.NEGATIVE);
    }
    if ((long) number.precision() - number.scale() > DECIMALS) {
      return new Parse.Unreadable<>(Parse.Fault.TOO_LARGE);
    }
    if (number.scale() > 2 * MAX_SCALE || number.stripTrailingZeros().scale() > DECIMALS) {
      return new Parse.Unreadable<>(Parse.Fault.TOO_FINE);
    }
    return new Parse.Read<>(new Fraction(number));
  }

  private static final int MAX_SCALE = 100;

  /** For constants in code: {@code Fraction.of("0.20")}. */
  public static Fraction of(String number) {
    return new Fraction(new BigDecimal(number));
  }

  /** The fraction in whole millionths, exact. */
  public long millionths() {
    return entered.movePointRight(DECIMALS).longValueExact();
  }

  /** This fraction of a mass, in whole nanograms, exact: millionths x milligrams. */
  public long ofMassInNanograms(Mass mass) {
    return Math.multiplyExact(millionths(), mass.milligrams());
  }
}
