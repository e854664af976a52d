package dev.faircarry.provision;

import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What is taken when a plan says nothing, each with its source. Everything here can be stated in
 * the plan instead.
 */
final class Defaults {
  private Defaults() {}

  static final int KCAL_PER_PERSON_DAY = 3000;
  static final String KCAL_SOURCE =
      "common practice: 2,500 to 4,500 kcal for a day on foot with a pack";

  static final BigDecimal KCAL_PER_GRAM = new BigDecimal("4.4");
  static final String KCAL_PER_GRAM_SOURCE =
      "common practice: mixed dry food, about 125 kcal to the ounce";

  static final long PACKAGING_MILLIGRAMS = 40_000;
  static final String PACKAGING_SOURCE = "common practice: repacked dry food";

  static final BigDecimal BOILED_LITERS = new BigDecimal("1.5");
  static final String BOILED_SOURCE =
      "common practice: two hot drinks, a breakfast and a dinner with boiling water";

  static final BigDecimal WATER_CELSIUS = new BigDecimal("10");
  static final String WATER_CELSIUS_SOURCE = "common practice: a cool stream";

  static final BigDecimal HEIGHT_METERS = BigDecimal.ZERO;
  static final String HEIGHT_SOURCE =
      "no camp height is stated; at the sea water boils hottest, which asks for most fuel";

  static final BigDecimal EFFICIENCY = new BigDecimal("0.5");
  static final String EFFICIENCY_SOURCE =
      "common practice: 0.3 in wind to 0.7 with a windscreen and a heat exchanger";

  static final BigDecimal SPARE = new BigDecimal("0.15");
  static final String SPARE_SOURCE = "common practice: for wind, cold and a spilt pot";

  static final int SIMMER_WATTS = 300;
  static final String SIMMER_SOURCE =
      "common practice: a lidded pot of two litres loses about as much as it simmers";

  static final String WATER_HABIT_SOURCE =
      "common practice: 0.4 L an hour on the way below 15 °C, 0.5 L to 25 °C, 0.75 L to 30 °C, 1 L above";
  static final BigDecimal AIR_CELSIUS = new BigDecimal("20");
  static final String AIR_SOURCE = "no temperature is stated";

  static final long CAMP_MILLILITERS = 3000;
  static final String CAMP_SOURCE =
      "common practice: dinner, breakfast and drinking for a night without water";

  static final long BOTTLE_MILLILITERS = 1000;
  static final String BOTTLE_SOURCE = "common practice: bottles of a litre";
  static final int BOTTLES = 2;
  static final String BOTTLES_SOURCE = "common practice: two bottles each";
  static final long BOTTLE_MILLIGRAMS = 40_000;
  static final String BOTTLE_MASS_SOURCE = "common practice: a light bottle";

  /** Lower heating value in MJ/kg. */
  static BigDecimal megajoulesPerKilogram(Fuel.Kind kind) {
    return switch (kind) {
      case GAS, BUTANE -> new BigDecimal("45.72");
      case PROPANE -> new BigDecimal("46.36");
      case ETHANOL -> new BigDecimal("26.80");
      case METHANOL -> new BigDecimal("19.92");
      case GASOLINE -> new BigDecimal("44.43");
    };
  }

  static String heatingValueSource(Fuel.Kind kind) {
    String table =
        "lower heating value: Moran and Shapiro, Fundamentals of Engineering Thermodynamics, table A-25";
    return switch (kind) {
      case GAS -> table + ", butane: the lower of the two gases in a cartridge";
      case BUTANE, PROPANE -> table;
      case ETHANOL, METHANOL -> table + ", liquid";
      case GASOLINE -> table + ", octane, liquid, standing for it (value from memory)";
    };
  }

  /** Cartridges and bottles as they are commonly sold. */
  static List<Fuel.Container> containers(Fuel.Kind kind) {
    return switch (kind) {
      case GAS, PROPANE, BUTANE ->
          List.of(
              container("gas-small", "Gas cartridge, small", 110, 100, false),
              container("gas-medium", "Gas cartridge, medium", 230, 150, false),
              container("gas-large", "Gas cartridge, large", 450, 215, false));
      case ETHANOL, METHANOL ->
          List.of(
              container("fuel-small", "Fuel bottle, small", 195, 20, true),
              container("fuel-large", "Fuel bottle, large", 390, 30, true));
      case GASOLINE ->
          List.of(
              container("fuel-small", "Fuel bottle, small", 230, 90, true),
              container("fuel-large", "Fuel bottle, large", 430, 125, true));
    };
  }

  static final String CONTAINERS_SOURCE = "common practice: sizes in which it is commonly sold";

  private static Fuel.Container container(
      String id, String name, int fuelGrams, int emptyGrams, boolean refillable) {
    return new Fuel.Container(
        id, name, grams(fuelGrams), grams(emptyGrams), Optional.<Volume>empty(), refillable);
  }

  private static Mass grams(int grams) {
    return Mass.ofMilligrams(grams * 1000L);
  }
}
