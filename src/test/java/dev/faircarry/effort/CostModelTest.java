package dev.faircarry.effort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.faircarry.Vectors;
import dev.faircarry.Vectors.Vector;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The models against values from their publications. */
class CostModelTest {
  private static final double KILOGRAMS_PER_POUND = 0.45359237;
  private static final double METERS_PER_SECOND_PER_MPH = 0.44704;
  private static final double KCAL_PER_HOUR_PER_WATT = 3600 / 4184.0;

  static Stream<Vector> pandolf() {
    return Vectors.of("effort", "pandolf1977", "pandolf1977_minus_santee_cf");
  }

  @ParameterizedTest
  @MethodSource("pandolf")
  void pandolfWithSantee(Vector v) {
    boolean pounds = v.has("W_lb");
    double body = pounds ? v.in("W_lb") * KILOGRAMS_PER_POUND : v.in("W_kg");
    double load = pounds ? v.in("L_lb") * KILOGRAMS_PER_POUND : v.in("L_kg");
    double speed = pounds ? v.in("v_mph") * METERS_PER_SECOND_PER_MPH : v.in("v_m_s");
    double watts = CostModel.pandolfSantee(body, load, speed, v.in("grade_pct"), v.in("eta"));
    if (pounds) {
      assertEquals(v.out("kcal_per_h"), watts * KCAL_PER_HOUR_PER_WATT, v.tolerance());
    } else {
      assertEquals(v.out("watt"), watts, v.tolerance());
    }
  }

  static Stream<Vector> lcdaWalking() {
    return Vectors.of("effort", "lcda_walking_2019", "lcda_graded_2019")
        .filter(v -> v.out().has("watt_per_kg"));
  }

  @ParameterizedTest
  @MethodSource("lcdaWalking")
  void lcdaGradedWalking(Vector v) {
    assertEquals(
        v.out("watt_per_kg"),
        CostModel.lcdaGradedWalking(v.in("v_m_s"), v.in("grade_pct")),
        v.tolerance());
  }

  @Test
  void lcdaClimbCostsSoManyFlatKilometres() {
    Vector v =
        Vectors.of("effort", "lcda_graded_2019")
            .filter(x -> x.out().has("ratio_minus_1"))
            .findFirst()
            .orElseThrow();
    double speed = v.in("v_m_s");
    double ratio =
        CostModel.lcdaGradedWalking(speed, v.in("grade_pct"))
            / CostModel.lcdaGradedWalking(speed, 0);
    assertEquals(v.out("ratio_minus_1"), ratio - 1, v.tolerance());
  }

  @Test
  void lcdaCheapestSpeedPerMetre() {
    Vector v =
        Vectors.of("effort", "lcda_walking_2019")
            .filter(x -> x.has("find"))
            .findFirst()
            .orElseThrow();
    double best = 0;
    for (double speed = 0.5; speed < 2; speed += 0.001) {
      if (best == 0 || costPerMeter(speed) < costPerMeter(best)) {
        best = speed;
      }
    }
    assertEquals(v.out("v_m_s"), best, v.tolerance());
  }

  private static double costPerMeter(double metersPerSecond) {
    return CostModel.lcdaGradedWalking(metersPerSecond, 0) / metersPerSecond;
  }

  static Stream<Vector> lcdaBackpacking() {
    return Vectors.of("effort", "lcda_backpacking_2022");
  }

  @ParameterizedTest
  @MethodSource("lcdaBackpacking")
  void lcdaBackpacking(Vector v) {
    assertEquals(
        v.out("watt_per_kg"),
        CostModel.lcdaBackpacking(
            v.in("rest_W_per_kg"),
            v.in("load_over_body"),
            v.in("v_m_s"),
            v.in("grade_pct"),
            v.in("eta")),
        v.tolerance());
  }

  /**
   * The ranges: Looney et al. 2019 and 2022 (abstracts), Santee et al. T04-09; Pandolf's from
   * memory.
   */
  @ParameterizedTest
  @CsvSource({
    "LCDA, 70, 14, 0.44, 0, SPEED",
    "LCDA, 70, 14, 1.97, 0, SPEED",
    "LCDA, 70, 14, 1.2, 45.1, GRADE",
    "LCDA, 70, 14, 1.2, -40.1, GRADE",
    "LCDA, 70, 46.3, 1.2, 0, LOAD",
    "PANDOLF_SANTEE, 70, 14, 2.41, 0, SPEED",
    "PANDOLF_SANTEE, 70, 14, 1.2, 25.1, GRADE",
    "PANDOLF_SANTEE, 70, 14, 1.2, -12.1, GRADE",
    "PANDOLF_SANTEE, 90, 71, 1.2, 0, LOAD",
    "PANDOLF_SANTEE, 90, 27.3, 1.2, -1, LOAD"
  })
  void refusesOutsideItsRange(
      CostModel model, double body, double load, double speed, double grade, Rate.Reason reason) {
    assertEquals(new Rate.Refused(reason), model.rate(body, load, speed, grade, 1));
  }

  @ParameterizedTest
  @CsvSource({
    "LCDA, 70, 46, 0.45, 45",
    "LCDA, 70, 0, 1.96, -40",
    "PANDOLF_SANTEE, 90, 70, 2.4, 25",
    "PANDOLF_SANTEE, 90, 27.2, 0.5, -12"
  })
  void answersAtTheEdgeOfItsRange(
      CostModel model, double body, double load, double speed, double grade) {
    assertInstanceOf(Rate.Watts.class, model.rate(body, load, speed, grade, 1));
  }
}
