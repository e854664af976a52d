package dev.faircarry.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.ChangeGenerator;
import dev.faircarry.oracle.Movement;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.oracle.Undoing;
import dev.faircarry.oracle.Value;
import dev.faircarry.solve.RebalanceSolver;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What must hold between a split, a change of plans, and the curve that answers it. */
class RebalanceLawsTest {
  private static final long EFFORT = 3_000_000;
  private static final TripGenerator.Shape SHAPE = TripGenerator.Shape.of(4, 3, 6);

  /** As the service: every point is read by the checker before it leaves, or the call fails. */
  private static final Rebalance USE_CASE =
      new Rebalance(RebalanceSolver::curve, new Checked(), () -> 0L);

  private int compared;

  private static Rebalanced ask(Trip trip, Split split, List<Change> changes) {
    return USE_CASE.rebalance(
        new Rebalance.Asked(trip, split, changes, Set.of(), OptionalInt.empty()), EFFORT);
  }

  /** The best split, where there is one and it is proved. */
  private static Optional<Split> best(Trip trip) {
    return SplitSolver.solve(trip, EFFORT, Watch.NONE) instanceof Outcome.Solved solved
            && solved.proof().proved()
        ? Optional.of(solved.split())
        : Optional.empty();
  }

  private static Value value(Trip trip, Split split) {
    Verdict verdict = SplitCheck.verdict(trip, split);
    return new Value(verdict.excessThousandths(), verdict.steps());
  }

  private static Value value(CurvePoint point) {
    return new Value(point.excessThousandths(), point.steps());
  }

  @Test
  void withoutAChangeTheBestSplitStays() {
    for (long seed = 0; seed < 80; seed++) {
      String where = "seed " + seed;
      Trip trip = TripGenerator.trip(seed, SHAPE);
      Optional<Split> best = best(trip);
      if (best.isPresent()) {
        Rebalanced.Found found = (Rebalanced.Found) ask(trip, best.get(), List.of());
        assertEquals(1, found.curve().points().size(), where);
        CurvePoint point = found.curve().points().get(0);
        assertEquals(0, point.handovers(), where);
        assertEquals(List.of(), point.list(), where);
        assertEquals(value(trip, best.get()), value(point), where);
        assertEquals(
            new HashSet<>(best.get().carries()), new HashSet<>(point.split().carries()), where);
        compared++;
      }
    }
    assertTrue(compared >= 50, compared + " trips");
  }

  /**
   * The best split of a trip, a change, some point of its curve, and the change taken back: the old
   * split is reached again by as many handovers as it differs in, and nothing is fairer.
   */
  @Test
  void takingAChangeBackGivesBackTheOldSplit() {
    undo(LongStream.range(0, 150));
    assertTrue(compared >= 40, compared + " changes taken back");
  }

  @Test
  @Tag("slow")
  void takingManyChangesBackGivesBackTheOldSplit() {
    undo(LongStream.range(20_000, 20_800));
    assertTrue(compared >= 200, compared + " changes taken back");
  }

  private void undo(LongStream seeds) {
    seeds.forEach(
        seed -> {
          SplittableRandom random = new SplittableRandom(seed);
          Trip trip = TripGenerator.trip(seed, SHAPE);
          Optional<Split> old = best(trip);
          if (old.isEmpty()) {
            return;
          }
          Change change = ChangeGenerator.changes(trip, 1, random).get(0);
          Optional<Change> back = Undoing.of(change, trip);
          Rebalanced there = ask(trip, old.get(), List.of(change));
          if (back.isPresent() && there instanceof Rebalanced.Found found) {
            undo("seed " + seed + " " + change, trip, old.get(), found, back.get(), random);
          }
        });
  }

