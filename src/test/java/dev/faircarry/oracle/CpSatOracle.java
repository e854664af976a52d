package dev.faircarry.oracle;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * OR-Tools CP-SAT, one worker, fixed seed, as a second oracle for trips in which nobody leaves
 * early and caps can hold. Leximin by turns: the least value that the mornings not yet settled can
 * keep, then the fewest mornings at it.
 */
public final class CpSatOracle {
  /**
   * What it found.
   *
   * @param levels how many positions of the list, from the highest, are proved
   * @param steps the proved positions
   * @param best the first level of the best split found, proved or not; -1 when none was found
   * @param bound below which no split can bring the first level
   * @param impossible proved that there is no split within the caps
   * @param split of the last solution; its list begins with the proved positions
   * @param firstMillis time to the proof of the first level, or to the end
   * @param millis time spent
   */
  public record Answer(
      int levels,
      List<Long> steps,
      long best,
      long bound,
      boolean impossible,
      Optional<Split> split,
      long firstMillis,
      long millis) {
    public Answer {
      steps = List.copyOf(steps);
    }
  }

  /** So many mornings at most have a step of this value or more. */
  private record Settled(long value, int mornings) {}

  /**
   * How long it may go on.
   *
   * @param nanoTime by the clock of {@code System.nanoTime}; what it finds then depends on the
   *     machine
   * @param work by CP-SAT's own measure of work, about a second each; the same on every machine
   */
  record Limit(long nanoTime, double work) {
    static Limit seconds(double seconds) {
      return new Limit(System.nanoTime() + (long) (seconds * 1e9), 1e9);
    }

    static Limit work(double work) {
      return new Limit(System.nanoTime() + 1_000_000_000_000L, work);
    }
  }

  /** At most so many handovers from an earlier split. */
  record Within(Split earlier, int handovers) {}

  private final PlainTrip plain;
  private final long highest;
  private final long lowest;
  private final Limit limit;
  private final Optional<Within> within;
  private final long start = System.nanoTime();
  private double worked;
  private final List<Settled> settled = new ArrayList<>();
  private long best = -1;
  private long bound;
  private long firstMillis = -1;

  private CpSatOracle(Trip trip, Limit limit) {
    this.limit = limit;
    within = Optional.empty();
    plain = new PlainTrip(trip);
    FirstLevel first = new FirstLevel(trip);
    lowest = Math.max(first.ownKit(), first.sheerTotal());
    // Everything with one hiker is the most there can be; only one day without rules is bounded by
    // the hand method.
    boolean free = trip.days() == 1 && trip.rules().isEmpty() && noLimits(trip);
    highest = free ? first.byHand() : 3 * lowest + 1000;
    bound = lowest;
  }

  /** With the first level known to be from {@code lowest} to {@code highest}. */
  private CpSatOracle(Trip trip, Limit limit, Within within, long lowest, long highest) {
    this.limit = limit;
    this.within = Optional.of(within);
    plain = new PlainTrip(trip);
    this.lowest = lowest;
    this.highest = highest;
    bound = lowest;
  }

  private static boolean noLimits(Trip trip) {
    return trip.hikers().stream()
        .allMatch(h -> h.maxPieces().isEmpty() && h.pack().isEmpty() && h.capLoad().isEmpty());
  }

  /** Only the first level. */
  public static Answer minimax(Trip trip, double seconds) {
    Loader.loadNativeLibraries();
    return new CpSatOracle(trip, Limit.seconds(seconds)).run(1);
  }

  /** The whole list. */
  public static Answer leximin(Trip trip, double seconds) {
    Loader.loadNativeLibraries();
    return leximin(trip, Limit.seconds(seconds));
  }

  /** The whole list, as far as so much work goes on any machine; see {@link Limit}. */
  public static Answer leximinByWork(Trip trip, double work) {
    return leximin(trip, Limit.work(work));
  }

  static Answer leximin(Trip trip, Limit limit) {
    Loader.loadNativeLibraries();
    return new CpSatOracle(trip, limit).run(Integer.MAX_VALUE);
  }

  static Answer leximin(Trip trip, Limit limit, Within within, long lowest, long highest) {
    Loader.loadNativeLibraries();
    return new CpSatOracle(trip, limit, within, lowest, highest).run(Integer.MAX_VALUE);
  }

  private enum Turn {
    SOLVED,
    IMPOSSIBLE,
    LIMIT
  }

