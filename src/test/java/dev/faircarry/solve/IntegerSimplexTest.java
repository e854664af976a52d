package dev.faircarry.solve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Linear programs in whole numbers against OR-Tools GLOP, and against what duality says of them,
 * exactly.
 */
class IntegerSimplexTest {
  private static final double CLOSE = 1e-6;

  private static Allowance enough() {
    return new Allowance(new Effort(Long.MAX_VALUE / 2, Watch.NONE), Long.MAX_VALUE / 2);
  }

  @BeforeAll
  static void load() {
    Loader.loadNativeLibraries();
  }

  /** A program as the test keeps it, beside the simplex. */
  private static final class Program {
    final SplittableRandom random;
    final int rows;
    final int[] bounds;
    final boolean[] atLeast;

    /** Price of lacking one of what is asked at least, of leaving one of what there is at most. */
    final long[] rest;

    final List<int[]> counts = new ArrayList<>();
    final List<Long> costs = new ArrayList<>();
    final List<Integer> numbers = new ArrayList<>();
    final IntegerSimplex simplex;

    Program(SplittableRandom random, int rows) {
      this.random = random;
      this.rows = rows;
      bounds = random.ints(rows, 0, 5).toArray();
      atLeast = new boolean[rows];
      rest = new long[rows];
      for (int r = 0; r < rows; r++) {
        atLeast[r] = random.nextInt(3) > 0;
        rest[r] = atLeast[r] ? random.nextInt(1, 33) : 0;
      }
      simplex = new IntegerSimplex(bounds, rest);
    }

    void addColumns(int number, int most, int dearest) {
      for (int n = 0; n < number; n++) {
        int[] each = new int[rows];
        Arrays.setAll(each, r -> random.nextInt(3) == 0 ? random.nextInt(1, most + 1) : 0);
        long cost = random.nextInt(dearest + 1);
        counts.add(each);
        costs.add(cost);
        numbers.add(simplex.add(each, cost));
      }
    }

    void changePrices() {
      for (int n = 0; n < numbers.size(); n++) {
        if (random.nextInt(4) == 0) {
          costs.set(n, (long) random.nextInt(12));
          simplex.price(numbers.get(n), costs.get(n));
        }
      }
      for (int r = 0; r < rows; r++) {
        // The first columns are what is lacking or left of each condition.
        if (random.nextInt(6) == 0) {
          rest[r] = random.nextInt(atLeast[r] ? 1 : 0, 33);
          simplex.price(r, rest[r]);
        }
      }
    }

    double byGlop() {
      MPSolver solver = MPSolver.createSolver("GLOP");
      MPObjective objective = solver.objective();
      List<MPConstraint> conditions = new ArrayList<>();
      for (int r = 0; r < rows; r++) {
        double highest = atLeast[r] ? Double.POSITIVE_INFINITY : bounds[r];
        conditions.add(solver.makeConstraint(bounds[r], highest));
        MPVariable lacking = solver.makeNumVar(0, Double.POSITIVE_INFINITY, "");
        conditions.get(r).setCoefficient(lacking, 1);
        objective.setCoefficient(lacking, (double) rest[r]);
      }
      for (int n = 0; n < counts.size(); n++) {
        MPVariable much = solver.makeNumVar(0, Double.POSITIVE_INFINITY, "");
        objective.setCoefficient(much, costs.get(n).doubleValue());
        for (int r = 0; r < rows; r++) {
          conditions.get(r).setCoefficient(much, counts.get(n)[r]);
        }
      }
      objective.setMinimization();
      assertEquals(MPSolver.ResultStatus.OPTIMAL, solver.solve());
      return objective.value();
    }

    void check(String where) {
      assertFalse(simplex.failed(), where);
      assertTrue(simplex.denominator() > 0, where);
      assertEquals(byGlop(), simplex.value() / (double) simplex.denominator(), CLOSE, where);
      checkUses(where);
      checkDuals(where);
    }

    /** What is used meets every condition, and costs what it is said to cost. */
    private void checkUses(String where) {
      BigInteger[] met = new BigInteger[rows];
      Arrays.fill(met, BigInteger.ZERO);
      BigInteger[] cost = {BigInteger.ZERO};
      simplex.uses(
          (column, amount) -> {
            assertTrue(amount > 0, where);
            BigInteger times = BigInteger.valueOf(amount);
            int n = numbers.indexOf(column);
            if (n >= 0) {
              cost[0] = cost[0].add(times.multiply(BigInteger.valueOf(costs.get(n))));
              for (int r = 0; r < rows; r++) {
                met[r] = met[r].add(times.multiply(BigInteger.valueOf(counts.get(n)[r])));
              }
            } else if (column < rows) {
              cost[0] = cost[0].add(times.multiply(BigInteger.valueOf(rest[column])));
              met[column] = met[column].add(times);
            }
          });
      for (int r = 0; r < rows; r++) {
        int order = met[r].compareTo(whole(bounds[r]));
        assertTrue(atLeast[r] ? order >= 0 : order == 0, where + " condition " + r);
      }
      assertEquals(BigInteger.valueOf(simplex.value()), cost[0], where);
    }

