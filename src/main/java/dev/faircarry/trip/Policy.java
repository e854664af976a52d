package dev.faircarry.trip;

import dev.faircarry.unit.Fraction;

/**
 * What the group calls fair.
 *
 * @param targetFraction target load as a fraction of body mass, for hikers who state none of their
 *     own
 * @param capFraction load that must not be passed, as a fraction of body mass, likewise
 * @param basis what of a load is made fair
 * @param grainThousandths the step in which target ratios are compared, in thousandths of the
 *     target load
 * @param minorsMayCarryFlameAndFuel true lifts the rule that keeps flame and fuel from minors
 */
public record Policy(
    Fraction targetFraction,
    Fraction capFraction,
    Basis basis,
    int grainThousandths,
    boolean minorsMayCarryFlameAndFuel) {

  /** Fractions and grain of a trip that states none. */
  public static final Policy DEFAULT =
      new Policy(Fraction.of("0.20"), Fraction.of("0.30"), Basis.LOAD, 5, false);

  /** Target fraction of a minor who states none (common practice: less than an adult's). */
  public static final Fraction MINOR_TARGET_FRACTION = Fraction.of("0.15");

  /** Cap fraction of a minor who states none (common practice: less than an adult's). */
  public static final Fraction MINOR_CAP_FRACTION = Fraction.of("0.20");

  /** What is made fair. */
  public enum Basis {
    /** The whole load: pack, packed kit and pieces, luxuries left out. */
    LOAD,
    /** Only the shared pieces, in proportion to target loads. */
    SHARED
  }
}
