package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.BruteForce;
import dev.faircarry.oracle.Movement;
import dev.faircarry.oracle.RandomSplits;
import dev.faircarry.oracle.TripGenerator;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * The hard rules as a constraint model: a split is found where trying everything finds one, and its
 * rules are kept; within a number of handovers too.
 */
class RuleModelTest {
  private static final long MOST_SPLITS = 20_000;
  private static final long NODES = 1_000_000;

  private static final List<TripGenerator.Shape> SHAPES =
      List.of(TripGenerator.Shape.of(3, 3, 6), TripGenerator.Shape.of(4, 1, 6));

  private static Effort effort() {
    return new Effort(Long.MAX_VALUE / 4, Watch.NONE);
  }

  private static void keepsRules(String where, Trip trip, State state) {
    Verdict verdict = SplitCheck.verdict(trip, SplitOf.write(state.m, state.holder));
    assertTrue(verdict.keepsRules(), where + ": " + verdict.findings());
    assertEquals(0, state.broken(), where);
  }

  @Test
  void thereIsASplitWhereTryingEverythingFindsOne() {
    int possible = 0;
    int impossible = 0;
    for (long seed = 0; seed < 300; seed++) {
      String where = "seed " + seed;
      Trip trip = TripGenerator.trip(seed, SHAPES.get((int) (seed % SHAPES.size())));
      Optional<BruteForce.Answer> all = BruteForce.answer(trip, MOST_SPLITS);
      if (all.isEmpty()) {
        continue;
      }
      State state = new State(ModelBuilder.of(trip));
      RuleModel.Verdict found = RuleModel.find(state, NODES, effort());
      if (all.get().possible()) {
        assertEquals(RuleModel.Verdict.FOUND, found, where);
        keepsRules(where, trip, state);
        possible++;
      } else {
        assertEquals(RuleModel.Verdict.NONE, found, where);
        impossible++;
      }
    }
    assertTrue(possible > 100 && impossible > 40, possible + " possible, " + impossible + " not");
  }

  @Test
  void withinAsFewHandoversAsTryingEverythingNeeds() {
    int compared = 0;
    int forced = 0;
    for (long seed = 0; seed < 150; seed++) {
      Trip trip = TripGenerator.trip(seed, SHAPES.get((int) (seed % SHAPES.size())));
      Split earlier = RandomSplits.sound(trip, new SplittableRandom(seed));
      Optional<BruteForce.Answer> all =
          BruteForce.answer(trip, MOST_SPLITS, demand -> true, Optional.of(earlier));
      if (all.isEmpty() || !all.get().possible()) {
        continue;
      }
      int least = all.get().byHandovers().firstKey();
      Model model = ModelBuilder.of(trip, demand -> true, earlier, Set.of());
      Moves moves = new Moves(model, earlier);
      for (int most = 0; most <= least; most++) {
        String where = "seed " + seed + " within " + most;
        State state = new State(model);
        RuleModel.Verdict found =
            RuleModel.find(state, Optional.of(Budget.of(moves, most)), NODES, effort());
        if (most < least) {
          assertEquals(RuleModel.Verdict.NONE, found, where);
        } else {
          assertEquals(RuleModel.Verdict.FOUND, found, where);
          keepsRules(where, trip, state);
          Split split = SplitOf.write(model, state.holder);
          assertEquals(least, Movement.between(earlier, split, trip).units(), where);
        }
      }
      compared++;
      forced += least > 0 ? 1 : 0;
    }
    assertTrue(compared > 70 && forced > 20, compared + " trips, " + forced + " with handovers");
  }

  /**
   * By hand: four equal units, one with a and three with b, who may now carry one thing only. Three
   * go to a, who has two more than before: two handovers, and within one there is none.
   */
  @Test
  void unitsThatGoToWhoHasSomeAlreadyAreAllCounted() {
    Trip trip =
        Trips.days(1)
            .hiker("a", h -> h.target(5000))
            .hiker("b", h -> h.target(5000).maxPieces(1))
            .item("u", s -> s.count(4).mass(10))
            .trip();
    Split earlier = Splits.of("a", "u").and("b", "u*3").split();
    Model model = ModelBuilder.of(trip, demand -> true, earlier, Set.of());
    Moves moves = new Moves(model, earlier);
    State state = new State(model);
    assertEquals(
        RuleModel.Verdict.NONE,
        RuleModel.find(state, Optional.of(Budget.of(moves, 1)), NODES, effort()));
    assertEquals(
        RuleModel.Verdict.FOUND,
        RuleModel.find(state, Optional.of(Budget.of(moves, 2)), NODES, effort()));
    assertEquals(2, moves.count(state));
    keepsRules("two handovers", trip, state);
  }
}
