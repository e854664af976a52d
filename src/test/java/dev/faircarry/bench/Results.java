package dev.faircarry.bench;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;

/** Results of a family, hard trips apart from trivial ones; what is not proved counts the limit. */
final class Results {
  private final String name;
  private final double seconds;
  private final List<Run> runs = new ArrayList<>();

  Results(String name, double seconds) {
    this.name = name;
    this.seconds = seconds;
  }

  void add(Run run) {
    runs.add(run);
  }

  void add(Results others) {
    runs.addAll(others.runs);
  }

  void print(PrintStream out) {
    out.println("== " + name);
    print(out, "hard", runs.stream().filter(r -> !r.trivial()).toList());
    print(out, "trivial first level", runs.stream().filter(Run::trivial).toList());
  }

  private void print(PrintStream out, String title, List<Run> some) {
    if (some.isEmpty()) {
      return;
    }
    long limit = (long) (seconds * 1000);
    ToLongFunction<Run> first = r -> r.firstProved() ? r.firstMillis() : limit;
    ToLongFunction<Run> list = r -> r.listProved() ? r.listMillis() : limit;
    ToLongFunction<Run> cpFirst = r -> r.cpFirstProved() ? r.cpFirstMillis() : limit;
    ToLongFunction<Run> cpList = r -> r.cpListProved() ? r.cpListMillis() : limit;
    out.println("  " + title + ": " + some.size() + " trips");
    line(out, "first level, ours", some, first, Run::firstProved);
    line(out, "first level, CP-SAT", some, cpFirst, Run::cpFirstProved);
    line(out, "whole list, ours", some, list, Run::listProved);
    line(out, "whole list, CP-SAT", some, cpList, Run::cpListProved);
    out.printf(
        Locale.ROOT,
        "    CP-SAT time over ours, geometric mean: first level %.2f, list %.2f%n",
        ratio(some, cpFirst, first),
        ratio(some, cpList, list));
    out.println("    steps above the bound: " + found(some, Run::boundGap));
    out.printf(
        Locale.ROOT,
        "    every level within a step of its bound: %d/%d; widest level, steps %s%n",
        some.stream().filter(r -> r.listGap() == 0 || r.listGap() == 1).count(),
        some.size(),
        found(some, Run::listGap));
    out.println(
        "    steps above the best known: after 50 ms "
            + found(some, r -> r.glimpseGaps().get(0))
            + "; 200 ms "
            + found(some, r -> r.glimpseGaps().get(1))
            + "; 1000 ms "
            + found(some, r -> r.glimpseGaps().get(2)));
    out.println("    CP-SAT: " + found(some, Run::cpGap));
    List<Run> byHand = some.stream().filter(r -> r.handGap() >= 0).toList();
    out.println("    by hand: " + spread(byHand, Run::handGap));
  }

  private static void line(
      PrintStream out,
      String what,
      List<Run> some,
      ToLongFunction<Run> millis,
      Predicate<Run> proved) {
    out.printf(
        Locale.ROOT,
        "    %-20s proved %d/%d, ms %s%n",
        what,
        some.stream().filter(proved).count(),
        some.size(),
        spread(some, millis));
  }

  /** The spread where there is something to measure, and how often there is nothing. */
  private static String found(List<Run> some, ToLongFunction<Run> of) {
    List<Run> with = some.stream().filter(r -> of.applyAsLong(r) >= 0).toList();
    int nothing = some.size() - with.size();
    return spread(with, of) + (nothing == 0 ? "" : " (nothing on " + nothing + ")");
  }

  /** Median, 90th percentile and worst. */
  private static String spread(List<Run> some, ToLongFunction<Run> of) {
    if (some.isEmpty()) {
      return "-";
    }
    long[] sorted = some.stream().mapToLong(of).sorted().toArray();
    int ninetieth = Math.min(sorted.length - 1, (sorted.length * 9 + 9) / 10 - 1);
    return sorted[(sorted.length - 1) / 2]
        + "/"
        + sorted[ninetieth]
        + "/"
        + sorted[sorted.length - 1];
  }

  private static double ratio(
      List<Run> some, ToLongFunction<Run> theirs, ToLongFunction<Run> ours) {
    double sum = 0;
    for (Run run : some) {
      // A millisecond is the finest that is told apart.
      sum +=
          Math.log((double) Math.max(1, theirs.applyAsLong(run)))
              - Math.log((double) Math.max(1, ours.applyAsLong(run)));
    }
    return Math.exp(sum / some.size());
  }
}
