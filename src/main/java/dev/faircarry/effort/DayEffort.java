package dev.faircarry.effort;

import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.unit.Length;
import dev.faircarry.unit.Rounding;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What a day costs a walker.
 *
 * @param minutes walking time without stops, to the nearest minute
 * @param kilocalories metabolic cost of the walking, rest included, to the nearest kilocalorie
 * @param refused why there is no cost
 */
public record DayEffort(
    int day, long minutes, OptionalLong kilocalories, Optional<Rate.Reason> refused) {
  private static final double JOULES_PER_KILOCALORIE = 4184;

  /** Estimates the day for a walker who carries the load of its morning all day long. */
  public static DayEffort of(
      RouteDay day,
      WalkingRule rule,
      CostModel model,
      OptionalLong bodyMilligrams,
      long loadMilligrams) {
    double hours = rule.hours(day);
    long minutes = whole(hours * 60);
    if (bodyMilligrams.isEmpty()) {
      return new DayEffort(
          day.day(), minutes, OptionalLong.empty(), Optional.of(Rate.Reason.NO_BODY_MASS));
    }
    double joules = 0;
    double meters = day.distance().millimeters() / 1e3;
    for (Leg leg : Leg.of(day)) {
      double legHours = legHours(day, leg, rule, hours, meters);
      double metersPerSecond = leg.meters() / (legHours * 3600);
      Rate rate =
          model.rate(
              bodyMilligrams.getAsLong() / 1e6,
              loadMilligrams / 1e6,
              metersPerSecond,
              100 * leg.grade(),
              day.surface().factorThousandths() / 1e3);
      if (rate instanceof Rate.Refused refusal) {
        return new DayEffort(
            day.day(), minutes, OptionalLong.empty(), Optional.of(refusal.reason()));
      }
      joules += ((Rate.Watts) rate).watts() * legHours * 3600;
    }
    return new DayEffort(
        day.day(),
        minutes,
        OptionalLong.of(whole(joules / JOULES_PER_KILOCALORIE)),
        Optional.empty());
  }

  /**
   * Tobler gives each leg its own speed; Naismith's rule and Langmuir's give one time for the day,
   * which is shared out by what they ask for each leg: pace for its distance, and the climb's extra
   * to the leg uphill, the descent's to the leg downhill.
   */
  private static double legHours(
      RouteDay day, Leg leg, WalkingRule rule, double hours, double meters) {
    return leg.meters() < meters ? rule.hours(alone(day, leg)) : hours;
  }

  /** The day as if it had only this leg. */
  private static RouteDay alone(RouteDay day, Leg leg) {
    boolean up = leg.grade() > 0;
    Length none = new Length("0 m", 0);
    long millimeters = whole(leg.meters() * 1000);
    return new RouteDay(
        day.day(),
        new Length(millimeters + " mm", millimeters),
        up ? day.climb() : none,
        up ? none : day.descent(),
        up ? Optional.empty() : day.gentleDescent(),
        up ? Optional.empty() : day.steepDescent(),
        day.surface(),
        day.kmPerHour(),
        day.campHeight());
  }

  private static long whole(double quantity) {
    return Rounding.halfUpToWhole(BigDecimal.valueOf(quantity));
  }
}
