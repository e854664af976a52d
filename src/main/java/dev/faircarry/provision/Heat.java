package dev.faircarry.provision;

/** Heat that water and snow take, and the fuel that gives it. */
public final class Heat {
  private Heat() {}

  /** Specific heat of water in kJ/(kg K); engineering handbooks. */
  public static final double WATER_KILOJOULES_PER_KILOGRAM_KELVIN = 4.186;

  /**
   * Specific heat of ice near its melting point in kJ/(kg K); CRC Handbook of Chemistry and
   * Physics, from memory.
   */
  public static final double ICE_KILOJOULES_PER_KILOGRAM_KELVIN = 2.09;

  /** Heat of fusion of ice in kJ/kg; CRC Handbook of Chemistry and Physics, from memory. */
  public static final double FUSION_KILOJOULES_PER_KILOGRAM = 333.55;

  /** A litre of water is taken as a kilogram. */
  public static final double KILOGRAMS_PER_LITER = 1.0;

  /**
   * Heat for so many litres of water from one temperature to another, in kJ; none when it is warm
   * already.
   */
  public static double heatWater(double liters, double fromCelsius, double toCelsius) {
    return liters
        * KILOGRAMS_PER_LITER
        * WATER_KILOJOULES_PER_KILOGRAM_KELVIN
        * Math.max(0, toCelsius - fromCelsius);
  }

  /** Heat to make so many litres of water from snow and bring them to a temperature, in kJ. */
  public static double meltSnow(double liters, double snowCelsius, double toCelsius) {
    double kilograms = liters * KILOGRAMS_PER_LITER;
    return kilograms
            * (ICE_KILOJOULES_PER_KILOGRAM_KELVIN * Math.max(0, -snowCelsius)
                + FUSION_KILOJOULES_PER_KILOGRAM)
        + heatWater(liters, 0, toCelsius);
  }

  /** Fuel for so much heat in the water, in grams. */
  public static double fuelGrams(
      double kilojoules, double megajoulesPerKilogram, double efficiency) {
    return kilojoules / (megajoulesPerKilogram * efficiency);
  }
}
