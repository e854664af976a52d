package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.fixture.HikerOf.Thing;
import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Trip;
import org.junit.jupiter.api.Test;

/** What a hiker must hold in every split, worked out by hand. */
class ForcedMassTest {
  private static Thing canister(long milliliters) {
    return new Thing("canister", 0).contains("food", milliliters);
  }

  /** Four meals of 1 L; a has room for three, b for two: a holds two or more, b one or more. */
  private static Trip meals() {
    return Trips.days(1)
        .grain(1)
        .hiker("a", h -> h.target(5000).kit(canister(3900)))
        .hiker("b", h -> h.target(5000).kit(canister(2000)))
        .hiker("c", h -> h.target(5000))
        .item("meal", s -> s.count(4).mass(600).volume(1000).goesInto("food"))
        .item("rope", s -> s.mass(900))
        .pinned("c", "rope")
        .trip();
  }

  @Test
  void pinnedPiecesAndMealsForWhichOthersHaveNoRoom() {
    assertArrayEquals(
        new long[][] {{1_200_000}, {600_000}, {900_000}}, ForcedMass.of(ModelBuilder.of(meals())));
  }

  /** 1200 g of 5000 g is 240 thousandths, and two meals each is a split. */
  @Test
  void theFirstLevelIsProvedByIt() {
    Trip trip = meals();
    assertEquals(240, new Bound(ModelBuilder.of(trip)).atLevel(new int[] {240, 240, 180}, 0, 240));
    Outcome.Solved solved =
        assertInstanceOf(Outcome.Solved.class, SplitSolver.solve(trip, 1_000_000, Watch.NONE));
    assertTrue(solved.proof().proved());
    assertEquals(240, SplitCheck.verdict(trip, solved.split()).steps().get(0));
    assertTrue(BruteForce.answer(trip, 100_000).orElseThrow().possible());
  }

  /** A shared canister may be with anybody, so nobody can be forced. */
  @Test
  void aSharedContainerLeavesItOpen() {
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(5000).kit(canister(1000)))
            .hiker("b", h -> h.target(5000))
            .item("meal", s -> s.count(2).mass(600).volume(1000).goesInto("food"))
            .item("box", s -> s.mass(900).contains("food", 2000))
            .trip();
    assertArrayEquals(new long[][] {{0}, {0}}, ForcedMass.of(ModelBuilder.of(trip)));
  }
}
