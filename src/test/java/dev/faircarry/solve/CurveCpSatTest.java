package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.oracle.CpSatCurve;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.split.CurveOutcome;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Trade-off curves of middle-sized trips after somebody drops out, against OR-Tools CP-SAT. Both
 * stop by steps of their own, so that what is compared is the same on every machine.
 */
class CurveCpSatTest {
  private static final long EFFORT = 20_000_000;
  private static final int ALL = 1_000;
  private static final double WORK = 4;

  private int trips;
  private int curves;
  private int points;

  @Test
  void fewHikers() {
    compare(Family.plain(4, 12, 5, Family.Hardness.MIXED).withRules(), 0, 3);
    compare(Family.plain(3, 9, 5, Family.Hardness.HARD), 0, 1);
    assertTrue(curves >= 2 && points >= 6, this::toString);
  }

  @Test
  @Tag("slow")
  void sixHikersTwentyPieces() {
    compare(Family.plain(6, 20, 5, Family.Hardness.MIXED).withRules(), 0, 4);
    compare(Family.plain(6, 20, 5, Family.Hardness.EASY).withRules(), 0, 2);
    assertTrue(curves >= 3 && points >= 25, this::toString);
  }

  private void compare(Family family, int from, int to) {
    for (int seed = from; seed < to; seed++) {
      String where = family + " seed " + seed;
      Trip before = FamilyTrips.trip(seed, family);
      Split agreed = ((Outcome.Solved) SplitSolver.solve(before, 2_000_000, Watch.NONE)).split();
      String gone = before.hikers().get(seed % before.hikers().size()).id();
      Trip trip =
          ((Changed.Made) TripChanging.apply(before, List.of(new Change.DropsOut(gone)))).trip();
      CurveOutcome outcome = RebalanceSolver.curve(trip, agreed, Set.of(), ALL, EFFORT, Watch.NONE);
      if (outcome instanceof CurveOutcome.Found found) {
        compare(where, found, CpSatCurve.byWork(trip, agreed, ALL, WORK));
        trips++;
      }
    }
  }

  private void compare(String where, CurveOutcome.Found found, CpSatCurve.Answer other) {
    SortedMap<Integer, List<Long>> ours = new TreeMap<>();
    boolean withinCaps = true;
    for (CurvePoint point : found.curve().points()) {
      withinCaps &= point.excessThousandths() == 0;
      List<Long> theirs = other.points().get(point.handovers());
      if (point.proof().proved() && theirs != null) {
        assertEquals(theirs, point.steps(), where + " at " + point.handovers());
        points++;
      }
    }
    for (CurvePoint point : found.curve().points()) {
      ours.put(point.handovers(), point.steps());
    }
    if (withinCaps && !other.points().isEmpty()) {
      assertEquals(other.points().firstKey(), ours.firstKey(), where + ": the fewest handovers");
    }
    if (found.curve().complete() && other.complete() && withinCaps) {
      assertEquals(other.points(), ours, where);
      curves++;
    }
  }

  @Override
  public String toString() {
    return trips + " trips, " + curves + " whole curves, " + points + " points";
  }
}
