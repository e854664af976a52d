package dev.faircarry.weigh;

import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.unit.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sets readings against what trip and split say of the first morning. Nothing stated is
 * overwritten; what accepting would change is told as changes. Single things come first, so that
 * their readings are used for the packs they are in.
 */
public final class Reconciliation {
  /** Id of the line of a kit that stands for what nothing explains. */
  public static final String REST = "scale-rest";

  /** A label that would have to be off by more explains nothing (common practice). */
  public static final int MOST_OFF_THOUSANDTHS = 350;

  private final Stated stated;
  private final Tolerance tolerance;
  private final Map<Weighed, Long> read = new LinkedHashMap<>();

  private Reconciliation(Stated stated, Tolerance tolerance) {
    this.stated = stated;
    this.tolerance = tolerance;
  }

  /**
   * One answer for each subject, single things first.
   *
   * @param trip a trip without issues that has all subjects
   * @param split any split; what the trip does not have is passed over
   */
  public static List<Reconciled> of(
      Trip trip, Split split, List<ScaleReading> readings, Tolerance tolerance) {
    Map<Weighed, List<ScaleReading>> bySubject = new LinkedHashMap<>();
    readings.forEach(r -> bySubject.computeIfAbsent(r.weighed(), w -> new ArrayList<>()).add(r));
    Reconciliation all = new Reconciliation(new Stated(trip, split), tolerance);
    List<Reconciled> single = new ArrayList<>();
    List<Reconciled> packs = new ArrayList<>();
    bySubject.forEach(
        (weighed, of) -> {
          if (!(weighed instanceof Weighed.WholePack)) {
            single.add(all.single(weighed, of));
          }
        });
    bySubject.forEach(
        (weighed, of) -> {
          if (weighed instanceof Weighed.WholePack pack) {
            packs.add(all.pack(pack, of));
          }
        });
    single.addAll(packs);
    return single;
  }

  /** Where somebody looked again, only what was read then; all of them, or none, are confirmed. */
  private static List<ScaleReading> counting(List<ScaleReading> readings) {
    List<ScaleReading> looked = readings.stream().filter(ScaleReading::confirmed).toList();
    return looked.isEmpty() ? readings : looked;
  }

  /** The middle reading; of an even number the mean of the middle two, rounded down. */
  private static long middle(List<ScaleReading> readings) {
    List<Long> sorted = readings.stream().map(r -> r.mass().milligrams()).sorted().toList();
    int n = sorted.size();
    return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
  }

  private static Optional<String> scattered(List<ScaleReading> readings, long tolerated) {
    long high = readings.stream().mapToLong(r -> r.mass().milligrams()).max().orElse(0);
    long low = readings.stream().mapToLong(r -> r.mass().milligrams()).min().orElse(0);
    return high - low > tolerated
        ? Optional.of("The readings of the same thing do not agree: is the scale steady?")
        : Optional.empty();
  }

  private Reconciled single(Weighed weighed, List<ScaleReading> readings) {
    List<ScaleReading> counting = counting(readings);
    long expected = stated.of(weighed).milligrams();
    long mass = middle(counting);
    long tolerated = tolerance.of(expected);
    Optional<String> question =
        counting.get(0).confirmed()
            ? Optional.empty()
            : scattered(counting, tolerated).or(() -> Slips.units(expected, mass));
    if (question.isEmpty()) {
      read.put(weighed, mass);
    }
    Reconciled.Result result =
        question.isPresent()
            ? Reconciled.Result.QUESTIONED
            : Math.abs(mass - expected) <= tolerated
                ? Reconciled.Result.AGREES
                : Reconciled.Result.REPLACES;
    return new Reconciled(
        weighed,
        readings,
        expected,
        mass,
        mass - expected,
        tolerated,
        result,
        List.of(),
        question,
        question.isPresent() || takenOver(weighed, mass)
            ? List.of()
            : List.of(change(weighed, entered(counting, mass))));
  }

  private boolean takenOver(Weighed weighed, long mass) {
    Stated.Thing thing = stated.of(weighed);
    return thing.from() == MassFrom.SCALE && thing.milligrams() == mass;
  }

  /** As entered where one reading says just that. */
  private static Mass entered(List<ScaleReading> readings, long milligrams) {
    return readings.stream()
        .map(ScaleReading::mass)
        .filter(m -> m.milligrams() == milligrams)
        .findFirst()
        .orElseGet(() -> Mass.ofMilligrams(milligrams));
  }

