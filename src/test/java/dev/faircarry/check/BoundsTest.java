package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.RandomSplits;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.oracle.TripGenerator.Shape;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What the bounds prove, by hand, and that they never prove too much. */
class BoundsTest {

  private static int proved(Trips trips, Long... steps) {
    return Bounds.provedLevels(trips.trip(), List.of(steps));
  }

  @Test
  void sheerTotal() {
    // Two of 100 g, steps of 5 g: below 20 two hikers hold at most 190 g.
    assertEquals(2, proved(Trips.targets(1000, 1000).pieces(100, 100), 20L, 20L));
    // Three of 100 g: 40 steps are needed for two of them, but 39 twice would hold 390 g.
    assertEquals(0, proved(Trips.targets(1000, 1000).pieces(100, 100, 100), 40L, 20L));
  }

  @Test
  void afterHighLevelsTheRest() {
    // a holds 500 g of its own: 100 steps. Below 20, b holds at most 95 of the 100 g.
    Trips trips =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).kit("own", 500))
            .hiker("b", h -> h.target(1000))
            .pieces(100);
    assertEquals(2, proved(trips, 100L, 20L));
    // Were 21 steps the list's second, 20 would do.
    assertEquals(1, proved(trips, 100L, 21L));
    // 101 steps at the top are not proved: own kit needs 100.
    assertEquals(0, proved(trips, 101L, 20L));
  }

  @Test
  void highestStepsMayGoToTheHighestTargets() {
    // Steps are 5 g and 10 g. With 30 at the top and 19 below, b may hold 300 and a 95: 395 of 390.
    Trips trips = Trips.targets(1000, 2000).pieces(190, 200);
    assertEquals(0, proved(trips, 30L, 20L));
  }

  @Test
  void theHeaviestDayCounts() {
    // 100 g each, one used a day: 200 g on day 1, 100 g on day 2.
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(1000))
            .hiker("b", h -> h.target(1000))
            .item("u", s -> s.count(2).mass(100).perDay(1, 0));
    assertEquals(2, proved(trips, 20L, 20L, 20L, 0L));
  }

  @Test
  void ownKitAloneOnEveryLevel() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(1000).kit("own", 500).leavesAfter(1))
            .hiker("b", h -> h.target(1000).kit("own", 300));
    assertEquals(3, proved(trips, 100L, 60L, 60L));
  }

  @Test
  void noOtherSplitGoesBelowWhatIsProved() {
    int proved = 0;
    for (long seed = 0; seed < 300; seed++) {
      Trip trip = TripGenerator.trip(seed, Shape.of(4, 3, 5));
      SplittableRandom random = new SplittableRandom(seed);
      List<List<Long>> lists = new ArrayList<>();
      for (int k = 0; k < 12; k++) {
        lists.add(SplitCheck.verdict(trip, RandomSplits.sound(trip, random)).steps());
      }
      for (List<Long> list : lists) {
        int levels = Bounds.provedLevels(trip, list);
        proved += levels;
        for (List<Long> other : lists) {
          assertTrue(
              compare(other.subList(0, levels), list.subList(0, levels)) >= 0,
              "seed " + seed + ": " + other + " is below " + levels + " levels of " + list);
        }
      }
    }
    assertTrue(proved > 200, "bounds that prove next to nothing test nothing: " + proved);
  }

  private static int compare(List<Long> one, List<Long> other) {
    for (int k = 0; k < one.size(); k++) {
      int level = Long.compare(one.get(k), other.get(k));
      if (level != 0) {
        return level;
      }
    }
    return 0;
  }
}
