package dev.faircarry.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Every rounding the project does, by name. */
public final class Rounding {
  private Rounding() {}

  /** Nearest whole number, a half going up. For non-negative quantities as a person enters them. */
  public static long halfUpToWhole(BigDecimal quantity) {
    return quantity.setScale(0, RoundingMode.HALF_UP).longValueExact();
  }

  /** The largest whole number not above numerator / denominator; the denominator is positive. */
  public static long down(long numerator, long denominator) {
    return Math.floorDiv(numerator, denominator);
  }

  /** The smallest whole number not below numerator / denominator; the denominator is positive. */
  public static long up(long numerator, long denominator) {
    return -Math.floorDiv(-numerator, denominator);
  }
}
