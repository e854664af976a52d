package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.solve.RebalanceSolver;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * How many handovers each kind of change forces, worked out by hand. Everybody's target is 10 kg,
 * so 1 kg is 100 thousandths of it, 20 steps of 5.
 */
class ForcedHandoversTest {
  private static final Rebalance USE_CASE =
      new Rebalance(RebalanceSolver::curve, new Checked(), () -> 0L);

  private static Rebalanced ask(Trip trip, Splits earlier, List<Change> changes, String... frozen) {
    Set<PieceRef> packed = Arrays.stream(frozen).map(PieceRef::of).collect(Collectors.toSet());
    return USE_CASE.rebalance(
        new Rebalance.Asked(trip, earlier.split(), changes, packed, OptionalInt.empty()),
        1_000_000);
  }

  /** The points as {@code "handovers: steps"}; the curve must be complete. */
  private static List<String> curve(
      Trip trip, Splits earlier, List<Change> changes, String... frozen) {
    return points(trip, earlier, changes, frozen).stream()
        .map(p -> p.handovers() + ": " + p.steps())
        .toList();
  }

  private static List<CurvePoint> points(
      Trip trip, Splits earlier, List<Change> changes, String... frozen) {
    Rebalanced result = ask(trip, earlier, changes, frozen);
    assertTrue(result instanceof Rebalanced.Found, result::toString);
    Rebalanced.Found found = (Rebalanced.Found) result;
    assertTrue(found.curve().complete(), found.curve()::toString);
    return found.curve().points();
  }

  private static List<Change> without(String... hikers) {
    return Arrays.stream(hikers).map(h -> (Change) new Change.DropsOut(h)).toList();
  }

  private static Trips three() {
    return Trips.targets(10_000, 10_000, 10_000);
  }

  /** Two pieces of a go to b and c, one each: 3 kg and 3 kg. */
  @Test
  void everyPieceOfADropOut() {
    Trip trip = three().pieces(1000, 1000, 2000, 2000).trip();
    Splits earlier = Splits.of("a", "p1", "p2").and("b", "p3").and("c", "p4");
    assertEquals(List.of("2: [60, 60]"), curve(trip, earlier, without("a")));
  }

  /** Of six units of 0.5 kg three are a's: b takes one more, c two, and both have 1.5 kg. */
  @Test
  void everyUnitOfADropOut() {
    Trip trip = three().item("u", s -> s.count(6).mass(500)).trip();
    Splits earlier = Splits.of("a", "u*3").and("b", "u*2").and("c", "u");
    List<CurvePoint> points = points(trip, earlier, without("a"));
    assertEquals(1, points.size());
    assertEquals(3, points.get(0).handovers());
    assertEquals(List.of(30L, 30L), points.get(0).steps());
    assertEquals(1_500_000, points.get(0).movedMilligrams());
    assertEquals(3, points.get(0).people());
  }

  /** Two of four do not come: their two pieces move, and nothing else has to. */
  @Test
  void twoDropOutsAtOnce() {
    Trip trip = Trips.targets(10_000, 10_000, 10_000, 10_000).pieces(500, 1500, 2000, 1000).trip();
    Splits earlier = Splits.of("a", "p1").and("b", "p2").and("c", "p3").and("d", "p4");
    // p1 to c and p2 to d: 2.5 kg and 2.5 kg, half of all.
    assertEquals(List.of("2: [50, 50]"), curve(trip, earlier, without("a", "b")));
  }