  private void undo(
      String where,
      Trip trip,
      Split old,
      Rebalanced.Found there,
      Change back,
      SplittableRandom random) {
    List<CurvePoint> points = there.curve().points();
    Split between = points.get(random.nextInt(points.size())).split();
    Rebalanced again = ask(there.trip(), between, List.of(back));
    assertTrue(again instanceof Rebalanced.Found, where + ": " + again);
    Rebalanced.Found found = (Rebalanced.Found) again;
    // Somebody who comes back comes without the rules that named them.
    boolean same = Set.copyOf(found.trip().rules()).equals(Set.copyOf(trip.rules()));
    if (!same || !value(found.trip(), old).equals(value(trip, old))) {
      return;
    }
    compared++;
    int away = Movement.between(between, old, found.trip()).units();
    Optional<CurvePoint> reached = Optional.empty();
    for (CurvePoint point : found.curve().points()) {
      if (point.handovers() <= away) {
        reached = Optional.of(point);
      }
    }
    assertTrue(reached.isPresent(), where + ": none within " + away);
    assertEquals(value(trip, old), value(reached.get()), where);
    List<CurvePoint> all = found.curve().points();
    assertEquals(reached.get(), all.get(all.size() - 1), where);
    assertTrue(found.curve().complete(), where);
  }

  @Test
  void everyStateOfRandomChangesPassesTheChecker() {
    LongStream.range(0, 15).forEach(seed -> walk(seed, 5));
    assertTrue(compared >= 30, compared + " states");
  }

  @Test
  @Tag("slow")
  void everyStateOfManyRandomChangesPassesTheChecker() {
    LongStream.range(30_000, 30_100).forEach(seed -> walk(seed, 12));
    assertTrue(compared >= 500, compared + " states");
  }

  /** Changes, one after the other; some point of each curve is what is agreed on. */
  private void walk(long seed, int steps) {
    SplittableRandom random = new SplittableRandom(seed);
    Trip trip = TripGenerator.trip(seed, SHAPE);
    Optional<Split> agreed = best(trip);
    for (int step = 0; step < steps && agreed.isPresent(); step++) {
      List<Change> changes = ChangeGenerator.changes(trip, 2, random);
      String where = "seed " + seed + " step " + step + " " + changes;
      Rebalanced result = ask(trip, agreed.get(), changes);
      if (result instanceof Rebalanced.Impossible none) {
        Optional<BruteForce.Answer> all = BruteForce.answer(none.trip(), 20_000);
        assertFalse(all.isPresent() && all.get().possible(), where);
        // Such changes are thought better of.
        continue;
      }
      assertTrue(result instanceof Rebalanced.Found, where + ": " + result);
      Rebalanced.Found found = (Rebalanced.Found) result;
      states(where, agreed.get(), found);
      List<CurvePoint> points = found.curve().points();
      trip = found.trip();
      agreed = Optional.of(points.get(random.nextInt(points.size())).split());
    }
  }

  private void states(String where, Split before, Rebalanced.Found found) {
    List<CurvePoint> points = found.curve().points();
    for (int p = 0; p < points.size(); p++) {
      CurvePoint point = points.get(p);
      Verdict verdict = SplitCheck.verdict(found.trip(), point.split());
      assertTrue(verdict.keepsRules(), where + ": " + verdict.findings());
      assertEquals(verdict.steps(), point.steps(), where);
      assertEquals(verdict, found.verdicts().get(p), where);
      Movement moved = Movement.between(before, point.split(), found.trip());
      assertEquals(moved.units(), point.handovers(), where);
      assertEquals(moved.milligrams(), point.movedMilligrams(), where);
      assertEquals(point.list().size(), found.sentences().get(p).size(), where);
      if (p > 0) {
        assertTrue(points.get(p - 1).handovers() < point.handovers(), where);
        assertTrue(value(points.get(p - 1)).compareTo(value(point)) > 0, where);
      }
      compared++;
    }
    recommended(where, found);
  }

  /** No later point gains 10 thousandths of target, or of what passes the caps, by handover. */
  private static void recommended(String where, Rebalanced.Found found) {
    List<CurvePoint> points = found.curve().points();
    int chosen = found.curve().recommended();
    assertEquals(chosen, found.chosen(), where);
    int grain = found.trip().policy().grainThousandths();
    for (CurvePoint later : points.subList(chosen + 1, points.size())) {
      CurvePoint here = points.get(chosen);
      long gain =
          (here.steps().get(0) - later.steps().get(0)) * grain
              + here.excessThousandths()
              - later.excessThousandths();
      assertTrue(gain < 10L * (later.handovers() - here.handovers()), where + " at " + chosen);
    }
  }
}
