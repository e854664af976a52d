package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.access.Sight;
import dev.faircarry.check.Essentials;
import dev.faircarry.fixture.Trips;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Two hikers of 10 kg target and pieces of 3, 2, 2 and 1 kg: 4 and 4 kg, a ratio of 0.400 and 80
 * steps of 0.005, is the fairest, as it is the mean.
 */
class CheckDepartureTest {
  private final Trip trip = Trips.targets(10_000, 10_000).pieces(3000, 2000, 2000, 1000).trip();
  private final Split fair = split("a p1", "a p4", "b p2", "b p3");
  private final Split unfair = split("a p1", "a p2", "b p3", "b p4");

  private static Split split(String... carries) {
    return new Split(
        List.of(carries).stream()
            .map(c -> new Carry(c.substring(0, 1), PieceRef.item(c.substring(2)), 1))
            .toList(),
        List.of(),
        List.of());
  }

  private static CheckDeparture with(Solver solver) {
    return new CheckDeparture(new SplitTrip(solver, new Checked(), () -> 0L));
  }

  private CheckDeparture.Asked asked(Split split) {
    return new CheckDeparture.Asked(trip, split, Optional.empty(), Essentials.DEFAULT);
  }

  private Optional<BestKnown> best(Solver solver, Split split) {
    return with(solver).check(asked(split), 1_000_000).best();
  }

  @Test
  void theFairestIsKnownToBe() {
    BestKnown best = best(SplitSolver::solve, fair).orElseThrow();
    assertTrue(best.asFair() && best.proved());
    assertEquals(80, best.worst().orElseThrow().steps());
    // 79 steps reach up to 0.395, and no split stays there.
    assertEquals(OptionalLong.of(395), best.boundThousandths());
    assertEquals("No split is fairer: that is proved.", best.words());
  }

  @Test
  void howFarAnotherIsFromTheFairest() {
    BestKnown best = best(SplitSolver::solve, unfair).orElseThrow();
    assertFalse(best.asFair());
    assertTrue(best.proved());
    assertEquals(80, best.worst().orElseThrow().steps());
    assertTrue(
        best.words().startsWith("The fairest split has its heaviest load at 0.400 of target ("),
        best.words());
  }

  /** A search that ended early claims no more than it knows. */
  @Test
  void whatAShortSearchDoesNotKnow() {
    Proof none = new Proof(2, 0, 0, OptionalLong.of(71), true, 5, true);
    Solver poor = (t, steps, watch) -> new Outcome.Solved(unfair, none);
    BestKnown better = best(poor, fair).orElseThrow();
    assertTrue(better.asFair(), "it is fairer than what was found");
    assertFalse(better.proved());
    assertEquals(80, better.worst().orElseThrow().steps());
    assertEquals(
        "A short search found nothing fairer. No split brings the heaviest load to 0.350 of target"
            + " or below. The safety clock ended the search.",
        better.words());
    BestKnown same = best(poor, unfair).orElseThrow();
    assertTrue(same.asFair());
    assertFalse(same.proved());
    Solver good = (t, steps, watch) -> new Outcome.Solved(fair, none);
    BestKnown worse = best(good, unfair).orElseThrow();
    assertTrue(
        worse.words().startsWith("A fairer split that a short search found has its heaviest load"),
        worse.words());
  }

  @Test
  void nothingIsSaidWhereNothingWasFoundOrARuleIsBroken() {
    Solver nothing = (t, steps, watch) -> new Outcome.Undecided(steps, false);
    assertEquals(Optional.empty(), best(nothing, fair));
    assertEquals(Optional.empty(), best(SplitSolver::solve, split("a p1")));
  }

  /** Nothing of a search could be told, so none is made. */
  @Test
  void whereABodyMassIsHiddenNothingIsSearchedFor() {
    Solver unasked =
        (t, steps, watch) -> {
          throw new AssertionError("a search");
        };
    Sight some = new Sight(Set.of("a"));
    CheckDeparture.Answer answer = with(unasked).check(asked(fair), 1_000_000, some);
    assertEquals(Optional.empty(), answer.best());
    CheckDeparture.Asked since =
        new CheckDeparture.Asked(
            trip, fair, Optional.of(Trips.targets(9_000).trip()), Essentials.DEFAULT);
    assertEquals(
        answer.departure().findings(),
        with(unasked).check(since, 1, some).departure().findings(),
        "what has changed may be a hidden mass");
    assertTrue(
        with(SplitSolver::solve).check(asked(fair), 1_000_000, Sight.ALL).best().isPresent());
  }
}