  /**
   * Three people for two days need six meals of 0.5 kg, two people four. When c, who has four, does
   * not come, two of them stay at home and two are handed over: 1 kg each, then 0.5 kg.
   */
  @Test
  void foodShrinksWithTheParty() {
    Trip trip =
        Trips.days(2)
            .hiker("a", h -> h.target(10_000))
            .hiker("b", h -> h.target(10_000))
            .hiker("c", h -> h.target(10_000))
            .item("meal", s -> s.perPerson(1).mass(500).usedByParty(0))
            .trip();
    Splits much =
        Splits.of("a", "meal")
            .and("b", "meal")
            .and("c", "meal*4")
            .opened(1, "meal", "c", 3)
            .opened(2, "meal", "a", 1)
            .opened(2, "meal", "b", 1)
            .opened(2, "meal", "c", 1);
    assertEquals(List.of("2: [20, 20, 10, 10]"), curve(trip, much, without("c")));
    // With two meals each, c's two simply stay at home.
    Splits even =
        Splits.of("a", "meal*2")
            .and("b", "meal*2")
            .and("c", "meal*2")
            .opened(1, "meal", "a", 1)
            .opened(1, "meal", "b", 1)
            .opened(1, "meal", "c", 1)
            .opened(2, "meal", "a", 1)
            .opened(2, "meal", "b", 1)
            .opened(2, "meal", "c", 1);
    assertEquals(List.of("0: [20, 20, 10, 10]"), curve(trip, even, without("c")));
  }

  /**
   * A day more: four meals instead of two. What is new is nobody's, so nothing is handed over: two
   * meals of 0.5 kg each, one each on the second morning.
   */
  @Test
  void foodGrowsWithTheDays() {
    Trip trip =
        Trips.targets(10_000, 10_000)
            .item("meal", s -> s.perPerson(1).mass(500).usedByParty(0))
            .trip();
    Splits earlier =
        Splits.of("a", "meal").and("b", "meal").opened(1, "meal", "a", 1).opened(1, "meal", "b", 1);
    assertEquals(
        List.of("0: [20, 20, 10, 10]"), curve(trip, earlier, List.of(new Change.DaysAdded(1))));
  }

  /**
   * a leaves after the first day: at departure nothing changes hands, at the camp the pot does.
   * From then on two carry 3 kg in pieces of 1 kg, so one has 2 kg.
   */
  @Test
  void whoLeavesEarlyHandsOverAtTheCamp() {
    Trip trip =
        Trips.days(2)
            .hiker("a", h -> h.target(10_000))
            .hiker("b", h -> h.target(10_000))
            .hiker("c", h -> h.target(10_000))
            .item("pot", s -> s.mass(1000))
            .item("rope", s -> s.mass(1000))
            .item("tarp", s -> s.mass(1000))
            .trip();
    Splits earlier = Splits.of("a", "pot").and("b", "rope").and("c", "tarp");
    List<CurvePoint> points = points(trip, earlier, List.of(new Change.LeavesAfter("a", 1)));
    assertEquals(1, points.size());
    assertEquals(0, points.get(0).handovers());
    assertEquals(List.of(40L, 20L, 20L, 20L, 20L), points.get(0).steps());
    List<CampHandover> camp = points.get(0).split().handoversAtCamp();
    assertEquals(1, camp.size());
    assertEquals("a", camp.get(0).from());
    assertEquals(PieceRef.of("pot"), camp.get(0).piece());
    assertEquals(1, camp.get(0).afterDay());
  }

  /** What b has packed stays, though 2 kg to each would be fairer; what a had moves anyway. */
  @Test
  void whatIsFrozenStaysUnlessItsCarrierIsGone() {
    Trip trip = three().pieces(1000, 2000, 1000).trip();
    Splits earlier = Splits.of("a", "p1").and("b", "p2", "p3").and("c");
    assertEquals(List.of("1: [60, 20]", "2: [40, 40]"), curve(trip, earlier, without("a")));
    assertEquals(List.of("1: [60, 20]"), curve(trip, earlier, without("a"), "p1", "p2", "p3"));
    assertEquals(
        List.of("1: [60, 20]", "2: [40, 40]"), curve(trip, earlier, without("a"), "p1", "p2"));
  }

  /** Five units of 1 kg, four of them b's and packed: a's one goes to c, and b keeps 4 kg. */
  @Test
  void frozenUnitsStay() {
    Trip trip = three().item("u", s -> s.count(5).mass(1000)).trip();
    Splits earlier = Splits.of("a", "u").and("b", "u*4");
    assertEquals(List.of("1: [80, 20]"), curve(trip, earlier, without("a"), "u"));
    assertEquals(List.of("1: [80, 20]", "2: [60, 40]"), curve(trip, earlier, without("a")));
  }

