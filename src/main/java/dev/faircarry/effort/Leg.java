package dev.faircarry.effort;

import dev.faircarry.trip.plan.RouteDay;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a day walked at one grade.
 *
 * @param meters seen from above
 * @param grade rise over run; negative downhill
 */
public record Leg(double meters, double grade) {

  /**
   * Takes a day apart. Only the sums are known, so the day is taken to climb and to drop at one and
   * the same grade, (climb + descent) / distance, each over its share of the distance; a day
   * without either is one flat leg. A day that has level stretches is steeper elsewhere, so its
   * cost is a little more than this says.
   */
  public static List<Leg> of(RouteDay day) {
    double meters = day.distance().millimeters() / 1000.0;
    double climb = day.climb().millimeters() / 1000.0;
    double descent = day.descent().millimeters() / 1000.0;
    if (climb + descent <= 0) {
      return List.of(new Leg(meters, 0));
    }
    double grade = (climb + descent) / meters;
    List<Leg> legs = new ArrayList<>();
    if (climb > 0) {
      legs.add(new Leg(meters * climb / (climb + descent), grade));
    }
    if (descent > 0) {
      legs.add(new Leg(meters * descent / (climb + descent), -grade));
    }
    return List.copyOf(legs);
  }

  /** The slope's angle in degrees, without its sign. */
  public double degrees() {
    return StrictMath.toDegrees(StrictMath.atan(Math.abs(grade)));
  }
}
