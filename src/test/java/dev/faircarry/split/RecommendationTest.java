package dev.faircarry.split;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** Which point is recommended, worked out by hand with ten thousandths a handover. */
class RecommendationTest {
  private static CurvePoint point(int handovers, long worst, long excessThousandths) {
    return new CurvePoint(
        handovers,
        new Split(List.of(), List.of(), List.of()),
        new Proof(1, 0, 0, OptionalLong.of(0), false, 1, false),
        List.of(),
        List.of(worst),
        excessThousandths,
        0,
        0);
  }

  private static int among(int grain, CurvePoint... points) {
    return Recommendation.among(List.of(points), grain);
  }

  @Test
  void oneMoreHandoverIsWorthTenThousandths() {
    assertEquals(1, among(5, point(0, 200, 0), point(1, 198, 0)));
    assertEquals(0, among(5, point(0, 200, 0), point(1, 199, 0)));
    assertEquals(0, among(1, point(0, 200, 0), point(1, 191, 0)));
    assertEquals(1, among(1, point(0, 200, 0), point(1, 190, 0)));
  }

  /** Two handovers for 15 thousandths are not, three for 30 are, counted from the point chosen. */
  @Test
  void aPointIsPassedOverWhereALaterOneMakesUpForIt() {
    assertEquals(2, among(5, point(0, 200, 0), point(2, 197, 0), point(3, 194, 0)));
    assertEquals(0, among(5, point(0, 200, 0), point(2, 197, 0), point(3, 195, 0)));
  }

  @Test
  void whatPassesCapsCountsAlike() {
    assertEquals(1, among(5, point(0, 200, 30), point(1, 202, 10)));
    assertEquals(0, among(5, point(0, 200, 30), point(1, 203, 10)));
    assertEquals(0, among(5, point(4, 200, 0)));
  }
}
