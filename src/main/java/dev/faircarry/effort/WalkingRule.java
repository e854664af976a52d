package dev.faircarry.effort;

import dev.faircarry.trip.plan.RouteDay;
import java.util.List;
import java.util.Locale;

/** Rules for walking time without stops. */
public enum WalkingRule {
  /** Naismith (1892): 5 km/h, and an hour for each 600 m of climb. */
  NAISMITH(
      "Naismith (1892), Scottish Mountaineering Club Journal 2: 5 km/h and 1 h for each 600 m of climb"),
  /** Naismith with Langmuir's corrections for descent. */
  NAISMITH_LANGMUIR(
      "Naismith (1892) with Langmuir (1984), Mountaincraft and Leadership: 10 min less for each 300 m of descent"
          + " between 5 and 12 degrees, 10 min more for each 300 m that is steeper"),
  /** Tobler (1993): speed as a function of slope. */
  TOBLER(
      "Tobler (1993), NCGIA Technical Report 93-1: 6 exp(-3.5 |slope + 0.05|) km/h, three fifths of it off the path");

  /** Naismith's pace on the flat. */
  public static final double NAISMITH_KM_PER_HOUR = 5;

  private static final double METERS_CLIMBED_PER_HOUR = 600;
  private static final double LANGMUIR_HOURS_PER_METER = 10.0 / 60 / 300;
  private static final double GENTLE_FROM_DEGREES = 5;
  private static final double STEEP_FROM_DEGREES = 12;
  private static final double TOBLER_OFF_PATH = 0.6;

  private final String source;

  WalkingRule(String source) {
    this.source = source;
  }

  /** Where the rule comes from, in one line. */
  public String source() {
    return source;
  }

  /** The rule as it stands in documents: {@code naismith-langmuir}. */
  public String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Walking hours of a day, stops left out.
   *
   * <p>Langmuir's gain downhill never takes more than half of Naismith's time here, so that a walk
   * takes time whatever is stated.
   *
   * <p>A stated pace on the flat takes the place of Naismith's 5 km/h, and scales Tobler's speed so
   * that it is met on the flat.
   */
  public double hours(RouteDay day) {
    return switch (this) {
      case NAISMITH -> naismith(day);
      case NAISMITH_LANGMUIR -> Math.max(naismith(day) / 2, naismith(day) + langmuir(day));
      case TOBLER -> tobler(day);
    };
  }

  /**
   * Naismith's rule as an equivalent distance: one unit of climb takes the time of {@code ratio}
   * units on the flat.
   */
  public static double equivalentDistanceHours(
      double km, double climbKm, double ratio, double kmPerHour) {
    return (km + ratio * climbKm) / kmPerHour;
  }

  /** Tobler's speed on a path, in km/h, for a rise over run. */
  public static double toblerKmPerHour(double slope) {
    return 6 * StrictMath.exp(-3.5 * Math.abs(slope + 0.05));
  }

  /** Tobler's speed off the path. */
  public static double toblerOffPathKmPerHour(double slope) {
    return TOBLER_OFF_PATH * toblerKmPerHour(slope);
  }

  private static double naismith(RouteDay day) {
    double kmPerHour = day.kmPerHour().map(k -> k.doubleValue()).orElse(NAISMITH_KM_PER_HOUR);
    return day.distance().millimeters() / 1e6 / kmPerHour
        + day.climb().millimeters() / 1e3 / METERS_CLIMBED_PER_HOUR;
  }

  /**
   * The descent's steepness as stated; where nothing is stated, the day's mean grade decides for
   * all of it.
   */
  private static double langmuir(RouteDay day) {
    double gentle = day.gentleDescent().map(l -> l.millimeters() / 1e3).orElse(0.0);
    double steep = day.steepDescent().map(l -> l.millimeters() / 1e3).orElse(0.0);
    if (day.gentleDescent().isEmpty() && day.steepDescent().isEmpty()) {
      List<Leg> legs = Leg.of(day);
      double degrees = legs.get(legs.size() - 1).degrees();
      double descent = day.descent().millimeters() / 1e3;
      gentle = degrees >= GENTLE_FROM_DEGREES && degrees <= STEEP_FROM_DEGREES ? descent : 0;
      steep = degrees > STEEP_FROM_DEGREES ? descent : 0;
    }
    return (steep - gentle) * LANGMUIR_HOURS_PER_METER;
  }

  private static double tobler(RouteDay day) {
    boolean onPath =
        switch (day.surface()) {
          case HARD_ROAD, DIRT_ROAD -> true;
          case LIGHT_BRUSH, HEAVY_BRUSH, BOG, LOOSE_SAND -> false;
        };
    double pace = day.kmPerHour().map(k -> k.doubleValue() / toblerKmPerHour(0)).orElse(1.0);
    double hours = 0;
    for (Leg leg : Leg.of(day)) {
      double kmPerHour =
          onPath ? toblerKmPerHour(leg.grade()) : toblerOffPathKmPerHour(leg.grade());
      hours += leg.meters() / 1000 / (kmPerHour * pace);
    }
    return hours;
  }
}
