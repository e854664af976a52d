package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.HikerOf.Thing;
import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.Feature;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * How many splits keep every hard rule: worked out by hand, by trying everything, and by the
 * engine's own exhausted search. Where each rule is posted, one split too many or too few shows.
 */
class CountingTest {
  private static final long MOST_SPLITS = 30_000;
  private static final long EFFORT = 100_000_000;

  /** As the engine counts them, equal things of different items told apart. */
  private static long engine(Trip trip) {
    Model model =
        ModelBuilder.of(trip, demand -> true, new Split(List.of(), List.of(), List.of()), Set.of());
    if (model.contradictory) {
      return 0;
    }
    Exhaustion all =
        new Exhaustion(
            model,
            new Exchange.Value(Long.MAX_VALUE, new int[0]),
            true,
            new Effort(EFFORT, Watch.NONE));
    assertTrue(all.run(EFFORT), "does not come to its end");
    return all.found();
  }

  private static void count(long byHand, Trips trips) {
    assertEquals(byHand, BruteForce.answer(trips.trip(), MOST_SPLITS).orElseThrow().splits());
    assertEquals(byHand, engine(trips.trip()));
  }

  private static Trips two() {
    return Trips.targets(1000, 1000);
  }

  private static Trips three() {
    return Trips.targets(1000, 1000, 1000);
  }

  @Test
  void everyPieceWithAnybody() {
    count(8, two().pieces(1, 1, 1));
    count(81, three().pieces(5, 6, 7, 8));
    count(1, three());
  }

  /** n units among m hikers: n + m - 1 over m - 1. */
  @Test
  void units() {
    count(15, three().item("u", s -> s.count(4).mass(10)));
    count(15 * 3, three().item("u", s -> s.count(4).mass(10)).pieces(9));
  }

  @Test
  void pinnedOnlyAndBarred() {
    count(3, three().pieces(1, 1).pinned("b", "p1"));
    count(2 * 2, three().pieces(1, 1).only(List.of("a", "b"), "p1").barred(List.of("c"), "p2"));
    count(0, two().pieces(1).pinned("a", "p1").barred(List.of("a"), "p1"));
  }

  /** Three pieces of which two go together: 3 x 3; apart: 3 x 2 x 3. */
  @Test
  void togetherAndApart() {
    count(9, three().pieces(1, 1, 1).together("p1", "p2"));
    count(18, three().pieces(1, 1, 1).apart("p1", "p2"));
    // Of two references with two units each: nobody has some of both. All of u with one of two
    // leaves v to the other: 2; u with both leaves v nobody.
    count(
        2,
        two()
            .item("u", s -> s.count(2).mass(1))
            .item("v", s -> s.count(2).mass(1))
            .apart("u", "v"));
  }

  /**
   * Both units of u in one pack and v in the other; what is to be in one pack and in two is not.
   */
  @Test
  void togetherAndApartAtOnce() {
    count(
        2,
        two()
            .item("u", s -> s.count(2).mass(1))
            .item("v", s -> s.mass(1))
            .together("u")
            .apart("u", "v"));
    count(0, two().pieces(1, 1).together("p1", "p2").apart("p1", "p2"));
    // Of two rules, one about each: p1 and p2 in one pack, p3 in the other.
    count(2, two().pieces(1, 1, 1).together("p1", "p2").apart("p1", "p3").apart("p2", "p3"));
  }

  /** Two joined pieces are two: a may have them or the third one, not all. */
  @Test
  void joinedPiecesCountEach() {
    count(
        3,
        Trips.days(1)
            .hiker("a", h -> h.target(1000).maxPieces(2))
            .hiker("b", h -> h.target(1000))
            .pieces(1, 1, 1)
            .together("p1", "p2"));
  }

  /** a takes none or one of three. */
  @Test
  void fewPieces() {
    count(
        4,
        Trips.days(1)
            .hiker("a", h -> h.target(1000).maxPieces(1))
            .hiker("b", h -> h.target(1000))
            .pieces(1, 1, 1));
  }

  /** Not both of 3 mL into 5 mL. */
  @Test
  void room() {
    count(
        3,
        Trips.days(1)
            .hiker("a", h -> h.target(1000).pack(0, 5))
            .hiker("b", h -> h.target(1000))
            .item("p", s -> s.mass(1).volume(3))
            .item("q", s -> s.mass(1).volume(3)));
  }

  /** Food of 3 mL each goes with the box of 5 mL, or one of it into b's tin of 4 mL. */
  @Test
  void containers() {
    // Box with a: both do not fit into it (6 > 5), so one with a and one with b: 2 ways. Box with
    // b, beside the tin: both fit (6 <= 9), and a has nothing to put any into: 1 way.
    count(
        3,
        Trips.days(1)
            .hiker("a", h -> h.target(1000))
            .hiker("b", h -> h.target(1000).kit(new Thing("tin", 1).contains("food", 4)))
            .item("box", s -> s.mass(1).contains("food", 5))
            .item("p", s -> s.mass(1).volume(3).goesInto("food"))
            .item("q", s -> s.mass(1).volume(3).goesInto("food")));
  }

  @Test
  void minors() {
    count(
        2,
        Trips.days(1)
            .hiker("a", h -> h.target(1000).minor())
            .hiker("b", h -> h.target(1000))
            .item("stove", s -> s.mass(1).covers("flame"))
            .pieces(1));
  }

  /** Three lamps for two parties of one: one and two, or two and one. */
  @Test
  void partyHas() {
    count(
        2,
        Trips.days(1)
            .hiker("a", h -> h.target(1000).party("front"))
            .hiker("b", h -> h.target(1000).party("back"))
            .item("lamp", s -> s.count(3).mass(1).covers("light"))
            .partyHas("light", 1));
  }

  /** With b or c from the start, or with a and then with b or c. */
  @Test
  void whoLeavesHandsOn() {
    Trips trips =
        Trips.days(2)
            .hiker("a", h -> h.target(1000).leavesAfter(1))
            .hiker("b", h -> h.target(1000))
            .hiker("c", h -> h.target(1000));
    count(4, trips.item("pot", s -> s.mass(1)));
    // What is not needed after the first day stays with a.
    count(4 * 3, trips.item("box", s -> s.mass(1).onDays(1)));
  }

  /** Both meals with one hiker, or one each and either of them first. */
  @Test
  void openingPlans() {
    count(
        4,
        Trips.days(2)
            .hiker("a", h -> h.target(1000))
            .hiker("b", h -> h.target(1000))
            .item("meal", s -> s.count(2).mass(1).perDay(1, 0)));
  }

  @Test
  void asManyAsTryingEverythingFinds() {
    // With leavers, units that were handed on are told apart by where they came from.
    List<TripGenerator.Shape> shapes =
        List.of(
            TripGenerator.Shape.of(4, 3, 6).without(Feature.LEAVERS),
            TripGenerator.Shape.of(3, 3, 6).without(Feature.COUNTED));
    int compared = 0;
    int none = 0;
    for (long seed = 0; seed < 240; seed++) {
      Trip trip = TripGenerator.trip(seed, shapes.get((int) (seed % 2)));
      Optional<BruteForce.Answer> all = BruteForce.answer(trip, MOST_SPLITS);
      if (all.isPresent()) {
        assertEquals(all.get().splits(), engine(trip), "seed " + seed);
        compared++;
        none += all.get().possible() ? 0 : 1;
      }
    }
    assertTrue(compared > 200 && none > 30, compared + " trips, " + none + " without a split");
  }
}