    /**
     * The duals are worth as much as was found and no column is dearer than it costs, so nothing
     * costs less. Where it costs nothing, nothing needs to be shown.
     */
    private void checkDuals(String where) {
      long[] duals = simplex.duals();
      BigInteger worth = BigInteger.ZERO;
      for (int r = 0; r < rows; r++) {
        worth = worth.add(BigInteger.valueOf(duals[r]).multiply(BigInteger.valueOf(bounds[r])));
      }
      assertEquals(BigInteger.valueOf(simplex.value()), worth, where);
      if (simplex.value() == 0) {
        return;
      }
      for (int r = 0; r < rows; r++) {
        assertTrue(!atLeast[r] || duals[r] >= 0, where + " condition " + r);
        assertTrue(BigInteger.valueOf(duals[r]).compareTo(whole(rest[r])) <= 0, where);
      }
      for (int n = 0; n < counts.size(); n++) {
        BigInteger sum = BigInteger.ZERO;
        for (int r = 0; r < rows; r++) {
          BigInteger dual = BigInteger.valueOf(duals[r]);
          sum = sum.add(dual.multiply(BigInteger.valueOf(counts.get(n)[r])));
        }
        assertTrue(sum.compareTo(whole(costs.get(n))) <= 0, where + " column " + n);
      }
    }

    private BigInteger whole(long number) {
      return BigInteger.valueOf(number).multiply(BigInteger.valueOf(simplex.denominator()));
    }
  }

  @Test
  void smallPrograms() {
    int parts = 0;
    int free = 0;
    for (long seed = 0; seed < 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Program program = new Program(random, random.nextInt(1, 9));
      for (int turn = 0; turn < 4; turn++) {
        program.addColumns(random.nextInt(8), 3, turn == 0 ? 10 : random.nextInt(30));
        if (turn > 1) {
          program.changePrices();
        }
        assertTrue(program.simplex.run(enough()), "seed " + seed);
        program.check("seed " + seed + " turn " + turn);
        parts += program.simplex.denominator() > 1 ? 1 : 0;
        free += program.simplex.value() == 0 ? 1 : 0;
      }
    }
    assertTrue(parts > 250 && free > 50, parts + " in parts, " + free + " free");
  }

  /** Determinants of many digits. */
  @Test
  void largerPrograms() {
    for (long seed = 0; seed < 12; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Program program = new Program(random, 18);
      for (int turn = 0; turn < 3; turn++) {
        program.addColumns(30, 5, 9);
        assertTrue(program.simplex.run(enough()), "seed " + seed);
        program.check("seed " + seed + " turn " + turn);
      }
    }
  }

  /**
   * Two blocks of one lot and one of another, lacking one costs 3 and 2; columns hold one of each
   * or two of the first, and all columns together count one at most. One of each leaves one of the
   * first lacking: 3. Two of the first: 2. So 2, by the second column alone; a column that holds
   * two and one makes it nothing. At 1 for each of it, it is cheaper still than the others.
   */
  @Test
  void byHand() {
    IntegerSimplex simplex = new IntegerSimplex(new int[] {2, 1, 1}, new long[] {3, 2, 0});
    assertTrue(simplex.run(enough()));
    assertEquals(2 * 3 + 2, simplex.value());
    assertArrayEquals(new long[] {3, 2, 0}, simplex.duals());
    simplex.add(new int[] {1, 1, 1}, 0);
    simplex.add(new int[] {2, 0, 1}, 0);
    assertTrue(simplex.run(enough()));
    assertEquals(2 * simplex.denominator(), simplex.value());
    int all = simplex.add(new int[] {2, 1, 1}, 0);
    assertTrue(simplex.run(enough()));
    assertEquals(0, simplex.value());
    simplex.uses((column, amount) -> assertEquals(all, column));
    simplex.price(all, 1);
    assertTrue(simplex.run(enough()));
    assertEquals(simplex.denominator(), simplex.value());
  }

  /** Of three pairs of three things, half of each holds all; the thirds of a whole are halves. */
  @Test
  void inParts() {
    IntegerSimplex simplex = new IntegerSimplex(new int[] {1, 1, 1}, new long[] {9, 9, 9});
    int first = simplex.add(new int[] {1, 1, 0}, 2);
    simplex.add(new int[] {0, 1, 1}, 2);
    simplex.add(new int[] {1, 0, 1}, 2);
    assertTrue(simplex.run(enough()));
    assertEquals(3 * simplex.denominator(), simplex.value());
    int[] used = {0};
    simplex.uses(
        (column, amount) -> {
          used[0] += column >= first ? 1 : 0;
          assertEquals(simplex.denominator(), 2 * amount);
        });
    assertEquals(3, used[0]);
  }

  @Test
  void aCutRunSaysSoAndCanBeTakenUpAgain() {
    for (long seed = 0; seed < 20; seed++) {
      Program program = new Program(new SplittableRandom(seed), 10);
      program.addColumns(40, 3, 1);
      Effort effort = new Effort(Long.MAX_VALUE / 2, Watch.NONE);
      assertFalse(program.simplex.run(new Allowance(effort, 20)), "seed " + seed);
      assertTrue(program.simplex.run(enough()), "seed " + seed);
      program.check("seed " + seed);
      assertFalse(program.simplex.run(new Allowance(new Effort(0, Watch.NONE), 1000)));
    }
  }
}
