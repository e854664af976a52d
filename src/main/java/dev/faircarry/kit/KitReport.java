package dev.faircarry.kit;

import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Goals;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.unit.Cost;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Everybody's kit and load. Weights by morning are the verdict's; what things they are made of is
 * read from trip and split for the first morning, on which nothing has been used yet.
 */
public record KitReport(List<KitOf> hikers, KitOf group) {
  /** How many of the heaviest things are named. */
  public static final int HEAVIEST = 5;

  public KitReport {
    hikers = List.copyOf(hikers);
  }

  /**
   * Looks at kits and loads.
   *
   * @param verdict the checker's reading of the same trip and split
   */
  public static KitReport of(Trip trip, Split split, Verdict verdict) {
    List<KitOf> hikers = new ArrayList<>();
    List<Carried> all = new ArrayList<>();
    Map<Integer, Weights> sums = new TreeMap<>();
    long ownBase = 0;
    for (Hiker hiker : trip.hikers()) {
      List<Weights> mornings =
          verdict.hikers().stream()
              .filter(loads -> loads.hiker().equals(hiker.id()))
              .map(HikerLoads::mornings)
              .flatMap(List::stream)
              .map(Weights::of)
              .toList();
      mornings.forEach(w -> sums.merge(w.day(), w, Weights::and));
      List<Carried> things = Carried.by(trip, hiker, split);
      all.addAll(things);
      ownBase += ownBase(hiker);
      hikers.add(
          kitOf(
              Optional.of(hiker.id()),
              mornings,
              ownBase(hiker),
              things,
              costs(hiker),
              goals(trip, hiker)));
    }
    List<Optional<Cost>> costs = new ArrayList<>();
    trip.hikers().forEach(hiker -> costs.addAll(costs(hiker)));
    trip.shared().forEach(item -> costs.add(item.cost()));
    KitOf group =
        kitOf(
            Optional.empty(),
            List.copyOf(sums.values()),
            ownBase,
            all,
            costs,
            new Wanted(Optional.empty(), Optional.empty()));
    return new KitReport(hikers, group);
  }

  private record Wanted(Optional<Long> baseMilligrams, Optional<Long> spendingHundredths) {}

  private static Wanted goals(Trip trip, Hiker hiker) {
    Optional<Goals> goals = trip.plan().flatMap(Plan::goals);
    return new Wanted(
        goals.flatMap(g -> g.baseMassOf(hiker.id())).map(m -> m.milligrams()),
        goals.flatMap(g -> g.spendingOf(hiker.id())).map(c -> c.hundredths()));
  }

  private static KitOf kitOf(
      Optional<String> hiker,
      List<Weights> mornings,
      long ownBase,
      List<Carried> things,
      List<Optional<Cost>> costs,
      Wanted wanted) {
    long cost = costs.stream().mapToLong(c -> c.map(Cost::hundredths).orElse(0L)).sum();
    long base = mornings.stream().findFirst().map(Weights::baseMilligrams).orElse(0L);
    return new KitOf(
        hiker,
        mornings,
        ownBase,
        Share.by(things, Carried::purpose),
        Share.by(things, KitReport::place),
        heaviest(things),
        Drift.of(things),
        things.stream()
            .filter(t -> t.massFrom() != MassFrom.SCALE)
            .mapToLong(Carried::massMilligrams)
            .sum(),
        cost,
        (int) costs.stream().filter(Optional::isEmpty).count(),
        wanted.baseMilligrams().map(goal -> new Goal(goal, base)),
        wanted.spendingHundredths().map(goal -> new Goal(goal, cost)),
        StowAdvice.of(things));
  }

  private static String place(Carried thing) {
    if (thing.worn()) {
      return "worn";
    }
    return thing.where().map(KitReport::text).orElse(Carried.PACK);
  }

  /** The place as it stands in documents: {@code at-hand}. */
  static String text(Stow stow) {
    return stow.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static List<Carried> heaviest(List<Carried> things) {
    return things.stream()
        .filter(t -> !t.worn())
        .sorted(Comparator.comparingLong(t -> -t.massMilligrams()))
        .limit(HEAVIEST)
        .toList();
  }

  /** Pack and packed kit, of what gets used up only what it leaves. */
  private static long ownBase(Hiker hiker) {
    long base = hiker.pack().map(p -> p.mass().milligrams()).orElse(0L);
    for (KitItem item : hiker.kit()) {
      if (!item.worn()) {
        base += item.use().map(use -> use.leaves().milligrams()).orElse(item.mass().milligrams());
      }
    }
    return base;
  }

  private static List<Optional<Cost>> costs(Hiker hiker) {
    List<Optional<Cost>> costs = new ArrayList<>();
    hiker.pack().ifPresent(pack -> costs.add(pack.cost()));
    hiker.kit().forEach(item -> costs.add(item.cost()));
    return costs;
  }
}
