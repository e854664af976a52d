package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.SplitReading;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.oracle.Value;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Trip;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The solver against trying every split of small trips. */
class SplitSolverOracleTest {
  private static final long EFFORT = 3_000_000;
  private static final long MOST_SPLITS = 40_000;

  private record Counts(int tried, int impossible, int overCap) {}

  @Test
  void smallTripsOfEveryKind() {
    Counts counts = check(LongStream.range(0, 150), TripGenerator.Shape.of(4, 3, 6));
    assertTrue(
        counts.tried() > 140 && counts.impossible() > 30 && counts.overCap() > 5, "" + counts);
  }

  @Test
  @Tag("slow")
  void manySmallTripsOfEveryKind() {
    Counts counts = check(LongStream.range(10_000, 14_000), TripGenerator.Shape.of(4, 4, 7));
    assertTrue(counts.tried() > 2000, "" + counts);
  }

  private static Counts check(LongStream seeds, TripGenerator.Shape shape) {
    int[] counts = new int[3];
    seeds.forEach(
        seed -> {
          Trip trip = TripGenerator.trip(seed, shape);
          Optional<BruteForce.Answer> answer = BruteForce.answer(trip, MOST_SPLITS);
          if (answer.isPresent()) {
            counts[0]++;
            counts[1] += answer.get().possible() ? 0 : 1;
            counts[2] += answer.get().best().filter(v -> v.excess() > 0).isPresent() ? 1 : 0;
            check("seed " + seed, trip, answer.get());
          }
        });
    return new Counts(counts[0], counts[1], counts[2]);
  }

  private static void check(String seed, Trip trip, BruteForce.Answer answer) {
    Outcome outcome = SplitSolver.solve(trip, EFFORT, Watch.NONE);
    if (outcome instanceof Outcome.Solved solved) {
      Optional<Value> value = SplitReading.value(trip, solved.split());
      assertTrue(value.isPresent(), seed + ": the split breaks a rule: " + solved.split());
      assertTrue(solved.proof().proved(), seed + ": not proved: " + solved.proof());
      assertEquals(answer.best(), value, seed);
    } else if (outcome instanceof Outcome.Impossible impossible) {
      assertFalse(answer.possible(), seed + ": a split exists: " + answer.example());
      conflict(seed, trip, impossible);
    } else {
      fail(seed + ": undecided");
    }
  }

  /** The named demands cannot hold together, and can as soon as one is dropped. */
  private static void conflict(String seed, Trip trip, Outcome.Impossible impossible) {
    List<Demand> conflict = impossible.conflict();
    Set<Demand> named = new HashSet<>(conflict);
    assertEquals(conflict.size(), named.size(), seed);
    Optional<BruteForce.Answer> alone =
        BruteForce.answer(trip, MOST_SPLITS, named::contains, Optional.empty());
    assertTrue(alone.isEmpty() || !alone.get().possible(), seed + ": no conflict: " + conflict);
    assertTrue(impossible.irreducible(), seed + ": not proved irreducible: " + conflict);
    for (Demand dropped : conflict) {
      Set<Demand> rest = new HashSet<>(named);
      rest.remove(dropped);
      Optional<BruteForce.Answer> freed =
          BruteForce.answer(trip, MOST_SPLITS, rest::contains, Optional.empty());
      assertTrue(
          freed.isEmpty() || freed.get().possible(),
          seed + ": " + conflict + " holds no split even without " + dropped);
    }
  }
}
