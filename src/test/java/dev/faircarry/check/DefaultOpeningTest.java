package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.Feature;
import dev.faircarry.oracle.RandomSplits;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A split made by hand need not say whose units are opened when. */
class DefaultOpeningTest {

  /** Three days, two units a day of five: 2, 2, 1. A unit of 10 g leaves 1 g. */
  private static Trips meals() {
    return Trips.days(3)
        .hiker("a", h -> h.target(9000).leavesAfter(2))
        .hiker("b", h -> h.target(9000))
        .item("u", s -> s.count(5).mass(10).perDay(2, 1));
  }

  private static Completed completed(Trips trips, Splits split) {
    return SplitCheck.completed(trips.trip(), split.split());
  }

  private static void keepsRules(Trips trips, Split split) {
    assertEquals(
        List.of(),
        SplitCheck.verdict(trips.trip(), split).findings().stream()
            .filter(f -> f.severity() == Severity.STOP)
            .toList());
  }

  /** Day 1: 30 g against 20 g, then 21 against 20. Day 2: 12 against 20, then 12 against 11. */
  @Test
  void theHeaviestForItsTargetOpensFirst() {
    Completed completed = completed(meals(), Splits.of("a", "u*3").and("b", "u*2"));
    assertEquals(
        List.of(
            new Opened(1, "u", "a", 2),
            new Opened(2, "u", "a", 1),
            new Opened(2, "u", "b", 1),
            new Opened(3, "u", "b", 1)),
        completed.split().opened());
    keepsRules(meals(), completed.split());
    Finding said = completed.assumptions().get(0);
    assertEquals(FindingCode.OPENING_PLAN_ASSUMED, said.code());
    assertEquals(Severity.ADVICE, said.severity());
    assertEquals(List.of(PieceRef.item("u")), said.pieces());
    assertEquals(1, completed.assumptions().size());
  }

  /** With a target of 3 kg the 20 g of b are more of it than the 30 g of a. */
  @Test
  void heavierIsMeantForTheTarget() {
    Trips trips =
        Trips.days(1)
            .hiker("a", h -> h.target(9000))
            .hiker("b", h -> h.target(3000))
            .item("u", s -> s.count(5).mass(10).perDay(1, 1));
    assertEquals(
        List.of(new Opened(1, "u", "b", 1)),
        completed(trips, Splits.of("a", "u*3").and("b", "u*2")).split().opened());
  }

  /** Of the two that a has left on day 2, one is to be handed to b, who then opens it on day 3. */
  @Test
  void whatIsHandedOnAtTheCampStaysClosed() {
    Completed completed =
        completed(meals(), Splits.of("a", "u*4").and("b", "u").handed(2, "a", "b", "u", 1));
    assertEquals(
        List.of(
            new Opened(1, "u", "a", 2),
            new Opened(2, "u", "a", 1),
            new Opened(2, "u", "b", 1),
            new Opened(3, "u", "b", 1)),
        completed.split().opened());
    keepsRules(meals(), completed.split());
  }

  @Test
  void anItemWithAnEntryOfItsOwnIsLeftAsItIs() {
    Split split = Splits.of("a", "u*3").and("b", "u*2").opened(1, "u", "a", 1).split();
    Completed completed = SplitCheck.completed(meals().trip(), split);
    assertSame(split, completed.split());
    assertEquals(List.of(), completed.assumptions());
  }

  @Test
  void nothingIsAssumedWhereNothingIsUsedByTheDay() {
    Split split = Splits.of("a", "p1").split();
    Completed completed = SplitCheck.completed(Trips.targets(9000).pieces(10).trip(), split);
    assertSame(split, completed.split());
  }

  /** Units that nobody carries cannot be opened; the verdict says so. */
  @Test
  void tooFewUnitsAreNoCrash() {
    Trip trip = meals().trip();
    Completed completed = SplitCheck.completed(trip, Splits.of("a", "u").split());
    assertEquals(List.of(new Opened(1, "u", "a", 1)), completed.split().opened());
    assertTrue(
        SplitCheck.verdict(trip, completed.split()).findings().stream()
            .anyMatch(f -> f.code() == FindingCode.OPENING_PLAN_WRONG));
  }

  /** Where nobody leaves, any division of the units has an opening plan. */
  @Test
  void whereNobodyLeavesAPlanIsAlwaysFound() {
    for (long seed = 1; seed <= 60; seed++) {
      TripGenerator.Shape shape = TripGenerator.Shape.of(3, 3, 6).without(Feature.LEAVERS);
      Trip trip = TripGenerator.trip(seed, shape);
      Split sound = RandomSplits.sound(trip, new SplittableRandom(seed));
      Split silent = new Split(sound.carries(), List.of(), List.of());
      Split completed = SplitCheck.completed(trip, silent).split();
      assertEquals(
          List.of(),
          SplitCheck.verdict(trip, completed).findings().stream()
              .filter(f -> f.code() == FindingCode.OPENING_PLAN_WRONG)
              .toList(),
          "seed " + seed);
    }
  }
}
