package dev.faircarry.bench;

import dev.faircarry.check.SplitCheck;
import dev.faircarry.oracle.CpSatOracle;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.oracle.FirstLevel;
import dev.faircarry.solve.ListGap;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How long proofs take and how good answers are by then: this program, CP-SAT with one worker, and
 * splitting by hand, in one process on the same trips.
 *
 * <p>Arguments: seconds for each trip (10), trips for each family (10), and a part of a family's
 * name to pick families by (all), or "curve" for {@link CurveBench}. Families, seeds and limits are
 * all there is to a run; times depend on the machine.
 */
public final class Bench {
  private static final int[][] SIZES = {
    {4, 12, 1},
    {6, 20, 1},
    {8, 30, 1},
    {12, 60, 1},
    {20, 100, 1},
    {30, 200, 1},
    {60, 400, 1},
    {8, 40, 5}
  };
  private static final int[] GRAINS = {1, 5};
  private static final long[] GLIMPSES_MILLIS = {50, 200, 1000};

  private final double seconds;
  private final int seeds;
  private final String picked;

  private Bench(double seconds, int seeds, String picked) {
    this.seconds = seconds;
    this.seeds = seeds;
    this.picked = picked;
  }

  public static void main(String[] args) {
    double seconds = args.length > 0 ? Double.parseDouble(args[0]) : 10;
    int seeds = args.length > 1 ? Integer.parseInt(args[1]) : 10;
    String picked = args.length > 2 ? args[2] : "";
    if (picked.equals("curve")) {
      new CurveBench(seconds, seeds).run();
    } else {
      new Bench(seconds, seeds, picked).run();
    }
  }

  private void run() {
    warmUp();
    System.out.printf(
        Locale.ROOT, "%.1f s a trip, %d trips a family, grain in thousandths%n", seconds, seeds);
    Results all = new Results("all families", seconds);
    for (int[] size : SIZES) {
      for (int grain : GRAINS) {
        for (Family.Hardness hardness : Family.Hardness.values()) {
          for (boolean ruled : new boolean[] {false, true}) {
            Family family = Family.plain(size[0], size[1], grain, hardness).overDays(size[2]);
            family = ruled ? family.withRules() : family;
            if (family.toString().contains(picked)) {
              all.add(family(family));
            }
          }
        }
      }
    }
    all.print(System.out);
  }

  private void warmUp() {
    for (int seed = 1000; seed < 1010; seed++) {
      Trip trip = FamilyTrips.trip(seed, Family.plain(4, 12, 5, Family.Hardness.MIXED));
      ours(trip, 0.5);
      CpSatOracle.minimax(trip, 0.5);
    }
  }

  private Results family(Family family) {
    Results results = new Results(family.toString(), seconds);
    for (int seed = 0; seed < seeds; seed++) {
      results.add(one(FamilyTrips.trip(seed, family), family));
    }
    results.print(System.out);
    return results;
  }

  /** One trip with everybody's results. */
  private Run one(Trip trip, Family family) {
    FirstLevel first = new FirstLevel(trip);
    long sand = Math.max(first.ownKit(), first.sheerTotal());
    Ours ours = ours(trip, seconds);
    CpSatOracle.Answer theirs = CpSatOracle.leximin(trip, seconds);
    long best =
        ours.level() < 0 || (theirs.best() >= 0 && theirs.best() < ours.level())
            ? theirs.best()
            : ours.level();
    List<Long> gaps = new ArrayList<>();
    for (long millis : GLIMPSES_MILLIS) {
      long glimpse = ours(trip, millis / 1000.0).level();
      gaps.add(glimpse < 0 ? -1 : glimpse - best);
    }
    long hand = family.ruled() || family.days() > 1 ? -1 : first.byHand() - best;
    return new Run(
        best == sand,
        ours.firstMillis(),
        ours.millis(),
        ours.firstProved(),
        ours.proved(),
        ours.level() < 0 ? -1 : ours.level() - Math.max(sand, ours.bound()),
        ours.listGap(),
        theirs.firstMillis(),
        theirs.millis(),
        theirs.levels() > 0,
        theirs.levels() == ours.levels(),
        theirs.best() < 0 ? -1 : theirs.best() - best,
        gaps,
        hand);
  }

  /**
   * @param level -1 where there is no split yet
   */
  private record Ours(
      long level,
      int levels,
      long bound,
      boolean firstProved,
      boolean proved,
      long listGap,
      long firstMillis,
      long millis) {}

  private static Ours ours(Trip trip, double seconds) {
    Clock clock = new Clock(seconds);
    Outcome outcome = SplitSolver.solve(trip, Long.MAX_VALUE / 4, clock);
    long millis = clock.millis();
    if (outcome instanceof Outcome.Impossible) {
      throw new IllegalStateException("every trip here can be split: " + outcome);
    }
    if (!(outcome instanceof Outcome.Solved solved)) {
      return new Ours(-1, 0, 0, false, false, -1, millis, millis);
    }
    List<Long> steps = SplitCheck.verdict(trip, solved.split()).steps();
    int proved = solved.proof().provedLevels();
    return new Ours(
        steps.get(0),
        steps.size(),
        proved > 0 ? steps.get(0) : solved.proof().boundSteps().orElse(0),
        proved > 0,
        solved.proof().proved(),
        solved.proof().proved() ? 0 : ListGap.widest(trip, steps),
        proved > 0 ? Math.min(millis, clock.firstProvedMillis) : millis,
        millis);
  }

  /** Stops after so long, and notes when the first level is proved. */
  private static final class Clock implements Watch {
    private final long start = System.nanoTime();
    private final long limitNanos;
    private long firstProvedMillis = Long.MAX_VALUE;

    Clock(double seconds) {
      limitNanos = (long) (seconds * 1e9);
    }

    long millis() {
      return (System.nanoTime() - start) / 1_000_000;
    }

    @Override
    public Signal signal() {
      return System.nanoTime() - start < limitNanos ? Signal.GO_ON : Signal.STOP_BY_CLOCK;
    }

    @Override
    public void progress(Progress progress) {
      if (progress.provedLevels() > 0 && firstProvedMillis == Long.MAX_VALUE) {
        firstProvedMillis = millis();
      }
    }
  }
}
