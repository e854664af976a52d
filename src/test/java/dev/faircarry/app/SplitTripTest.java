package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.fixture.Trips;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class SplitTripTest {
  private static final long SECOND = 1_000_000_000L;

  /** Two hikers of the same target, the tent bound to the first: each carries one thing. */
  private static final Trip TWO =
      Trips.targets(10_000, 10_000)
          .item("tent", s -> s.mass(5000))
          .item("pot", s -> s.mass(5000))
          .pinned("a", "tent")
          .trip();

  private static final Proof PROVED = new Proof(2, 2, 0, OptionalLong.empty(), true, 1, false);

  private static SplitTrip with(Solver solver) {
    return new SplitTrip(solver, new Checked(), () -> 0);
  }

  private static Split split(String tent, String pot) {
    return new Split(
        List.of(new Carry(tent, PieceRef.item("tent"), 1), new Carry(pot, PieceRef.item("pot"), 1)),
        List.of(),
        List.of());
  }

  @Test
  void aGoodSplitLeavesWithItsVerdict() {
    SplitResult result =
        with((trip, effort, watch) -> new Outcome.Solved(split("a", "b"), PROVED)).split(TWO, 10);
    SplitResult.Found found = assertInstanceOf(SplitResult.Found.class, result);
    // 5 kg of 10 kg in steps of 0.005: 100.
    assertEquals(List.of(100L, 100L), found.verdict().steps());
    assertTrue(found.fine());
  }

  @Test
  void aSplitThatBreaksARuleNeverLeaves() {
    SplitTrip useCase = with((trip, effort, watch) -> new Outcome.Solved(split("b", "a"), PROVED));
    assertThrows(RefusedSplit.class, () -> useCase.split(TWO, 10));
  }

  @Test
  void aSplitThatForgetsAPieceNeverLeaves() {
    Split half = new Split(List.of(new Carry("a", PieceRef.item("tent"), 1)), List.of(), List.of());
    SplitTrip useCase = with((trip, effort, watch) -> new Outcome.Solved(half, PROVED));
    assertThrows(RefusedSplit.class, () -> useCase.split(TWO, 10));
  }

  @Test
  void aBoundAboveTheSplitItselfNeverLeaves() {
    Proof tooHigh = new Proof(2, 0, 0, OptionalLong.of(101), true, 1, false);
    SplitTrip useCase = with((trip, effort, watch) -> new Outcome.Solved(split("a", "b"), tooHigh));
    assertThrows(RefusedSplit.class, () -> useCase.split(TWO, 10));
  }

  @Test
  void levelsByBoundAreThoseOfTheCheckNotOfTheSearch() {
    // Both things with one hiker: 200 steps, where 100 each are possible; no bound can say so.
    Trip free = Trips.targets(10_000, 10_000).pieces(5000, 5000).trip();
    List<Carry> both =
        free.shared().stream().map(s -> new Carry("a", PieceRef.item(s.id()), 1)).toList();
    Proof byBound = new Proof(2, 2, 2, OptionalLong.empty(), true, 1, false);
    SplitTrip useCase =
        with(
            (trip, effort, watch) ->
                new Outcome.Solved(new Split(both, List.of(), List.of()), byBound));
    SplitResult.Found found = assertInstanceOf(SplitResult.Found.class, useCase.split(free, 10));
    assertEquals(0, found.proof().provedByBound());
  }

  @Test
  void theClockStopsTheSearchAndNothingElseDoes() {
    AtomicLong now = new AtomicLong(-5);
    SplitTrip useCase =
        new SplitTrip(
            (trip, effort, watch) -> {
              now.addAndGet(ServiceLimits.CLOCK_SECONDS * SECOND - 1);
              assertEquals(Watch.Signal.GO_ON, watch.signal());
              now.incrementAndGet();
              assertEquals(Watch.Signal.STOP_BY_CLOCK, watch.signal());
              return new Outcome.Undecided(effort, true);
            },
            new Checked(),
            now::get);
    SplitResult.Undecided undecided =
        assertInstanceOf(SplitResult.Undecided.class, useCase.split(TWO, 10));
    assertTrue(undecided.cutByClock());
    assertEquals(10, undecided.effortSteps());
  }

  @Test
  void rulesThatCannotAllHoldAreAResult() {
    Trip contradictory =
        Trips.targets(10_000, 10_000)
            .item("tent", s -> s.mass(5000))
            .pinned("a", "tent")
            .barred(List.of("a"), "tent")
            .trip();
    SplitResult.Impossible impossible =
        assertInstanceOf(
            SplitResult.Impossible.class, with(SplitSolver::solve).split(contradictory, 100_000));
    assertEquals(
        List.of("a carries tent.", "Barred from carrying tent: a."), DemandWords.of(impossible));
    assertFalse(impossible.conflict().isEmpty());
  }
}
