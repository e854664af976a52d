package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.demo.DemoTrips;
import dev.faircarry.solve.RebalanceSolver;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where nothing has to change hands, the first point is no worse than what was given. */
class AsGivenTest {
  private static final Rebalance USE_CASE =
      new Rebalance(RebalanceSolver::curve, new Checked(), () -> 0L);

  private static Split split(Trip trip, long effort) {
    return assertInstanceOf(Outcome.Solved.class, SplitSolver.solve(trip, effort, Watch.NONE))
        .split();
  }

  /**
   * A trip on which somebody leaves early: of the given split the engine keeps who carries what,
   * but not who takes over what at that camp.
   */
  @ParameterizedTest
  @ValueSource(longs = {1_000, 20_000, 100_000})
  void withoutAChangeTheSplitIsTheGivenOne(long effort) {
    Trip trip = DemoTrips.trip("high-tarns");
    Split given = split(trip, effort);
    Verdict verdict = SplitCheck.verdict(trip, given);
    Rebalanced.Found found =
        assertInstanceOf(
            Rebalanced.Found.class,
            USE_CASE.rebalance(
                new Rebalance.Asked(trip, given, List.of(), Set.of(), OptionalInt.of(0)), 300_000));
    CurvePoint first = found.curve().points().get(0);
    assertEquals(0, first.handovers());
    assertEquals(0, found.chosen());
    assertEquals(List.of(), first.list());
    assertEquals(given, first.split());
    assertEquals(verdict.steps(), first.steps());
    List<Long> before = first.steps();
    for (CurvePoint point : found.curve().points().subList(1, found.curve().points().size())) {
      assertTrue(fairer(point.steps(), before), found.curve()::toString);
      before = point.steps();
    }
  }

  private static boolean fairer(List<Long> steps, List<Long> than) {
    for (int i = 0; i < steps.size(); i++) {
      if (!steps.get(i).equals(than.get(i))) {
        return steps.get(i) < than.get(i);
      }
    }
    return false;
  }
}
