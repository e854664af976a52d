package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.faircarry.check.ClaimCheck;
import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.ChangeGenerator;
import dev.faircarry.oracle.Movement;
import dev.faircarry.oracle.RandomSplits;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.oracle.Value;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Curve;
import dev.faircarry.split.CurveOutcome;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Handover;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The trade-off curve of small trips after random changes, against trying every split: it has just
 * the numbers of handovers at which the best split within so many gets fairer, and those splits.
 */
class CurveOracleTest {
  private static final long EFFORT = 8_000_000;
  private static final long MOST_SPLITS = 40_000;

  /** A trip after changes, who carried what before them, and what is packed already. */
  private record Question(Trip trip, Split earlier, Set<PieceRef> frozen, List<Change> changes) {}

  private int compared;
  private int impossible;
  private int points;
  private int forced;
  private int overCap;

  @Test
  void everyPointOfSmallTrips() {
    LongStream.range(0, 60).forEach(seed -> check(seed, TripGenerator.Shape.of(4, 3, 6)));
    assertTrue(compared >= 55 && points >= 60 && forced >= 10, this::toString);
  }

  @Test
  @Tag("slow")
  void everyPointOfManySmallTrips() {
    LongStream.range(1_000, 1_900).forEach(seed -> check(seed, TripGenerator.Shape.of(4, 3, 7)));
    assertTrue(compared >= 850 && points >= 950 && forced >= 180, this::toString);
    assertTrue(impossible >= 300 && overCap >= 100, this::toString);
  }

  private void check(long seed, TripGenerator.Shape shape) {
    Question asked = question(seed, shape);
    Optional<BruteForce.Answer> all =
        BruteForce.answer(
            asked.trip(),
            MOST_SPLITS,
            demand -> true,
            Optional.of(asked.earlier()),
            asked.frozen());
    if (all.isEmpty()) {
      return;
    }
    compared++;
    String where = "seed " + seed + " " + asked.changes();
    CurveOutcome outcome =
        RebalanceSolver.curve(
            asked.trip(), asked.earlier(), asked.frozen(), 1_000, EFFORT, Watch.NONE);
    if (outcome instanceof CurveOutcome.Impossible) {
      assertFalse(all.get().possible(), where);
      impossible++;
    } else if (outcome instanceof CurveOutcome.Found found) {
      assertTrue(all.get().possible(), where);
      compare(where, asked, all.get(), found.curve());
    } else {
      fail(where + ": undecided");
    }
  }

  private static Question question(long seed, TripGenerator.Shape shape) {
    SplittableRandom random = new SplittableRandom(seed);
    Trip before = TripGenerator.trip(seed, shape);
    Outcome agreed = SplitSolver.solve(before, 200_000, Watch.NONE);
    // Now and then a split made by hand, which need not keep the rules.
    Split earlier =
        agreed instanceof Outcome.Solved solved && random.nextInt(3) > 0
            ? solved.split()
            : RandomSplits.sound(before, random);
    List<Change> changes = ChangeGenerator.changes(before, 2, random);
    Trip now = ((Changed.Made) TripChanging.apply(before, changes)).trip();
    Set<PieceRef> frozen = random.nextInt(4) == 0 ? someFrozen(now, earlier, random) : Set.of();
    return new Question(now, earlier, frozen, changes);
  }

  /** Up to two pieces of which nothing has gone. */
  private static Set<PieceRef> someFrozen(Trip now, Split earlier, SplittableRandom random) {
    List<PieceRef> all = new ArrayList<>();
    for (Movement.OfPiece piece : Movement.pieces(earlier, earlier, now)) {
      int then =
          earlier.carries().stream()
              .filter(c -> c.piece().equals(piece.piece()))
              .mapToInt(Carry::units)
              .sum();
      if (then > 0 && then <= Movement.units(now, piece.piece())) {
        all.add(piece.piece());
      }
    }
    Set<PieceRef> frozen = new HashSet<>();
    for (int k = 0; k < 2 && !all.isEmpty(); k++) {
      frozen.add(all.get(random.nextInt(all.size())));
    }
    return frozen;
  }

