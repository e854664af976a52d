package dev.faircarry.provision;

/**
 * At what temperature water boils at a height.
 *
 * <p>Air pressure from the International Standard Atmosphere (ISO 2533:1975; ICAO Doc 7488),
 * heights taken as geopotential; boiling temperature from equation 31 of the IAPWS Industrial
 * Formulation 1997 (IAPWS R7-97(2012)). Weather moves the pressure by a few per cent, the boiling
 * point by under a degree.
 */
public final class BoilingPoint {
  private BoilingPoint() {}

  private static final double SEA_LEVEL_PASCAL = 101_325;
  private static final double SEA_LEVEL_KELVIN = 288.15;
  private static final double KELVIN_PER_METER = 0.0065;
  private static final double GRAVITY = 9.80665;
  private static final double GAS_CONSTANT_OF_AIR = 287.05287;
  private static final double TROPOPAUSE_METERS = 11_000;
  private static final double LOWEST_METERS = -2_000;
  private static final double CELSIUS_ZERO_KELVIN = 273.15;

  private static final double[] N = {
    0,
    0.11670521452767e4,
    -0.72421316703206e6,
    -0.17073846940092e2,
    0.12020824702470e5,
    -0.32325550322333e7,
    0.14915108613530e2,
    -0.48232657361591e4,
    0.40511340542057e6,
    -0.23855557567849,
    0.65017534844798e3
  };

  /** Boiling point of water at a height in metres, in °C. */
  public static double celsius(double heightMeters) {
    return saturationKelvin(pressurePascal(heightMeters) / 1e6) - CELSIUS_ZERO_KELVIN;
  }

  /**
   * Air pressure at a height in the standard atmosphere's lowest layer.
   *
   * @throws IllegalArgumentException outside -2,000 m to 11,000 m
   */
  public static double pressurePascal(double heightMeters) {
    if (!(heightMeters >= LOWEST_METERS && heightMeters <= TROPOPAUSE_METERS)) {
      throw new IllegalArgumentException(
          "the standard atmosphere's lowest layer runs from -2000 m to 11000 m");
    }
    double kelvin = SEA_LEVEL_KELVIN - KELVIN_PER_METER * heightMeters;
    double exponent = GRAVITY / (GAS_CONSTANT_OF_AIR * KELVIN_PER_METER);
    return SEA_LEVEL_PASCAL * StrictMath.pow(kelvin / SEA_LEVEL_KELVIN, exponent);
  }

  /**
   * Saturation temperature of water, IAPWS-IF97 equation 31, in kelvin; valid from 611.213 Pa to
   * 22.064 MPa.
   */
  public static double saturationKelvin(double megapascal) {
    double beta = StrictMath.pow(megapascal, 0.25);
    double e = beta * beta + N[3] * beta + N[6];
    double f = N[1] * beta * beta + N[4] * beta + N[7];
    double g = N[2] * beta * beta + N[5] * beta + N[8];
    double d = 2 * g / (-f - StrictMath.sqrt(f * f - 4 * e * g));
    double sum = N[10] + d;
    return (sum - StrictMath.sqrt(sum * sum - 4 * (N[9] + N[10] * d))) / 2;
  }
}