  private Answer run(int levels) {
    List<Long> steps = new ArrayList<>();
    int mornings = plain.hikers() * plain.trip.days();
    boolean impossible = false;
    while (steps.size() < Math.min(levels, mornings)) {
      Turn turn = value();
      if (turn != Turn.SOLVED) {
        impossible = turn == Turn.IMPOSSIBLE;
        break;
      }
      if (!settled.isEmpty()) {
        // Only those settled before may pass the value just found.
        settled.add(new Settled(solution + 1, steps.size()));
      }
      steps.add(solution);
      if (firstMillis < 0) {
        firstMillis = millis();
      }
      long value = solution;
      if (levels == 1 || fewest(value, steps.size(), mornings) != Turn.SOLVED) {
        break;
      }
      while (steps.size() < solution) {
        steps.add(value);
      }
      settled.add(new Settled(value, steps.size()));
    }
    long spent = millis();
    return new Answer(
        steps.size(),
        steps,
        best,
        bound,
        impossible,
        split,
        firstMillis < 0 ? spent : firstMillis,
        spent);
  }

  private long millis() {
    return (System.nanoTime() - start) / 1_000_000;
  }

  private long solution;
  private Optional<Split> split = Optional.empty();

  /** The least value that all but the settled mornings can keep. */
  private Turn value() {
    CpSatModel model = model();
    long most = settled.isEmpty() ? highest : settled.get(settled.size() - 1).value() - 1;
    long least = settled.isEmpty() ? lowest : 0;
    if (least > most) {
      return Turn.IMPOSSIBLE;
    }
    IntVar z = model.cp.newIntVar(least, most, "z");
    for (IntVar step : model.steps) {
      if (settled.isEmpty()) {
        model.cp.addLessOrEqual(step, z);
      } else {
        BoolVar above = high.get(model.steps.indexOf(step));
        LinearExpr right =
            LinearExpr.newBuilder().add(z).addTerm(above, settled.get(0).value()).build();
        model.cp.addLessOrEqual(step, right);
      }
    }
    model.cp.minimize(z);
    return solve(model, settled.isEmpty());
  }

  /** The fewest mornings with this value or more. */
  private Turn fewest(long value, int atLeast, int mornings) {
    settled.add(new Settled(value, mornings));
    CpSatModel model = model();
    LinearExprBuilder count = LinearExpr.newBuilder();
    high.forEach(count::add);
    model.cp.addGreaterOrEqual(count.build(), atLeast);
    model.cp.minimize(count.build());
    Turn turn = solve(model, false);
    settled.remove(settled.size() - 1);
    return turn;
  }

  /** For the last settled value: which mornings may have it or more. */
  private List<BoolVar> high = List.of();

  private CpSatModel model() {
    long most = settled.isEmpty() ? highest : settled.get(0).value();
    CpSatModel model = new CpSatModel(plain, most);
    within.ifPresent(w -> model.cp.addLessOrEqual(model.handovers(w.earlier()), w.handovers()));
    for (Settled s : settled) {
      high = new ArrayList<>();
      LinearExprBuilder count = LinearExpr.newBuilder();
      for (IntVar step : model.steps) {
        BoolVar b = model.cp.newBoolVar("high");
        high.add(b);
        count.add(b);
        model.cp.addLessOrEqual(
            step,
            LinearExpr.newBuilder().add(s.value() - 1).addTerm(b, most - s.value() + 1).build());
      }
      model.cp.addLessOrEqual(count.build(), s.mornings());
    }
    return model;
  }

  private Turn solve(CpSatModel model, boolean first) {
    double left = (limit.nanoTime() - System.nanoTime()) / 1e9;
    double work = limit.work() - worked;
    if (left <= 0 || work <= 0) {
      return Turn.LIMIT;
    }
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setRandomSeed(1);
    solver.getParameters().setMaxTimeInSeconds(left).setMaxDeterministicTime(work);
    CpSolverStatus status = solver.solve(model.cp);
    worked += solver.response().getDeterministicTime();
    if (status == CpSolverStatus.MODEL_INVALID) {
      throw new IllegalStateException(model.cp.validate());
    }
    if (status == CpSolverStatus.INFEASIBLE) {
      return Turn.IMPOSSIBLE;
    }
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    if (found) {
      split = Optional.of(model.split(solver));
    }
    if (first) {
      bound = Math.max(bound, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6));
      best = found ? Math.round(solver.objectiveValue()) : -1;
    }
    if (status != CpSolverStatus.OPTIMAL) {
      return Turn.LIMIT;
    }
    solution = Math.round(solver.objectiveValue());
    return Turn.SOLVED;
  }
}
