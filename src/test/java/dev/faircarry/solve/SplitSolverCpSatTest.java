package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.oracle.CpSatOracle;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Trip;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Middle-sized trips against OR-Tools CP-SAT: what both prove is equal, and neither's bound passes
 * the other's value. Both stop by steps of their own, so that what is compared is the same on every
 * machine.
 */
class SplitSolverCpSatTest {
  private int firstLevels;
  private int lists;

  @Test
  void fewHikers() {
    compare(Family.plain(4, 12, 5, Family.Hardness.HARD), 3, 5, 3_000_000);
    compare(Family.plain(3, 14, 5, Family.Hardness.MIXED).withRules(), 3, 5, 3_000_000);
    compare(Family.plain(3, 16, 5, Family.Hardness.EASY).overDays(2), 2, 5, 3_000_000);
    assertTrue(firstLevels >= 3, firstLevels + " first levels proved by both");
  }

  @Test
  @Tag("slow")
  void sixHikersTwentyPieces() {
    everyHardness(6, 20);
  }

  @Test
  @Tag("slow")
  void eightHikersThirtyPieces() {
    everyHardness(8, 30);
  }

  private void everyHardness(int hikers, int pieces) {
    for (Family.Hardness hardness : Family.Hardness.values()) {
      Family family = Family.plain(hikers, pieces, 5, hardness);
      compare(family, 2, 8, 10_000_000);
      compare(family.withRules(), 2, 8, 10_000_000);
      compare(family.overDays(3), 1, 8, 10_000_000);
    }
    assertTrue(firstLevels >= 4, firstLevels + " first levels proved by both");
  }

  private void compare(Family family, int seeds, double work, long effort) {
    for (int seed = 0; seed < seeds; seed++) {
      Trip trip = FamilyTrips.trip(seed, family);
      String where = family + " seed " + seed;
      CpSatOracle.Answer other = CpSatOracle.leximinByWork(trip, work);
      assertFalse(other.impossible(), where);
      Verdict otherVerdict = SplitCheck.verdict(trip, other.split().orElseThrow());
      assertTrue(otherVerdict.keepsRules(), where + otherVerdict.findings());
      assertEquals(other.steps(), otherVerdict.steps().subList(0, other.levels()), where);
      Outcome outcome = SplitSolver.solve(trip, effort, Watch.NONE);
      Outcome.Solved solved = (Outcome.Solved) outcome;
      Verdict verdict = SplitCheck.verdict(trip, solved.split());
      assertTrue(verdict.keepsRules(), where + verdict.findings());
      assertEquals(0, verdict.excessThousandths(), where);
      List<Long> steps = verdict.steps();
      int both = Math.min(other.levels(), solved.proof().provedLevels());
      assertEquals(other.steps().subList(0, both), steps.subList(0, both), where);
      assertTrue(other.bound() <= steps.get(0), where);
      // Where CP-SAT has proved more than the solver, the solver's list cannot be below it.
      for (int k = 0; k < other.levels(); k++) {
        assertTrue(other.steps().get(k) <= steps.get(k), where + " level " + k);
        if (other.steps().get(k) < steps.get(k)) {
          assertTrue(k >= solved.proof().provedLevels(), where + " level " + k);
          break;
        }
      }
      firstLevels += both > 0 ? 1 : 0;
      lists += both == steps.size() ? 1 : 0;
    }
  }

  @Override
  public String toString() {
    return firstLevels + " first levels, " + lists + " lists";
  }
}
