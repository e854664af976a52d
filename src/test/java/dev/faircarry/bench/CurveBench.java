package dev.faircarry.bench;

import dev.faircarry.oracle.CpSatCurve;
import dev.faircarry.oracle.Family;
import dev.faircarry.oracle.FamilyTrips;
import dev.faircarry.solve.RebalanceSolver;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Carry;
import dev.faircarry.split.CurveOutcome;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The trade-off curve after somebody drops out of a trip with an agreed split: this program and
 * CP-SAT, the same numbers of handovers, in one process. Curves of all numbers at 6x20, of the
 * first eight at 12x60. This program spends its default effort, CP-SAT the time limit.
 */
final class CurveBench {
  private static final long AGREED_STEPS = 5_000_000;
  private static final long STEPS = 20_000_000;
  private static final int ALL = 1_000;

  private final double seconds;
  private final int seeds;

  CurveBench(double seconds, int seeds) {
    this.seconds = seconds;
    this.seeds = seeds;
  }

  /** A trip without one of its hikers, and who carried what before. */
  private record Question(Trip trip, Split agreed, int forced) {}

  /**
   * What both say of one trip.
   *
   * @param oursProved every point, and that there are no others
   * @param points how many this program found
   * @param proved how many of them are proved
   * @param equal how many points both have proved, with the same list
   */
  private record Both(
      boolean oursProved,
      long oursMillis,
      boolean theirsProved,
      long theirsMillis,
      int points,
      int proved,
      int equal) {}

  void run() {
    Family small = Family.plain(4, 12, 5, Family.Hardness.MIXED);
    for (int seed = 1000; seed < 1020; seed++) {
      both(question(seed, small), ALL, 0.5);
    }
    for (int grain : new int[] {5, 1}) {
      family(6, 20, grain, ALL);
    }
    for (int grain : new int[] {5, 1}) {
      family(12, 60, grain, 8);
    }
  }

  private void family(int hikers, int pieces, int grain, int numbers) {
    List<Both> all = new ArrayList<>();
    for (Family.Hardness hardness : Family.Hardness.values()) {
      for (boolean ruled : new boolean[] {false, true}) {
        Family family = Family.plain(hikers, pieces, grain, hardness);
        family = ruled ? family.withRules() : family;
        List<Both> some = new ArrayList<>();
        for (int seed = 0; seed < seeds; seed++) {
          some.add(both(question(seed, family), numbers, seconds));
        }
        print(family.toString(), numbers, some);
        all.addAll(some);
      }
    }
    print(hikers + "x" + pieces + " grain " + grain + " in all", numbers, all);
  }

  private static Question question(long seed, Family family) {
    for (long draw = seed; ; draw += 1_000) {
      Trip before = FamilyTrips.trip(draw, family);
      Outcome outcome = SplitSolver.solve(before, AGREED_STEPS, Watch.NONE);
      Split agreed = ((Outcome.Solved) outcome).split();
      String gone = before.hikers().get((int) (seed % before.hikers().size())).id();
      Changed changed = TripChanging.apply(before, List.of(new Change.DropsOut(gone)));
      Trip trip = ((Changed.Made) changed).trip();
      // Rules may be impossible without somebody; that is another question.
      if (SplitSolver.solve(trip, AGREED_STEPS, Watch.NONE) instanceof Outcome.Solved) {
        int forced =
            agreed.carries().stream()
                .filter(c -> c.hiker().equals(gone))
                .mapToInt(Carry::units)
                .sum();
        return new Question(trip, agreed, forced);
      }
    }
  }

  private static Both both(Question asked, int numbers, double seconds) {
    Clock clock = new Clock(seconds);
    CurveOutcome outcome =
        RebalanceSolver.curve(
            asked.trip(),
            asked.agreed(),
            Set.of(),
            Math.min(ALL, asked.forced() + numbers - 1),
            STEPS,
            clock);
    long millis = clock.millis();
    SortedMap<Integer, List<Long>> ours = new TreeMap<>();
    boolean proved = false;
    int points = 0;
    if (outcome instanceof CurveOutcome.Found found) {
      proved = !found.cutByClock();
      points = found.curve().points().size();
      for (CurvePoint point : found.curve().points()) {
        proved &= point.proof().proved();
        if (point.proof().proved() && point.excessThousandths() == 0) {
          ours.put(point.handovers(), point.steps());
        }
      }
      proved &= numbers < ALL || found.curve().complete();
    }
    CpSatCurve.Answer theirs = CpSatCurve.of(asked.trip(), asked.agreed(), numbers, seconds);
    int equal = 0;
    for (int handovers : theirs.points().keySet()) {
      List<Long> mine = ours.get(handovers);
      if (mine != null && !mine.equals(theirs.points().get(handovers))) {
        throw new IllegalStateException(
            "both proved, and they differ at " + handovers + ": " + mine + theirs);
      }
      equal += mine != null ? 1 : 0;
    }
    boolean theirsProved = theirs.complete() || theirs.tried() == numbers;
    return new Both(proved, millis, theirsProved, theirs.millis(), points, ours.size(), equal);
  }

  private void print(String name, int numbers, List<Both> some) {
    long limit = (long) (seconds * 1000);
    System.out.printf(
        Locale.ROOT,
        "%s, %s: %d trips; points found %s, proved %s; proved by both and equal %d%n",
        name,
        numbers == ALL ? "every number of handovers" : "first " + numbers,
        some.size(),
        spread(some.stream().mapToLong(Both::points).toArray()),
        spread(some.stream().mapToLong(Both::proved).toArray()),
        some.stream().mapToInt(Both::equal).sum());
    System.out.printf(
        Locale.ROOT,
        "    ours   all proved %d, ms %s%n    CP-SAT all proved %d, ms %s%n",
        some.stream().filter(Both::oursProved).count(),
        spread(some.stream().mapToLong(Both::oursMillis).toArray()),
        some.stream().filter(Both::theirsProved).count(),
        spread(
            some.stream().mapToLong(b -> b.theirsProved() ? b.theirsMillis() : limit).toArray()));
  }

  /** Median, 90th percentile and worst. */
  private static String spread(long[] values) {
    long[] sorted = Arrays.stream(values).sorted().toArray();
    int ninetieth = Math.min(sorted.length - 1, (sorted.length * 9 + 9) / 10 - 1);
    return sorted[(sorted.length - 1) / 2]
        + "/"
        + sorted[ninetieth]
        + "/"
        + sorted[sorted.length - 1];
  }

  /** Stops after so long. */
  private static final class Clock implements Watch {
    private final long start = System.nanoTime();
    private final long limitNanos;

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
    public void progress(Progress progress) {}
  }
}
