package dev.faircarry.effort;

import java.util.Locale;

/** Published estimates of what walking with a load costs. */
public enum CostModel {
  /**
   * Load Carriage Decision Aid: the backpacking equation of 2022 for load and terrain with the
   * grade term of the graded walking equation of 2019.
   */
  LCDA(
      "LCDA: graded walking, Looney et al. (2019), Med. Sci. Sports Exerc. 51(9):1954-1960, with the load terms of Looney"
          + " et al. (2022), Med. Sci. Sports Exerc. 54(4):646-654 (its coefficients as seen in a public implementation)",
      "0.45 to 1.96 m/s, grades from -40 to 45 %, loads up to 66 % of body mass; healthy adults of military age",
      0.45,
      1.96,
      -40,
      45,
      0.66,
      Double.POSITIVE_INFINITY),

  /** Pandolf 1977, downhill with the correction of Santee. */
  PANDOLF_SANTEE(
      "Pandolf, Givoni, Goldman (1977), J. Appl. Physiol. 43(4):577-581, downhill with the correction of Santee et al.,"
          + " USARIEM Technical Report T04-09",
      "up to 2.4 m/s, grades from -12 to 25 %, loads up to 70 kg uphill and on the flat, 27.2 kg downhill (the uphill range"
          + " is from memory); young soldiers",
      0,
      2.4,
      -12,
      25,
      Double.POSITIVE_INFINITY,
      70);

  /**
   * Resting part of the LCDA backpacking equation; with 0.19 it makes the 1.44 W/kg of standing of
   * the 2019 equation.
   */
  public static final double LCDA_REST_WATTS_PER_KILOGRAM = 1.25;

  private static final double SANTEE_MAX_LOAD_KILOGRAMS = 27.2;

  private final String source;
  private final String range;
  private final double minMetersPerSecond;
  private final double maxMetersPerSecond;
  private final double minGradePercent;
  private final double maxGradePercent;
  private final double maxLoadOverBody;
  private final double maxLoadKilograms;

  CostModel(
      String source,
      String range,
      double minMetersPerSecond,
      double maxMetersPerSecond,
      double minGradePercent,
      double maxGradePercent,
      double maxLoadOverBody,
      double maxLoadKilograms) {
    this.source = source;
    this.range = range;
    this.minMetersPerSecond = minMetersPerSecond;
    this.maxMetersPerSecond = maxMetersPerSecond;
    this.minGradePercent = minGradePercent;
    this.maxGradePercent = maxGradePercent;
    this.maxLoadOverBody = maxLoadOverBody;
    this.maxLoadKilograms = maxLoadKilograms;
  }

  /** Where the estimate comes from, in one line. */
  public String source() {
    return source;
  }

  /** Where it was measured, and so where it is used, in one line. */
  public String range() {
    return range;
  }

  /** The model as it stands in documents: {@code pandolf-santee}. */
  public String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Metabolic rate of walking, in watts for the whole walker, or why this model says nothing about
   * it.
   *
   * @param gradePercent negative downhill
   * @param terrain factor of the surface, 1 for a hard road
   */
  public Rate rate(
      double bodyKilograms,
      double loadKilograms,
      double metersPerSecond,
      double gradePercent,
      double terrain) {
    if (metersPerSecond < minMetersPerSecond || metersPerSecond > maxMetersPerSecond) {
      return new Rate.Refused(Rate.Reason.SPEED);
    }
    if (gradePercent < minGradePercent || gradePercent > maxGradePercent) {
      return new Rate.Refused(Rate.Reason.GRADE);
    }
    double maxKilograms =
        this == PANDOLF_SANTEE && gradePercent < 0 ? SANTEE_MAX_LOAD_KILOGRAMS : maxLoadKilograms;
    if (loadKilograms > maxLoadOverBody * bodyKilograms || loadKilograms > maxKilograms) {
      return new Rate.Refused(Rate.Reason.LOAD);
    }
    return new Rate.Watts(
        this == LCDA
            ? bodyKilograms
                * lcdaBackpacking(
                    LCDA_REST_WATTS_PER_KILOGRAM,
                    loadKilograms / bodyKilograms,
                    metersPerSecond,
                    gradePercent,
                    terrain)
            : pandolfSantee(bodyKilograms, loadKilograms, metersPerSecond, gradePercent, terrain));
  }

  /** LCDA graded walking equation (2019), without a load, in W per kg of body mass. */
  public static double lcdaGradedWalking(double metersPerSecond, double gradePercent) {
    return 1.44
        + 1.94 * StrictMath.pow(metersPerSecond, 0.43)
        + 0.24 * StrictMath.pow(metersPerSecond, 4)
        + lcdaGrade(metersPerSecond, gradePercent);
  }

  /** LCDA backpacking equation (2022) with the grade term of 2019, in W per kg of body mass. */
  public static double lcdaBackpacking(
      double restWattsPerKilogram,
      double loadOverBody,
      double metersPerSecond,
      double gradePercent,
      double terrain) {
    double walking =
        1.78 * StrictMath.pow(metersPerSecond, 0.58)
            + 0.27 * StrictMath.pow(metersPerSecond, 4)
            + lcdaGrade(metersPerSecond, gradePercent);
    return restWattsPerKilogram
        + (0.19 + terrain * walking) * (1 + 1.96 * StrictMath.pow(loadOverBody, 1.36));
  }

  /** Pandolf's equation, less Santee's correction downhill, in watts. */
  public static double pandolfSantee(
      double bodyKilograms,
      double loadKilograms,
      double metersPerSecond,
      double gradePercent,
      double terrain) {
    double all = bodyKilograms + loadKilograms;
    double ratio = loadKilograms / bodyKilograms;
    double squared = metersPerSecond * metersPerSecond;
    double pandolf =
        1.5 * bodyKilograms
            + 2.0 * all * ratio * ratio
            + terrain * all * (1.5 * squared + 0.35 * metersPerSecond * gradePercent);
    if (gradePercent >= 0) {
      return pandolf;
    }
    double correction =
        terrain
            * (gradePercent * all * metersPerSecond / 3.5
                - all * (gradePercent + 6) * (gradePercent + 6) / bodyKilograms
                + (25 - squared));
    return pandolf - correction;
  }

  private static double lcdaGrade(double metersPerSecond, double gradePercent) {
    double bend = 1 - StrictMath.pow(1.1, gradePercent + 32);
    return 0.34 * metersPerSecond * gradePercent * (1 - StrictMath.pow(1.05, bend));
  }
}
