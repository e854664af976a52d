package dev.faircarry.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The oracle itself, on trips worked out by hand. */
class BruteForceTest {

  private static BruteForce.Answer answer(Trip trip) {
    return BruteForce.answer(trip, 100_000).orElseThrow();
  }

  @Test
  void twoHikersThreePieces() {
    // 300 | 100 + 200 against targets of 1000: 300 thousandths each, 60 steps of 5.
    Trip trip = Trips.targets(1000, 1000).pieces(300, 100, 200).trip();
    assertEquals(8, answer(trip).splits());
    assertEquals(Optional.of(new Value(0, List.of(60L, 60L))), answer(trip).best());
  }

  @Test
  void unitsAreInterchangeable() {
    // 4 units among 3 hikers: 6 over 2 = 15 ways; 2 + 1 + 1 is fairest: 200, 100, 100 thousandths.
    Trip trip = Trips.targets(1000, 1000, 1000).item("u", s -> s.count(4).mass(100)).trip();
    assertEquals(15, answer(trip).splits());
    assertEquals(Optional.of(new Value(0, List.of(40L, 20L, 20L))), answer(trip).best());
  }

  @Test
  void openingPlansDecideLaterMornings() {
    // Two meals of 100 g, one used a day, nothing left of it. With one each, one hiker eats first:
    // 100 and 100 on day 1, 0 and 100 on day 2. Ways: each holds one (2 opening plans), or both
    // with one hiker (1 opening plan each): 4.
    Trip trip =
        Trips.days(2)
            .hiker("a", h -> h.target(1000))
            .hiker("b", h -> h.target(1000))
            .item("meal", s -> s.count(2).mass(100).perDay(1, 0))
            .trip();
    assertEquals(4, answer(trip).splits());
    assertEquals(Optional.of(new Value(0, List.of(20L, 20L, 20L, 0L))), answer(trip).best());
  }

  @Test
  void leaversHandWhatIsStillNeeded() {
    // a leaves after day 1. The pot (200 g) goes to b at camp if a had it; the first-day snack box
    // (onDays 1) stays with a. Fairest on the three mornings: a pot, b box 200: 200, 200, then b
    // has the pot: 200 and the box is not there.
    Trip trip =
        Trips.days(2)
            .hiker("a", h -> h.target(1000).leavesAfter(1))
            .hiker("b", h -> h.target(1000))
            .item("pot", s -> s.mass(200))
            .item("box", s -> s.mass(200).onDays(1))
            .trip();
    assertEquals(4, answer(trip).splits());
    assertEquals(Optional.of(new Value(0, List.of(40L, 40L, 40L))), answer(trip).best());
  }

  @Test
  void capsAreKeptBeforeFairness() {
    // a may carry 100 g only: both pieces of 150 go to b, although one each would be fairer.
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).capLoad(100))
            .hiker("b", h -> h.target(1000))
            .pieces(150, 150, 0)
            .trip();
    assertEquals(Optional.of(new Value(0, List.of(60L, 0L))), answer(trip).best());
    // Two pieces of 300 and a cap of 200 for each of them: 100 thousandths over, twice.
    Trip tight =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).capLoad(200))
            .hiker("b", h -> h.target(1000).capLoad(200))
            .pieces(300, 300)
            .trip();
    assertEquals(Optional.of(new Value(200, List.of(60L, 60L))), answer(tight).best());
  }

  @Test
  void rulesExclude() {
    Trips trips = Trips.targets(1000, 1000).pieces(100, 100, 100);
    Trip trip = trips.pinned("a", "p1").together("p1", "p2").apart("p2", "p3").trip();
    assertEquals(1, answer(trip).splits());
    assertEquals(Optional.of(new Value(0, List.of(40L, 20L))), answer(trip).best());
    Trip none = trips.barred(List.of("b"), "p3").trip();
    assertFalse(answer(none).possible());
    Demand dropped = new Demand.OfRule("r3");
    assertEquals(
        1,
        BruteForce.answer(none, 100, d -> !d.equals(dropped), Optional.empty())
            .orElseThrow()
            .splits());
  }

  @Test
  void handoversAreCountedFromTheEarlierSplit() {
    // Earlier a carries all three. With no handover 300 | 0, with one 200 | 100.
    Trip trip = Trips.targets(1000, 1000).item("u", s -> s.count(3).mass(100)).trip();
    Split earlier = new Split(List.of(new Carry("a", PieceRef.item("u"), 3)), List.of(), List.of());
    BruteForce.Answer answer =
        BruteForce.answer(trip, 100, d -> true, Optional.of(earlier)).orElseThrow();
    assertEquals(List.of(60L, 0L), answer.byHandovers().get(0).steps());
    assertEquals(List.of(40L, 20L), answer.byHandovers().get(1).steps());
    assertEquals(List.of(60L, 0L), answer.byHandovers().get(3).steps());
    assertEquals(List.of(40L, 20L), answer.bestWithin(3).orElseThrow().steps());
  }
}
