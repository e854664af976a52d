package dev.faircarry.oracle;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The trade-off between handovers and fairness by OR-Tools CP-SAT: the fewest handovers there can
 * be, the fairest list there is, then the fairest list for each number of handovers from the fewest
 * on until that is reached. Each number gets the first level of the number before as its highest
 * and that of the fairest list as its lowest. Only splits within the caps.
 */
public final class CpSatCurve {
  /**
   * What it found.
   *
   * @param points by number of handovers, those that are fairer than with fewer, each proved
   * @param complete whether the last point is as fair as any number of handovers makes it
   * @param tried how many numbers of handovers were settled
   */
  public record Answer(
      SortedMap<Integer, List<Long>> points, boolean complete, int tried, long millis) {}

  private CpSatCurve() {}

  /**
   * Works out the curve.
   *
   * @param most how many numbers of handovers, from the fewest on
   * @param seconds for all of it
   */
  public static Answer of(Trip trip, Split earlier, int most, double seconds) {
    return of(trip, earlier, most, CpSatOracle.Limit.seconds(seconds));
  }

  /**
   * Works out the curve as far as so much work goes at each number of handovers, on any machine.
   */
  public static Answer byWork(Trip trip, Split earlier, int most, double work) {
    return of(trip, earlier, most, CpSatOracle.Limit.work(work));
  }

  private static Answer of(Trip trip, Split earlier, int most, CpSatOracle.Limit limit) {
    Loader.loadNativeLibraries();
    long start = System.nanoTime();
    SortedMap<Integer, List<Long>> points = new TreeMap<>();
    int mornings = trip.hikers().size() * trip.days();
    int least = fewest(trip, earlier, limit);
    CpSatOracle.Answer best = CpSatOracle.leximin(trip, limit);
    boolean complete = false;
    int tried = 0;
    List<Long> last = new ArrayList<>();
    for (int k = least; least >= 0 && tried < most && best.levels() == mornings; k++) {
      CpSatOracle.Within within = new CpSatOracle.Within(earlier, k);
      long top = last.isEmpty() ? 3 * best.steps().get(0) + 1000 : last.get(0);
      CpSatOracle.Answer at = CpSatOracle.leximin(trip, limit, within, best.steps().get(0), top);
      if (at.levels() < mornings && !at.impossible()) {
        break;
      }
      tried++;
      if (!at.impossible() && !at.steps().equals(last)) {
        last = at.steps();
        points.put(k, last);
      }
      if (last.equals(best.steps())) {
        complete = true;
        break;
      }
    }
    return new Answer(points, complete, tried, (System.nanoTime() - start) / 1_000_000);
  }

  /** The fewest handovers of any split within rules and caps; -1 where that is not settled. */
  private static int fewest(Trip trip, Split earlier, CpSatOracle.Limit limit) {
    PlainTrip plain = new PlainTrip(trip);
    CpSatModel model = new CpSatModel(plain, 1_000_000);
    model.cp.minimize(model.handovers(earlier));
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setRandomSeed(1);
    solver
        .getParameters()
        .setMaxTimeInSeconds((limit.nanoTime() - System.nanoTime()) / 1e9)
        .setMaxDeterministicTime(limit.work());
    return solver.solve(model.cp) == CpSolverStatus.OPTIMAL
        ? (int) Math.round(solver.objectiveValue())
        : -1;
  }
}