  /**
   * Each has one of two meals, packed. Which of them is eaten first is no handover and stays open:
   * it is a's, who carries the water of the second day, else a would have 2 kg that morning.
   */
  @Test
  void frozenUnitsMayBeOpenedInAnyOrder() {
    Trip trip =
        Trips.days(2)
            .hiker("a", h -> h.target(10_000))
            .hiker("b", h -> h.target(10_000))
            .item("meal", s -> s.count(2).mass(1000).perDay(1, 0))
            .item("water", s -> s.mass(1000).onDays(2))
            .pinned("a", "water")
            .trip();
    for (Splits earlier :
        List.of(
            Splits.of("b", "meal").and("a", "meal", "water"),
            Splits.of("a", "meal", "water").and("b", "meal"))) {
      earlier.opened(1, "meal", "b", 1).opened(2, "meal", "a", 1);
      assertEquals(
          List.of("0: [20, 20, 20, 20]"), curve(trip, earlier, List.of(), "meal", "water"));
    }
  }

  /** An item that is frozen by its own name freezes its parts, and is named so where it clashes. */
  @Test
  void aFrozenItemIsNamedInAConflict() {
    Trip trip =
        three().item("shelter", s -> s.part("fly", 900).part("pegs", 100)).pieces(500).trip();
    Splits earlier = Splits.of("a", "p2").and("b", "shelter/fly", "shelter/pegs");
    Rule rule = new Rule.Pinned("new", List.of(PieceRef.of("shelter/fly")), "c");
    Rebalanced result = ask(trip, earlier, List.of(new Change.RuleAdded(rule)), "shelter");
    assertTrue(result instanceof Rebalanced.Impossible, result::toString);
    assertEquals(
        Set.of(new Demand.OfRule("new"), new Demand.OfFrozen(PieceRef.of("shelter"))),
        Set.copyOf(((Rebalanced.Impossible) result).conflict()));
  }

  /** b's piece has to be c's now. */
  @Test
  void aRuleMovesAPiece() {
    Trip trip = three().pieces(1000, 1000, 1000).trip();
    Splits earlier = Splits.of("a", "p1").and("b", "p2").and("c", "p3");
    Change rule = new Change.RuleAdded(new Rule.Pinned("new", List.of(PieceRef.of("p2")), "c"));
    // One handover: 1, 0 and 2 kg; with p3 to b all have 1 kg again.
    assertEquals(List.of("1: [40, 20, 0]", "2: [20, 20, 20]"), curve(trip, earlier, List.of(rule)));
  }

  /** Two pieces of b are to be kept apart: either goes, and best to a, who has nothing. */
  @Test
  void keepingApartMovesOne() {
    Trip trip = three().pieces(1000, 1000, 1000).trip();
    Splits earlier = Splits.of("b", "p1", "p2").and("c", "p3");
    Change rule =
        new Change.RuleAdded(new Rule.Apart("new", List.of(PieceRef.of("p1"), PieceRef.of("p2"))));
    assertEquals(List.of("1: [20, 20, 20]"), curve(trip, earlier, List.of(rule)));
  }

