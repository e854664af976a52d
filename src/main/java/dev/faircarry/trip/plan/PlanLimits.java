package dev.faircarry.trip.plan;

/**
 * Every limit of a plan, in one place; openapi/ states the same numbers and a test compares them.
 */
public final class PlanLimits {
  private PlanLimits() {}

  public static final int MAX_KCAL_PER_PERSON_DAY = 20_000;

  /** Fat has nine; nothing edible has more. */
  public static final int MAX_KCAL_PER_GRAM = 9;

  public static final int MEALS = 50;
  public static final int UNITS_PER_PERSON_DAY = 20;
  public static final int CONTAINERS = 8;
  public static final int STRETCHES = 60;
  public static final int BOTTLES_PER_PERSON = 20;
  public static final int NEEDS = 50;
  public static final int OFFERS = 200;
  public static final int AVAILABLE = 100;
  public static final int NAMES_PER_OFFER = 50;
  public static final int NEED_COUNT = 1000;

  /** All offers together, each as often as there are: 200,000.00. */
  public static final long OFFERS_PRICE_HUNDREDTHS = 20_000_000L;

  /** Ids of meals and containers, so that what is made from them has an id of its own. */
  public static final int PROVISION_ID_LENGTH = 30;

  /** Heights where people camp, and a little more: 500 m below the sea to 9,000 m. */
  public static final long MIN_HEIGHT_MILLIMETERS = -500_000L;

  public static final long MAX_HEIGHT_MILLIMETERS = 9_000_000L;

  /** A day on foot: 200 km, and 20 km of climbing. */
  public static final long DAY_DISTANCE_MILLIMETERS = 200_000_000L;

  public static final long DAY_CLIMB_MILLIMETERS = 20_000_000L;

  /** Pace on the flat, in metres per hour: 0.5 to 10 km/h. */
  public static final int MIN_METERS_PER_HOUR = 500;

  public static final int MAX_METERS_PER_HOUR = 10_000;
  public static final int MINUTES_PER_DAY = 1440;

  /** A bottle or a cartridge holds at least this: 100 mL, 1 g. */
  public static final long MIN_BOTTLE_MILLILITERS = 100;

  public static final long MIN_CONTAINER_FUEL_MILLIGRAMS = 1_000;

  /** Water as people meet it outdoors: 0 to 60 °C. */
  public static final long MAX_WATER_MILLICELSIUS = 60_000L;

  /** Snow: down to -60 °C; air: -60 to 60 °C. */
  public static final long MIN_AIR_MILLICELSIUS = -60_000L;

  public static final long MAX_AIR_MILLICELSIUS = 60_000L;

  /** A stove gives the water at least a hundredth of its heat and never more than all. */
  public static final long MIN_EFFICIENCY_MILLIONTHS = 10_000L;

  public static final long MAX_EFFICIENCY_MILLIONTHS = 1_000_000L;
  public static final int MAX_MEGAJOULES_PER_KILOGRAM = 142;
  public static final int MAX_SIMMER_WATTS = 5_000;

  /** Spare fuel: at most as much again. */
  public static final long MAX_SPARE_MILLIONTHS = 1_000_000L;

  /** Drunk on the way, boiled in a day, needed at a camp, per person: at most 20 L. */
  public static final long WATER_PER_PERSON_MILLILITERS = 20_000L;
}