  private void compare(String where, Question asked, BruteForce.Answer all, Curve curve) {
    Map<Integer, Value> expected = front(all);
    Map<Integer, Value> found = new LinkedHashMap<>();
    for (CurvePoint point : curve.points()) {
      found.put(point.handovers(), new Value(point.excessThousandths(), point.steps()));
    }
    assertEquals(expected, found, where);
    assertTrue(curve.complete(), where);
    for (CurvePoint point : curve.points()) {
      point(where + " at " + point.handovers(), asked, point);
    }
    points += found.size();
    forced += curve.points().get(0).handovers() > 0 ? 1 : 0;
    overCap += curve.points().get(0).excessThousandths() > 0 ? 1 : 0;
  }

  /** The numbers of handovers at which the best split within so many gets fairer. */
  private static Map<Integer, Value> front(BruteForce.Answer all) {
    Map<Integer, Value> front = new LinkedHashMap<>();
    Optional<Value> last = Optional.empty();
    for (int handovers : all.byHandovers().keySet()) {
      Value within = all.bestWithin(handovers).orElseThrow();
      if (last.isEmpty() || within.compareTo(last.get()) < 0) {
        front.put(handovers, within);
        last = Optional.of(within);
      }
    }
    return front;
  }

  private static void point(String where, Question asked, CurvePoint point) {
    Verdict verdict = SplitCheck.verdict(asked.trip(), point.split());
    assertTrue(verdict.keepsRules(), where + ": " + verdict.findings());
    assertEquals(verdict.steps(), point.steps(), where);
    assertEquals(verdict.excessThousandths(), point.excessThousandths(), where);
    assertEquals(List.of(), ClaimCheck.of(asked.trip(), verdict, point.proof()), where);
    assertTrue(point.proof().proved(), where + ": " + point.proof());
    moved(where, asked, point);
  }

  private static void moved(String where, Question asked, CurvePoint point) {
    Movement moved = Movement.between(asked.earlier(), point.split(), asked.trip());
    assertEquals(moved.units(), point.handovers(), where);
    assertEquals(moved.milligrams(), point.movedMilligrams(), where);
    Set<String> named = new HashSet<>();
    point.list().forEach(h -> Collections.addAll(named, h.from(), h.to()));
    assertEquals(named.size(), point.people(), where);
    assertTrue(moved.people().containsAll(named), where + ": " + named + " of " + moved);
    assertTrue(!moved.certain() || moved.people().equals(named), where + ": " + moved);
    for (Movement.OfPiece piece : Movement.pieces(asked.earlier(), point.split(), asked.trip())) {
      List<Handover> list =
          point.list().stream().filter(h -> h.piece().equals(piece.piece())).toList();
      assertEquals(piece.units(), list.stream().mapToInt(Handover::units).sum(), where);
      List<String> givers = new ArrayList<>(piece.givers());
      List<String> takers = new ArrayList<>(piece.takers());
      for (Handover handover : list) {
        for (int u = 0; u < handover.units(); u++) {
          assertTrue(givers.remove(handover.from()), where + ": " + handover);
          assertTrue(takers.remove(handover.to()), where + ": " + handover);
        }
      }
      stays(where, asked, piece);
    }
  }

  private static void stays(String where, Question asked, Movement.OfPiece piece) {
    if (asked.frozen().contains(piece.piece())) {
      Set<String> present =
          asked.trip().hikers().stream().map(Hiker::id).collect(Collectors.toSet());
      assertTrue(piece.givers().stream().noneMatch(present::contains), where + ": " + piece);
    }
  }

  @Override
  public String toString() {
    return compared
        + " trips, "
        + impossible
        + " impossible, "
        + points
        + " points, "
        + forced
        + " with forced handovers, "
        + overCap
        + " over caps";
  }
}
