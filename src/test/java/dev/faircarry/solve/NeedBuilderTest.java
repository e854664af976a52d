package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Frozen units used by the day: their number stays with who had them, which of them does not
 * matter. Numbers of splits by hand.
 */
class NeedBuilderTest {
  private static final long EFFORT = 1_000_000;

  /** Two dinners on day 1, one on day 2, and a pot. */
  private static Trips dinners(int count) {
    return Trips.days(2)
        .hiker("a", h -> h.target(1000))
        .hiker("b", h -> h.target(1000))
        .item("pot", s -> s.mass(5))
        .item("dinner", s -> s.count(count).mass(1).perDay(List.of(2, 1), 0));
  }

  private static long splits(Trips trips, Split earlier, String... frozen) {
    Set<PieceRef> refs = Arrays.stream(frozen).map(PieceRef::of).collect(Collectors.toSet());
    Model model = ModelBuilder.of(trips.trip(), demand -> true, earlier, refs);
    Exhaustion all =
        new Exhaustion(
            model,
            new Exchange.Value(Long.MAX_VALUE, new int[0]),
            true,
            new Effort(EFFORT, Watch.NONE));
    assertTrue(all.run(EFFORT), "does not come to its end");
    return all.found();
  }

  private static final Split TWO_AND_ONE =
      Splits.of("a", "dinner*2").and("b", "dinner", "pot").split();

  /** Day 1's: 0, 1 or 2 with a; day 2's: a or b; the pot: a or b. */
  @Test
  void nothingFrozen() {
    assertEquals(3 * 2 * 2, splits(dinners(3), TWO_AND_ONE));
  }

  /** a has both of day 1, or one of them and that of day 2; the pot with anybody. */
  @Test
  void everybodyKeepsTheirNumber() {
    assertEquals(2 * 2, splits(dinners(3), TWO_AND_ONE, "dinner"));
  }

  @Test
  void thePotStaysToo() {
    assertEquals(2, splits(dinners(3), TWO_AND_ONE, "dinner", "pot"));
    assertEquals(3 * 2, splits(dinners(3), TWO_AND_ONE, "pot"));
  }

  /** Two are left, both used on day 1, and a, who comes first, had two. */
  @Test
  void whereFewerAreLeftTheFirstOnesKeepThem() {
    assertEquals(2, splits(dinners(2), TWO_AND_ONE, "dinner"));
    assertEquals(1, splits(dinners(2), TWO_AND_ONE, "dinner", "pot"));
  }

  /** One more than before: it is with anybody, and so may any of the units be. */
  @Test
  void whatIsNewIsFree() {
    // With a at least 2, with b at least 1. Two are used on day 1, one on day 2, one never.
    // Of the numbers with a (day 1: 0 to 2, day 2, never) just those with 2 or 3 in all:
    // 2 in all: 200, 110, 101, 011 (0 of day 1); 3 in all: 210, 201, 111.
    assertEquals(7 * 2, splits(dinners(4), TWO_AND_ONE, "dinner"));
  }

  /** c, who had one, is gone: a keeps two, the third is with anybody. */
  @Test
  void whoIsGoneKeepsNothing() {
    Split earlier = Splits.of("a", "dinner*2").and("c", "dinner").and("b", "pot").split();
    // With a at least 2 of 3: 20, 11 and all three.
    assertEquals(3 * 2, splits(dinners(3), earlier, "dinner"));
  }

  /** Water for day 2 is held from the start and stays with b, though it is not there on day 1. */
  @Test
  void whatComesLaterStaysToo() {
    Trips trips = dinners(3).item("water", s -> s.mass(1).onDays(2));
    Split earlier = Splits.of("a", "dinner*2").and("b", "dinner", "pot", "water").split();
    assertEquals(2, splits(trips, earlier, "dinner", "pot", "water"));
  }

  /** Fuel that is used evenly is one thing, which stays as such. */
  @Test
  void unitsThatAreNotUsedByTheDayStayOneByOne() {
    Trips trips = Trips.days(2).hiker("a", h -> h.target(1000)).hiker("b", h -> h.target(1000));
    trips.item("gas", s -> s.count(3).mass(4).evenly(1));
    Split earlier = Splits.of("a", "gas").and("b", "gas*2").split();
    assertEquals(1, splits(trips, earlier, "gas"));
    assertEquals(4, splits(trips, earlier));
  }
}