  /**
   * c may not have a's piece, and b takes one piece at most: so b takes it and hands b's own to c.
   * Two handovers, though only one piece was a's: 1 kg and 2 kg.
   */
  @Test
  void onePieceMayPushAnotherOn() {
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(10_000))
            .hiker("b", h -> h.target(10_000).maxPieces(1))
            .hiker("c", h -> h.target(10_000))
            .pieces(1000, 1000, 1000)
            .barred(List.of("c"), "p1")
            .trip();
    Splits earlier = Splits.of("a", "p1").and("b", "p2").and("c", "p3");
    assertEquals(List.of("2: [40, 20]"), curve(trip, earlier, without("a")));
  }

  /** What comes in place of a lost piece is nobody's yet. */
  @Test
  void aReplacementIsNoHandover() {
    Trip trip = three().pieces(1000, 1000, 1000).trip();
    Splits earlier = Splits.of("a", "p1").and("b", "p2").and("c", "p3");
    SharedItem other = Trips.days(1).item("q", s -> s.mass(1500)).trip().shared().get(0);
    assertEquals(
        List.of("0: [30, 20, 20]"),
        curve(trip, earlier, List.of(new Change.ItemReplaced("p1", other))));
  }

  /** d has nothing yet; one of a's two pieces makes it even. */
  @Test
  void whoJoinsNeedNotTakeAnything() {
    Trip trip = Trips.targets(10_000, 10_000).pieces(1000, 1000, 1000).trip();
    Splits earlier = Splits.of("a", "p1", "p2").and("b", "p3");
    Hiker joins = Trips.days(1).hiker("d", h -> h.target(10_000)).trip().hikers().get(0);
    assertEquals(
        List.of("0: [40, 20, 0]", "1: [20, 20, 20]"),
        curve(trip, earlier, List.of(new Change.Joins(joins))));
  }

  /** a may carry 1.5 kg only, 50 thousandths less than now; one handover keeps to that. */
  @Test
  void aCapThatIsPassedForcesNothingButCountsFirst() {
    Trip trip = Trips.targets(10_000, 10_000).pieces(1000, 1000, 1000).trip();
    Splits earlier = Splits.of("a", "p1", "p2").and("b", "p3");
    Change injured =
        new Change.CanCarry(
            "a",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Trips.grams(1500)),
            OptionalInt.empty());
    List<CurvePoint> points = points(trip, earlier, List.of(injured));
    assertEquals(List.of(0, 1), points.stream().map(CurvePoint::handovers).toList());
    assertEquals(List.of(50L, 0L), points.stream().map(CurvePoint::excessThousandths).toList());
    assertEquals(List.of(40L, 20L), points.get(1).steps());
  }

  /** Two of four units are lost; nobody has to say whose: one each, 0.5 kg. */
  @Test
  void lostUnitsAreNotHandedOver() {
    Trip trip = Trips.targets(10_000, 10_000).item("u", s -> s.count(4).mass(500)).trip();
    Splits earlier = Splits.of("a", "u*2").and("b", "u*2");
    Change lost = new Change.ItemGone(PieceRef.of("u"), OptionalInt.of(2));
    assertEquals(List.of("0: [10, 10]"), curve(trip, earlier, List.of(lost)));
  }

  /** Heavier than thought and one less to carry it: one handover is forced, a second evens out. */
  @Test
  void twoKindsOfChangeAtOnce() {
    Trip trip = three().pieces(1000, 1000, 1000, 1000).trip();
    Splits earlier = Splits.of("a", "p1").and("b", "p2").and("c", "p3", "p4");
    // p3 weighs 3 kg now: p1 to b makes 2 and 4 kg; with p4 to b as well, 3 and 3 kg.
    List<Change> changes =
        List.of(
            new Change.DropsOut("a"),
            new Change.ItemWeighs(PieceRef.of("p3"), Trips.grams(3000), MassFrom.SCALE));
    assertEquals(List.of("1: [80, 40]", "2: [60, 60]"), curve(trip, earlier, changes));
  }

  /** A split that names who is not on the trip any more, and things that are gone. */
  @Test
  void anOldSplitMayNameWhatIsGone() {
    Trip trip = Trips.targets(10_000, 10_000).pieces(1000, 1000).trip();
    Split old = Splits.of("z", "p1", "gone").and("b", "p2").split();
    Rebalanced result =
        USE_CASE.rebalance(
            new Rebalance.Asked(trip, old, List.of(), Set.of(), OptionalInt.empty()), 1_000_000);
    Rebalanced.Found found = (Rebalanced.Found) result;
    assertEquals(List.of(1), found.curve().points().stream().map(p -> p.handovers()).toList());
    assertEquals(List.of(List.of("z gives “p1” to a.")), found.sentences());
  }
}