  private static Change change(Weighed weighed, Mass mass) {
    if (weighed instanceof Weighed.OfKit kit) {
      return new Change.KitWeighs(kit.hiker(), kit.item(), mass, MassFrom.SCALE);
    }
    if (weighed instanceof Weighed.EmptyPack pack) {
      return new Change.PackWeighs(pack.hiker(), mass, MassFrom.SCALE);
    }
    return new Change.ItemWeighs(((Weighed.Piece) weighed).piece(), mass, MassFrom.SCALE);
  }

  private Reconciled pack(Weighed.WholePack pack, List<ScaleReading> readings) {
    List<ScaleReading> counting = counting(readings);
    List<Stated.Thing> things = stated.inPack(pack.hiker(), read);
    long expected = Stated.sum(things);
    long mass = middle(counting);
    long difference = mass - expected;
    long tolerated = tolerance.of(expected);
    boolean agrees = Math.abs(difference) <= tolerated;
    List<Reconciled.Suspect> suspects = agrees ? List.of() : suspects(things, difference);
    Optional<String> question =
        counting.get(0).confirmed()
            ? Optional.empty()
            : scattered(counting, tolerated)
                .or(() -> agrees ? Optional.empty() : slip(pack.hiker(), expected, mass));
    Reconciled.Result result =
        question.isPresent()
            ? Reconciled.Result.QUESTIONED
            : agrees
                ? Reconciled.Result.AGREES
                : suspects.isEmpty()
                    ? Reconciled.Result.UNEXPLAINED
                    : Reconciled.Result.LABELS_COULD_EXPLAIN;
    List<Change> changes =
        question.isPresent() || agrees ? List.of() : rest(pack.hiker(), difference);
    if (question.isEmpty() && !agrees && changes.isEmpty()) {
      // A kit has no line of less than nothing, so this cannot be accepted as it stands.
      question = Optional.of("The pack is lighter than what is in it: is something left behind?");
    }
    return new Reconciled(
        pack, readings, expected, mass, difference, tolerated, result, suspects, question, changes);
  }

  private Optional<String> slip(String hiker, long expected, long mass) {
    // What fits to the gram is asked first: two like packs are about as many pounds as kilograms.
    long worn =
        stated.hiker(hiker).kit().stream()
            .filter(KitItem::worn)
            .mapToLong(k -> k.mass().milligrams())
            .sum();
    if (worn > 0 && Math.abs(mass - expected - worn) <= tolerance.of(expected + worn)) {
      return Optional.of("The difference is what is worn: was it on the scale?");
    }
    for (Hiker other : stated.hikers()) {
      long both = expected + Stated.sum(stated.inPack(other.id(), read));
      if (!other.id().equals(hiker) && Math.abs(mass - both) <= tolerance.of(both)) {
        return Optional.of("Was " + other.name() + "’s pack on the scale as well?");
      }
    }
    return Slips.units(expected, mass);
  }

  /**
   * The rest as a line of its own; a line of an earlier weigh-in grows, shrinks or goes. None when
   * less than nothing would be left.
   */
  private List<Change> rest(String hiker, long difference) {
    for (KitItem item : stated.hiker(hiker).kit()) {
      long sum = item.mass().milligrams() + difference;
      if (item.id().equals(REST) && sum > 0) {
        Mass mass = Mass.ofMilligrams(sum);
        return List.of(new Change.KitWeighs(hiker, REST, mass, MassFrom.SCALE));
      }
      if (item.id().equals(REST) && sum == 0) {
        return List.of(new Change.KitGone(hiker, REST));
      }
    }
    if (difference < 0) {
      return List.of();
    }
    KitItem rest =
        new KitItem(
            REST,
            "What the scale found beyond the list",
            Mass.ofMilligrams(difference),
            MassFrom.SCALE,
            Optional.empty(),
            Optional.empty(),
            Stow.INSIDE,
            false,
            false,
            List.of(),
            Optional.empty(),
            Optional.empty());
    return List.of(new Change.KitAdded(hiker, rest));
  }

  private static List<Reconciled.Suspect> suspects(List<Stated.Thing> things, long difference) {
    List<Reconciled.Suspect> suspects = new ArrayList<>();
    for (Stated.Thing thing : things) {
      long mass = thing.milligrams();
      boolean could = Math.abs(difference) * 1000 <= MOST_OFF_THOUSANDTHS * mass;
      if (thing.from() != MassFrom.SCALE && mass > 0 && could) {
        suspects.add(new Reconciled.Suspect(thing.name(), mass, difference * 1000 / mass));
      }
    }
    suspects.sort(Comparator.comparingLong(Reconciled.Suspect::statedMilligrams).reversed());
    return suspects;
  }
}
