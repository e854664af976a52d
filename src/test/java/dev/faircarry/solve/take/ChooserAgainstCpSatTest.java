package dev.faircarry.solve.take;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import dev.faircarry.choose.Answer;
import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Point;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Required;
import dev.faircarry.solve.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Frontiers too large for trying all, against OR-Tools CP-SAT with the same method of rising
 * bounds.
 */
class ChooserAgainstCpSatTest {
  private static final long EFFORT = 5_000_000;

  @BeforeAll
  static void load() {
    Loader.loadNativeLibraries();
  }

  @Test
  void frontiersAgree() {
    int points = 0;
    for (long seed = 1000; seed < 1040; seed++) {
      Question question = Questions.random(seed, 12, 14);
      Answer answer = Chooser.answer(question, EFFORT, Watch.NONE);
      List<long[]> expected = frontier(question);
      if (expected.isEmpty()) {
        assertInstanceOf(Answer.Unmeetable.class, answer, "seed " + seed);
        continue;
      }
      Answer.Choices choices = assertInstanceOf(Answer.Choices.class, answer, "seed " + seed);
      assertTrue(choices.complete(), "seed " + seed);
      assertEquals(
          expected.stream().map(p -> p[0] + " mg for " + p[1]).toList(),
          choices.frontier().stream().map(ChooserAgainstCpSatTest::text).toList(),
          "seed " + seed);
      points += expected.size();
    }
    assertTrue(points > 40, points + " points");
  }

  private static String text(Point point) {
    return point.massMilligrams() + " mg for " + point.priceHundredths();
  }

  /** Mass and price of every point, from the lightest to the cheapest. */
  private static List<long[]> frontier(Question question) {
    List<long[]> points = new ArrayList<>();
    long priceAtMost = Long.MAX_VALUE / 4;
    while (true) {
      long mass = least(question, Candidate::massMilligrams, Long.MAX_VALUE / 4, priceAtMost);
      if (mass < 0) {
        return points;
      }
      long price = least(question, Candidate::priceHundredths, mass, priceAtMost);
      points.add(new long[] {mass, price});
      if (price == 0) {
        return points;
      }
      priceAtMost = price - 1;
    }
  }

  /** The least sum; -1 when nothing is possible. */
  private static long least(
      Question question, ToLongFunction<Candidate> weight, long massAtMost, long priceAtMost) {
    CpModel model = new CpModel();
    List<Candidate> candidates = question.candidates();
    IntVar[] x = new IntVar[candidates.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = model.newIntVar(candidates.get(i).least(), candidates.get(i).most(), "x" + i);
    }
    model.addLessOrEqual(sum(x, candidates, Candidate::massMilligrams), massAtMost);
    model.addLessOrEqual(sum(x, candidates, Candidate::priceHundredths), priceAtMost);
    for (Required need : question.needs()) {
      model.addGreaterOrEqual(
          sum(x, candidates, c -> c.covers(need.need()) - c.requires(need.need())), need.atLeast());
      LinearExprBuilder lent = LinearExpr.newBuilder();
      for (Map.Entry<String, Integer> party : need.perParty().entrySet()) {
        IntVar here = model.newIntVar(0, party.getValue(), "lent");
        lent.add(here);
        LinearExpr own =
            sum(
                x,
                candidates,
                c ->
                    c.covers(need.need()) > 0
                            && c.party().filter(party.getKey()::equals).isPresent()
                        ? 1
                        : 0);
        model.addGreaterOrEqual(
            LinearExpr.newBuilder().add(own).add(here).build(), party.getValue());
      }
      LinearExpr shared =
          sum(x, candidates, c -> c.covers(need.need()) > 0 && c.party().isEmpty() ? 1 : 0);
      model.addLessOrEqual(lent.build(), shared);
    }
    for (int i = 0; i < x.length; i++) {
      Candidate candidate = candidates.get(i);
      if (candidate.kind() != Candidate.Kind.OFFER && !candidate.free()) {
        LinearExpr stands =
            sum(
                x,
                candidates,
                c -> c.equals(candidate) || c.replaces().contains(candidate.ref()) ? 1 : 0);
        model.addGreaterOrEqual(stands, 1);
      }
    }
    model.minimize(sum(x, candidates, weight));
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setRandomSeed(1);
    CpSolverStatus status = solver.solve(model);
    if (status == CpSolverStatus.INFEASIBLE) {
      return -1;
    }
    assertEquals(CpSolverStatus.OPTIMAL, status);
    return Math.round(solver.objectiveValue());
  }

  private static LinearExpr sum(
      IntVar[] x, List<Candidate> candidates, ToLongFunction<Candidate> weight) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int i = 0; i < x.length; i++) {
      sum.addTerm(x[i], weight.applyAsLong(candidates.get(i)));
    }
    return sum.build();
  }
}
