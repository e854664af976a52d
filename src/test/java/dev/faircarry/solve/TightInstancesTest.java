package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.fixture.Trips;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Instances on which well-known rules of thumb go wrong by the most there can be. Hikers with equal
 * targets are the machines, pieces the jobs, a unit of length 10 g; with targets of 1000 g a step
 * is a tenth of a unit.
 */
class TightInstancesTest {
  private static final long EFFORT = 20_000_000;

  /** The proved makespan, in units. */
  private static long makespan(int machines, List<Integer> jobs) {
    long[] targets = new long[machines];
    Arrays.fill(targets, 1000);
    Trip trip =
        Trips.targets(targets)
            .grain(1)
            .pieces(jobs.stream().mapToLong(j -> 10L * j).toArray())
            .trip();
    Outcome.Solved solved = (Outcome.Solved) SplitSolver.solve(trip, EFFORT, Watch.NONE);
    assertTrue(solved.proof().provedLevels() >= 1, solved.proof()::toString);
    Verdict verdict = SplitCheck.verdict(trip, solved.split());
    assertEquals(List.of(), verdict.findings());
    assertEquals(0, verdict.steps().get(0) % 10);
    return verdict.steps().get(0) / 10;
  }

  /** Each job, in the order given, to the machine that is free first. */
  private static int listScheduling(int machines, List<Integer> jobs) {
    int[] load = new int[machines];
    for (int job : jobs) {
      int least = 0;
      for (int i = 1; i < machines; i++) {
        least = load[i] < load[least] ? i : least;
      }
      load[least] += job;
    }
    return Arrays.stream(load).max().orElse(0);
  }

  /** The least capacity at which first fit, longest first, needs no more machines: MULTIFIT. */
  private static int multifit(int machines, List<Integer> jobs) {
    List<Integer> falling = new ArrayList<>(jobs);
    falling.sort(Collections.reverseOrder());
    int capacity = falling.get(0);
    while (!firstFit(machines, falling, capacity)) {
      capacity++;
    }
    return capacity;
  }

  private static boolean firstFit(int machines, List<Integer> jobs, int capacity) {
    int[] load = new int[machines];
    for (int job : jobs) {
      int i = 0;
      while (i < machines && load[i] + job > capacity) {
        i++;
      }
      if (i == machines) {
        return false;
      }
      load[i] += job;
    }
    return true;
  }

  /**
   * Graham (SIAM Journal on Applied Mathematics 17, 1969, 416-429): 2m - 1, 2m - 1, ..., m + 1, m +
   * 1, m, m, m. Longest first ends at 4m - 1. All jobs together are 3m for each machine, and 3m is
   * reached: m, m, m on one, and pairs of j and 3m - j on the others.
   */
  @Test
  void longestFirst() {
    for (int m = 2; m <= 8; m++) {
      List<Integer> jobs = new ArrayList<>();
      for (int length = 2 * m - 1; length > m; length--) {
        jobs.addAll(List.of(length, length));
      }
      jobs.addAll(List.of(m, m, m));
      assertEquals(3 * m * m, jobs.stream().mapToInt(Integer::intValue).sum());
      assertEquals(4 * m - 1, listScheduling(m, jobs));
      assertEquals(3 * m, makespan(m, jobs), m + " machines");
    }
  }

  /**
   * Graham (Bell System Technical Journal 45, 1966, 1563-1581): m (m - 1) jobs of 1, then one of m.
   * In this order list scheduling ends at 2m - 1; m is reached with the long job alone.
   */
  @Test
  void inTheOrderGiven() {
    for (int m = 2; m <= 6; m++) {
      List<Integer> jobs = new ArrayList<>(Collections.nCopies(m * (m - 1), 1));
      jobs.add(m);
      assertEquals(2 * m - 1, listScheduling(m, jobs));
      assertEquals(m, makespan(m, jobs), m + " machines");
    }
  }

  /**
   * On four machines MULTIFIT can be 20/17 off (Coffman, Garey and Johnson, SIAM Journal on
   * Computing 7, 1978, 1-17; the instance as an open library of number partitioning has it). 17 is
   * a quarter of all: 9 4 4, 7 6 4, 5 4 4 4, 5 4 4 4.
   */
  @Test
  void multifit() {
    List<Integer> jobs = List.of(9, 7, 6, 5, 5, 4, 4, 4, 4, 4, 4, 4, 4, 4);
    assertEquals(4 * 17, jobs.stream().mapToInt(Integer::intValue).sum());
    assertEquals(20, multifit(4, jobs));
    assertEquals(17, makespan(4, jobs));
  }
}
