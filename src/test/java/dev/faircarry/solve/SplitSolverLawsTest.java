package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.ClaimCheck;
import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.fixture.Trips;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.oracle.Value;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What must hold between the answers to related questions. */
class SplitSolverLawsTest {
  private static final long EFFORT = 2_000_000;
  private static final int SEEDS = 6;

  private static final List<Family> FAMILIES =
      List.of(
          Family.plain(3, 9, 5, Family.Hardness.HARD),
          Family.plain(4, 10, 5, Family.Hardness.MIXED).withRules(),
          Family.plain(3, 12, 10, Family.Hardness.MIXED).overDays(2));

  private record Solved(Outcome.Solved outcome, Value value) {
    boolean proved() {
      return outcome.proof().proved();
    }
  }

  /** Solves, and asks the checker on the way. */
  private static Solved solve(Trip trip, long effort, String where) {
    Outcome outcome = SplitSolver.solve(trip, effort, Watch.NONE);
    assertTrue(outcome instanceof Outcome.Solved, where + ": " + outcome);
    Outcome.Solved solved = (Outcome.Solved) outcome;
    Verdict verdict = SplitCheck.verdict(trip, solved.split());
    assertTrue(verdict.keepsRules(), where + ": " + verdict.findings());
    assertEquals(List.of(), ClaimCheck.of(trip, verdict, solved.proof()), where);
    return new Solved(solved, new Value(verdict.excessThousandths(), verdict.steps()));
  }

  private interface Law {
    void of(Trip trip, Solved solved, String where, long seed);
  }

  private static void everywhere(Law law) {
    for (Family family : FAMILIES) {
      for (int seed = 0; seed < SEEDS; seed++) {
        Trip trip = FamilyTrips.trip(seed, family);
        String where = family + " seed " + seed;
        law.of(trip, solve(trip, EFFORT, where), where, seed);
      }
    }
  }

  private static Trip with(
      Trip trip, List<Hiker> hikers, List<SharedItem> shared, List<Rule> rules) {
    return new Trip(trip.name(), trip.days(), trip.policy(), hikers, shared, rules);
  }

  @Test
  void theOrderOfHikersAndThingsDoesNotMatterForTheValue() {
    everywhere(
        (trip, solved, where, seed) -> {
          List<Hiker> hikers = new ArrayList<>(trip.hikers());
          List<SharedItem> shared = new ArrayList<>(trip.shared());
          Collections.shuffle(hikers, new Random(seed));
          Collections.shuffle(shared, new Random(seed + 1));
          Solved other = solve(with(trip, hikers, shared, trip.rules()), EFFORT, where);
          if (solved.proved() && other.proved()) {
            assertEquals(solved.value(), other.value(), where);
          }
        });
  }

  @Test
  void theAnswerStaysTheAnswerWhenItIsPinned() {
    everywhere(
        (trip, solved, where, seed) -> {
          List<Rule> rules = new ArrayList<>(trip.rules());
          for (Carry carry : solved.outcome().split().carries()) {
            boolean counted =
                trip.shared().stream()
                    .anyMatch(
                        s ->
                            s.id().equals(carry.piece().item())
                                && s.form() instanceof Form.Counted);
            if (!counted) {
              rules.add(new Rule.Pinned("x" + rules.size(), List.of(carry.piece()), carry.hiker()));
            }
          }
          Solved other = solve(with(trip, trip.hikers(), trip.shared(), rules), EFFORT, where);
          if (solved.proved() && other.proved()) {
            assertEquals(solved.value(), other.value(), where);
          }
        });
  }

  @Test
  void leavingOutARuleNeverMakesAProvedValueWorse() {
    everywhere(
        (trip, solved, where, seed) -> {
          for (int r = 0; r < Math.min(3, trip.rules().size()); r++) {
            List<Rule> rules = new ArrayList<>(trip.rules());
            rules.remove(r);
            Solved other = solve(with(trip, trip.hikers(), trip.shared(), rules), EFFORT, where);
            if (other.proved()) {
              assertTrue(other.value().compareTo(solved.value()) <= 0, where + " rule " + r);
            }
          }
        });
  }

  @Test
  void moreEffortNeverMakesItWorseAndBoundsStayBelow() {
    everywhere(
        (trip, solved, where, seed) -> {
          Value before = solve(trip, 1, where).value();
          for (long effort : new long[] {1_000, 30_000, 200_000}) {
            Solved now = solve(trip, effort, where + " effort " + effort);
            assertTrue(now.value().compareTo(before) <= 0, where + " effort " + effort);
            before = now.value();
            var proof = now.outcome().proof();
            if (proof.excessProved() && solved.proved()) {
              int k = proof.provedLevels();
              assertEquals(
                  solved.value().steps().subList(0, k), now.value().steps().subList(0, k), where);
            }
            if (proof.boundSteps().isPresent() && proof.provedLevels() == 0 && solved.proved()) {
              assertTrue(proof.boundSteps().getAsLong() <= solved.value().steps().get(0), where);
            }
          }
        });
  }

  @Test
  void theSameQuestionHasTheSameAnswer() {
    everywhere(
        (trip, solved, where, seed) ->
            assertEquals(solved.outcome(), solve(trip, EFFORT, where).outcome(), where));
  }

  @Test
  void massesAndTargetsTimesTheSameKeepEveryStep() {
    long[] masses = {410, 730, 95, 380, 260, 1170, 540, 660};
    for (long k : new long[] {2, 3, 7, 10}) {
      Trip one = Trips.targets(1500, 1200, 1900).pieces(masses).trip();
      long[] larger = java.util.Arrays.stream(masses).map(m -> m * k).toArray();
      Trip other = Trips.targets(1500 * k, 1200 * k, 1900 * k).pieces(larger).trip();
      assertEquals(
          solve(one, EFFORT, "times 1").value(), solve(other, EFFORT, "times " + k).value());
    }
  }
}
