package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import dev.faircarry.solve.RebalanceSolver;
import dev.faircarry.split.Carry;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.ChangeFault;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Three hikers of 10 kg target; a has 6 kg, b 6 kg, c 5 kg and 1 kg. When a does not come, 18 kg
 * are left for two. One handover is forced: 12 and 6 kg, worst ratio 1.2. With a second, 11 and 7
 * kg, worst 1.1, and no division of 6, 6, 5, 1 is better.
 */
class RebalanceTest {
  private final Trip trip =
      Trips.targets(10_000, 10_000, 10_000).pieces(6000, 6000, 5000, 1000).trip();
  private final Split split = split("a p1", "b p2", "c p3", "c p4");
  private final Rebalance useCase = new Rebalance(RebalanceSolver::curve, new Checked(), () -> 0L);

  private static Split split(String... carries) {
    return new Split(
        List.of(carries).stream()
            .map(c -> new Carry(c.substring(0, 1), PieceRef.item(c.substring(2)), 1))
            .toList(),
        List.of(),
        List.of());
  }

  private Rebalanced ask(List<Change> changes, Set<PieceRef> frozen, OptionalInt most) {
    return useCase.rebalance(new Rebalance.Asked(trip, split, changes, frozen, most), 1_000_000);
  }

  private Rebalanced.Found found(List<Change> changes, Set<PieceRef> frozen, OptionalInt most) {
    Rebalanced result = ask(changes, frozen, most);
    assertTrue(result instanceof Rebalanced.Found, result::toString);
    return (Rebalanced.Found) result;
  }

  private static List<Integer> handovers(Rebalanced.Found found) {
    return found.curve().points().stream().map(CurvePoint::handovers).toList();
  }

  private static List<Long> worstSteps(Rebalanced.Found found) {
    return found.curve().points().stream().map(p -> p.steps().get(0)).toList();
  }

  private static final List<Change> WITHOUT_A = List.of(new Change.DropsOut("a"));

  @Test
  void theCurveOfADropOut() {
    Rebalanced.Found found = found(WITHOUT_A, Set.of(), OptionalInt.empty());
    assertEquals(List.of(1, 2), handovers(found));
    assertEquals(List.of(240L, 220L), worstSteps(found));
    assertTrue(found.curve().complete());
    assertEquals(1, found.chosen());
    assertEquals("More than 2 handovers gain nothing that was found.", found.reason());
    assertTrue(
        found.sentences().get(0).get(0).startsWith("a gives “p1” to "),
        found.sentences()::toString);
  }

  @Test
  void aBoundPicksAPoint() {
    Rebalanced.Found found = found(WITHOUT_A, Set.of(), OptionalInt.of(1));
    assertEquals(0, found.chosen());
    assertEquals("The fairest with at most 1 handover.", found.reason());
    assertEquals(
        "There is none with at most 0 handovers; this one has the fewest there can be.",
        found(WITHOUT_A, Set.of(), OptionalInt.of(0)).reason());
  }

  @Test
  void whatIsPackedStays() {
    Rebalanced.Found found =
        found(
            WITHOUT_A,
            Set.of(PieceRef.item("p2"), PieceRef.item("p3"), PieceRef.item("p4")),
            OptionalInt.empty());
    assertEquals(List.of(1), handovers(found));
  }

  @Test
  void noChangeOfAFairSplitMovesNothing() {
    Rebalanced.Found found = found(List.of(), Set.of(), OptionalInt.empty());
    assertEquals(List.of(0), handovers(found));
    assertEquals(
        Set.copyOf(split.carries()), Set.copyOf(found.curve().points().get(0).split().carries()));
  }

  @Test
  void twoChangesAtOnce() {
    // p1 stays at home with a: nothing is forced, b has 6 kg, c 5 and 1.
    Rebalanced.Found found =
        found(
            List.of(
                new Change.DropsOut("a"),
                new Change.ItemGone(PieceRef.item("p1"), OptionalInt.empty())),
            Set.of(),
            OptionalInt.empty());
    assertEquals(List.of(0), handovers(found));
    assertEquals(List.of(120L), worstSteps(found));
  }

  @Test
  void whatCannotBeIsSaid() {
    Rebalanced refused = ask(List.of(new Change.DropsOut("z")), Set.of(), OptionalInt.empty());
    assertEquals(
        ChangeFault.Kind.UNKNOWN_HIKER, ((Rebalanced.Refused) refused).faults().get(0).kind());
    Rebalanced unfit =
        ask(
            List.of(new Change.DropsOut("a"), new Change.DropsOut("b"), new Change.DropsOut("c")),
            Set.of(),
            OptionalInt.empty());
    assertTrue(unfit instanceof Rebalanced.Unfit, unfit::toString);
  }

  @Test
  void aPackedPieceCanMakeRulesImpossible() {
    Rebalanced result =
        ask(
            List.of(
                new Change.RuleAdded(
                    new dev.faircarry.trip.Rule.Pinned("new", List.of(PieceRef.item("p2")), "c"))),
            Set.of(PieceRef.item("p2")),
            OptionalInt.empty());
    assertTrue(result instanceof Rebalanced.Impossible, result::toString);
    List<Demand> conflict = ((Rebalanced.Impossible) result).conflict();
    assertEquals(
        Set.of(new Demand.OfRule("new"), new Demand.OfFrozen(PieceRef.item("p2"))),
        Set.copyOf(conflict));
    DemandWords words = new DemandWords(trip);
    assertEquals(
        "“p2” is packed and stays where it is.",
        words.words(new Demand.OfFrozen(PieceRef.item("p2"))));
  }

  @Test
  void everyHikersCaseIsShort() {
    List<IfOneStaysHome.Case> cases = new IfOneStaysHome(useCase).cases(trip, split, 1_000_000);
    assertEquals(List.of("a", "b", "c"), cases.stream().map(c -> c.hiker()).toList());
    for (IfOneStaysHome.Case each : cases) {
      assertTrue(each.text().startsWith("If " + each.hiker() + " does not come:\n"), each::text);
      assertTrue(each.text().length() < 200, each::text);
    }
    assertTrue(cases.get(0).text().contains("110 % of target"), cases.get(0)::text);
  }
}
