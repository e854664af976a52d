package dev.faircarry.effort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.Vectors;
import dev.faircarry.Vectors.Vector;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.trip.plan.Surface;
import dev.faircarry.unit.Length;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Walking times against their publications, and what a day costs. */
class WalkingRuleTest {

  static Stream<Vector> tobler() {
    return Vectors.of("effort", "tobler1993", "tobler_offpath");
  }

  @ParameterizedTest
  @MethodSource("tobler")
  void toblersSpeed(Vector v) {
    if (v.model().equals("tobler_offpath")) {
      assertEquals(
          v.out("km_per_h"), WalkingRule.toblerOffPathKmPerHour(v.in("slope")), v.tolerance());
      return;
    }
    double slope =
        v.has("slope_deg")
            ? Math.tan(Math.toRadians(v.in("slope_deg")))
            : v.in("slope_rise_over_run");
    assertEquals(v.out("km_per_h"), WalkingRule.toblerKmPerHour(slope), v.tolerance());
  }

  @Test
  void naismithAsEquivalentDistance() {
    Vector v = Vectors.of("effort", "naismith_equivalent_distance").findFirst().orElseThrow();
    double hours =
        WalkingRule.equivalentDistanceHours(
            v.in("km"), v.in("ascent_km"), v.in("ratio"), v.in("flat_km_h"));
    assertEquals(v.out("h"), hours, 1.0 / 60);
  }

  static Stream<Vector> naismith() {
    return Vectors.of("effort", "naismith_metric", "naismith_langmuir");
  }

  @ParameterizedTest
  @MethodSource("naismith")
  void naismithAndLangmuir(Vector v) {
    double gentle = v.has("gentle_descent_m_5_to_12deg") ? v.in("gentle_descent_m_5_to_12deg") : 0;
    double steep = v.has("steep_descent_m_over_12deg") ? v.in("steep_descent_m_over_12deg") : 0;
    RouteDay day =
        new RouteDay(
            1,
            meters(v.in("km") * 1000),
            meters(v.in("ascent_m")),
            meters(gentle + steep),
            Optional.of(meters(gentle)),
            Optional.of(meters(steep)),
            Surface.DIRT_ROAD,
            Optional.empty(),
            Optional.empty());
    WalkingRule rule =
        v.model().equals("naismith_metric") ? WalkingRule.NAISMITH : WalkingRule.NAISMITH_LANGMUIR;
    assertEquals(v.out("h"), rule.hours(day), Math.max(1e-6, v.tolerance()));
  }

  /**
   * By hand: 10 km and 1,000 m down is atan(0.1) = 5.7 degrees, gentle: 2 h less 1000 / 300 x 10
   * min.
   */
  @Test
  void langmuirTakesTheMeanGradeWhenNothingElseIsStated() {
    RouteDay day = day(10_000, 0, 1000, Surface.DIRT_ROAD, Optional.empty());
    assertEquals(2 - 1000 / 300.0 / 6, WalkingRule.NAISMITH_LANGMUIR.hours(day), 1e-9);
  }

  /**
   * By hand: 4 km and 1,000 m down is atan(0.25) = 14 degrees, steep: 0.8 h and 1000 / 300 x 10 min
   * more.
   */
  @Test
  void langmuirSlowsSteepDescents() {
    RouteDay day = day(4_000, 0, 1000, Surface.DIRT_ROAD, Optional.empty());
    assertEquals(0.8 + 1000 / 300.0 / 6, WalkingRule.NAISMITH_LANGMUIR.hours(day), 1e-9);
  }

  /** Tobler on the flat at 6 exp(-0.175) = 5.0367 km/h; a stated pace takes its place. */
  @Test
  void paceScalesEveryRule() {
    RouteDay flat = day(12_000, 0, 0, Surface.HARD_ROAD, Optional.of(new BigDecimal("4")));
    for (WalkingRule rule : WalkingRule.values()) {
      assertEquals(3.0, rule.hours(flat), 1e-9, rule.text());
    }
  }

  @Test
  void timeGrowsWithDistanceAndClimb() {
    for (WalkingRule rule : WalkingRule.values()) {
      double hours = rule.hours(day(10_000, 500, 500, Surface.DIRT_ROAD, Optional.empty()));
      assertTrue(
          rule.hours(day(11_000, 500, 500, Surface.DIRT_ROAD, Optional.empty())) > hours,
          rule.text());
      assertTrue(
          rule.hours(day(10_000, 700, 500, Surface.DIRT_ROAD, Optional.empty())) > hours,
          rule.text());
    }
  }

  /**
   * By hand: 5 km flat by Naismith takes one hour, at 1.3889 m/s. Pandolf for 70 kg and 14 kg on a
   * hard road: 1.5 x 70 + 2 x 84 x 0.04 + 84 x 1.5 x 1.92901 = 354.775 W; an hour of it is 305.3
   * kcal.
   */
  @Test
  void costOfAFlatHour() {
    RouteDay day = day(5_000, 0, 0, Surface.HARD_ROAD, Optional.empty());
    DayEffort effort =
        DayEffort.of(
            day,
            WalkingRule.NAISMITH,
            CostModel.PANDOLF_SANTEE,
            OptionalLong.of(70_000_000),
            14_000_000);
    assertEquals(60, effort.minutes());
    assertEquals(OptionalLong.of(305), effort.kilocalories());
  }

  /** A day of two legs costs what its legs cost as days of their own. */
  @Test
  void legsAddUp() {
    for (WalkingRule rule : WalkingRule.values()) {
      for (CostModel model : CostModel.values()) {
        long whole = kcal(rule, model, day(12_000, 400, 200, Surface.DIRT_ROAD, Optional.empty()));
        long up = kcal(rule, model, day(8_000, 400, 0, Surface.DIRT_ROAD, Optional.empty()));
        long down = kcal(rule, model, day(4_000, 0, 200, Surface.DIRT_ROAD, Optional.empty()));
        assertTrue(Math.abs(whole - up - down) <= 1, rule.text() + " " + model.text());
      }
    }
  }

  private static long kcal(WalkingRule rule, CostModel model, RouteDay day) {
    return DayEffort.of(day, rule, model, OptionalLong.of(70_000_000), 14_000_000)
        .kilocalories()
        .orElseThrow();
  }

  @Test
  void saysWhyThereIsNoCost() {
    RouteDay day = day(5_000, 0, 0, Surface.HARD_ROAD, Optional.empty());
    DayEffort noBody =
        DayEffort.of(day, WalkingRule.NAISMITH, CostModel.LCDA, OptionalLong.empty(), 14_000_000);
    assertEquals(Optional.of(Rate.Reason.NO_BODY_MASS), noBody.refused());
    assertEquals(60, noBody.minutes());
    DayEffort heavy =
        DayEffort.of(
            day, WalkingRule.NAISMITH, CostModel.LCDA, OptionalLong.of(50_000_000), 34_000_000);
    assertEquals(Optional.of(Rate.Reason.LOAD), heavy.refused());
    assertEquals(OptionalLong.empty(), heavy.kilocalories());
  }

  private static RouteDay day(
      double distance, double climb, double descent, Surface surface, Optional<BigDecimal> pace) {
    return new RouteDay(
        1,
        meters(distance),
        meters(climb),
        meters(descent),
        Optional.empty(),
        Optional.empty(),
        surface,
        pace,
        Optional.empty());
  }

  private static Length meters(double meters) {
    return new Length(meters + " m", Math.round(meters * 1000));
  }
}
