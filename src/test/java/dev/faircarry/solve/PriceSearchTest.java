package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.CpSatOracle;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.oracle.Feature;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.oracle.Value;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Trip;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Wishes decided by prices, against trying every split of small trips, and against CP-SAT. */
class PriceSearchTest {
  private static final long MOST_SPLITS = 40_000;
  private static final long STEPS = 20_000_000;
  private static final int NODES = 400;

  private int trips;
  private int impossible;
  private int found;
  private int notFound;
  private int none;
  private int unknown;

  @Test
  void smallTripsOfEveryKind() {
    check(LongStream.range(0, 260), TripGenerator.Shape.of(4, 3, 6));
    assertTrue(trips > 150 && impossible > 15, toString());
    assertEquals(0, unknown + notFound, toString());
  }

  @Test
  @Tag("slow")
  void manySmallTripsOfEveryKind() {
    check(LongStream.range(20_000, 24_000), TripGenerator.Shape.of(4, 4, 7));
    assertTrue(trips > 2000, toString());
    assertEquals(0, notFound, toString());
    // Where nothing can be split there may be more cases than are looked into.
    assertTrue(unknown * 1000 < none, toString());
  }

  @Override
  public String toString() {
    return trips
        + " trips, "
        + impossible
        + " impossible, "
        + found
        + " found, "
        + notFound
        + " not, "
        + none
        + " none, "
        + unknown
        + " unknown";
  }

  private void check(LongStream seeds, TripGenerator.Shape shape) {
    seeds.forEach(
        seed -> {
          Trip trip = TripGenerator.trip(seed, shape.without(Feature.LEAVERS));
          Model m = ModelBuilder.of(trip);
          if (!m.contradictory) {
            BruteForce.answer(trip, MOST_SPLITS)
                .ifPresent(answer -> check(m, answer.best(), new SplittableRandom(seed), seed));
          }
        });
  }

  private void check(Model m, Optional<Value> best, SplittableRandom random, long seed) {
    trips++;
    boolean seesAll = seesAll(m) && best.filter(value -> value.excess() > 0).isEmpty();
    KnownBundles known = new KnownBundles(m);
    if (best.isEmpty()) {
      impossible++;
      int[] anything = new int[m.mornings()];
      Arrays.fill(anything, everythingWithOne(m));
      count(m, Wish.overall(m.days, anything, 1_000_000), known, seesAll, "seed " + seed);
      return;
    }
    int[] list = best.get().steps().stream().mapToInt(Math::toIntExact).toArray();
    long excess = best.get().excess();
    // First an easier wish, so that bundles of one wish are taken over to the next.
    int[] weaker = list.clone();
    Arrays.setAll(weaker, k -> list[k] + random.nextInt(1 + list[k] / 4));
    Steps.sortDescending(weaker);
    find(m, Wish.overall(m.days, weaker, excess), known, seesAll, "weaker, seed " + seed);
    find(m, Wish.overall(m.days, list, excess), known, seesAll, "seed " + seed);
    for (int level = 0; level < list.length; level++) {
      if (list[level] > 0) {
        Wish fairer = Wish.overall(m.days, Steps.fairerAt(list, level), excess);
        count(m, fairer, known, seesAll, "seed " + seed + " level " + level);
      }
    }
  }

  /**
   * Own kit of a is at step 100, and of b the piece is at step 60, in steps of 5 thousandths of
   * 1000 g. That a is above a lower value counts even where a holds nothing.
   */
  @Test
  void ownKitAloneIsAboveAValue() {
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(1000).kit("quilt", 500))
            .hiker("b", h -> h.target(1000))
            .pieces(300)
            .trip();
    Model m = ModelBuilder.of(trip);
    KnownBundles known = new KnownBundles(m);
    find(m, Wish.overall(1, new int[] {100, 60}, 0), known, true, "as it is");
    assertEquals(1, found);
    for (int[] fairer : new int[][] {{100, 59}, {99, 99}, {99, 60}}) {
      count(m, Wish.overall(1, fairer, 0), known, true, Arrays.toString(fairer));
    }
    assertEquals(3, none);
  }

  /** Looks for what there is. */
  private void find(Model m, Wish wish, KnownBundles known, boolean seesAll, String where) {
    State state = new State(m);
    GroupSearch.Result result = search(state, wish, known);
    assertNotEquals(GroupSearch.Result.NONE, result, where);
    if (result == GroupSearch.Result.FOUND) {
      found++;
      assertTrue(m.blocks.stream().allMatch(block -> state.held(block.index())), where);
      assertEquals(0, state.broken(), where);
      assertTrue(Steps.within(state.list(), wish.steps()[0]), where);
      assertTrue(state.totalExcess <= wish.excessLimit(), where);
      for (Block block : m.blocks) {
        assertTrue(block.allowed()[0][state.holder[block.index()][0]], where);
      }
    } else if (seesAll) {
      notFound++;
    }
  }

  /** Looks for what there is not. */
  private void count(Model m, Wish wish, KnownBundles known, boolean seesAll, String where) {
    State state = new State(m);
    GroupSearch.Result result = search(state, wish, known);
    assertNotEquals(GroupSearch.Result.FOUND, result, where);
    assertArrayEquals(new State(m).list(), state.list(), where);
    if (result == GroupSearch.Result.NONE) {
      none++;
    } else if (seesAll) {
      unknown++;
    }
  }

  private static GroupSearch.Result search(State state, Wish wish, KnownBundles known) {
    Effort effort = new Effort(Long.MAX_VALUE / 2, Watch.NONE);
    return new PriceSearch(state, wish, known, effort).search(STEPS, NODES);
  }

  private static int everythingWithOne(Model m) {
    int highest = 0;
    for (int i = 0; i < m.hikers; i++) {
      for (int d = 0; d < m.days; d++) {
        highest = Math.max(highest, m.step(i, d, m.leastTotal[d]));
      }
    }
    return highest;
  }

  /** Whether prices see every rule: containers to hand out and needs met by parts they do not. */
  private static boolean seesAll(Model m) {
    boolean shared =
        m.blocks.stream()
            .anyMatch(
                block -> Arrays.stream(block.innerCount()).flatMapToInt(Arrays::stream).sum() > 0);
    boolean byParts = false;
    for (Model.Need need : m.needs) {
      for (int item = 0; item < m.partsOfItem.length; item++) {
        byParts |= need.covering()[item] && m.partsOfItem[item] > 0;
      }
    }
    return !shared && !byParts;
  }

  /** The first level of trips that are too large for trying everything. */
  @Test
  @Tag("slow")
  void firstLevelsOfLargerTrips() {
    Family family = new Family(8, 40, 5, 5, Family.Hardness.MIXED, true);
    int both = 0;
    for (long seed = 0; seed < 3; seed++) {
      Trip trip = FamilyTrips.trip(seed, family);
      String where = family + " seed " + seed;
      CpSatOracle.Answer other = CpSatOracle.leximinByWork(trip, 20);
      Outcome.Solved solved = (Outcome.Solved) SplitSolver.solve(trip, 20_000_000, Watch.NONE);
      long first = SplitCheck.verdict(trip, solved.split()).steps().get(0);
      assertTrue(other.bound() <= first, where);
      if (solved.proof().provedLevels() > 0) {
        assertTrue(other.best() < 0 || first <= other.best(), where);
        if (other.levels() > 0) {
          both++;
          assertEquals(other.steps().get(0), first, where);
        }
      }
    }
    assertTrue(both > 0, "proved by both: " + both);
  }
}
