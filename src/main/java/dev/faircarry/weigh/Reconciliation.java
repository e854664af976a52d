package dev.faircarry.weigh;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
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
  /** Id and name of the line of a kit that stands for what nothing explains. */
  public static final String REST = "scale-rest";

  /** A label that would have to be off by more explains nothing (common practice). */
  public static final int MOST_OFF_THOUSANDTHS = 350;

  private record Stated(String thing, long milligrams, MassFrom from) {}

  private final Trip trip;
  private final Split split;
  private final Tolerance tolerance;
  private final Map<Weighed, Long> read = new LinkedHashMap<>();

  private Reconciliation(Trip trip, Split split, Tolerance tolerance) {
    this.trip = trip;
    this.split = split;
    this.tolerance = tolerance;
  }

  /**
   * One answer for each subject, single things first.
   *
   * @param trip a trip without issues that has all subjects
   */
  public static List<Reconciled> of(
      Trip trip, Split split, List<ScaleReading> readings, Tolerance tolerance) {
    Map<Weighed, List<ScaleReading>> bySubject = new LinkedHashMap<>();
    readings.forEach(r -> bySubject.computeIfAbsent(r.weighed(), w -> new ArrayList<>()).add(r));
    Reconciliation all = new Reconciliation(trip, split, tolerance);
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

  /** The middle reading; of an even number the mean of the middle two, rounded down. */
  private static long middle(List<ScaleReading> readings) {
    List<Long> sorted = readings.stream().map(r -> r.mass().milligrams()).sorted().toList();
    int n = sorted.size();
    return (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
  }

  private Optional<String> scattered(List<ScaleReading> readings, long tolerated) {
    long high = readings.stream().mapToLong(r -> r.mass().milligrams()).max().orElse(0);
    long low = readings.stream().mapToLong(r -> r.mass().milligrams()).min().orElse(0);
    return high - low > tolerated
        ? Optional.of("The readings of the same thing do not agree: is the scale steady?")
        : Optional.empty();
  }

  private static boolean confirmed(List<ScaleReading> readings) {
    return readings.stream().allMatch(ScaleReading::confirmed);
  }

  private Reconciled single(Weighed weighed, List<ScaleReading> readings) {
    Stated stated = stated(weighed);
    long mass = middle(readings);
    long tolerated = tolerance.of(stated.milligrams());
    Optional<String> question =
        scattered(readings, tolerated).or(() -> Slips.units(stated.milligrams(), mass));
    boolean asked = question.isPresent() && !confirmed(readings);
    if (!asked) {
      read.put(weighed, mass);
    }
    Reconciled.Result result =
        asked
            ? Reconciled.Result.QUESTIONED
            : Math.abs(mass - stated.milligrams()) <= tolerated
                ? Reconciled.Result.AGREES
                : Reconciled.Result.REPLACES;
    return new Reconciled(
        weighed,
        readings,
        stated.milligrams(),
        mass,
        mass - stated.milligrams(),
        tolerated,
        result,
        List.of(),
        asked ? question : Optional.empty(),
        asked ? List.of() : List.of(change(weighed, entered(readings, mass))));
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
    List<Stated> things = things(pack.hiker());
    long expected = sum(things);
    long mass = middle(readings);
    long difference = mass - expected;
    long tolerated = tolerance.of(expected);
    boolean agrees = Math.abs(difference) <= tolerated;
    Optional<String> question =
        scattered(readings, tolerated)
            .or(() -> agrees ? Optional.empty() : slip(pack.hiker(), expected, mass));
    List<Reconciled.Suspect> suspects = agrees ? List.of() : suspects(things, difference);
    List<Change> changes = List.of();
    Reconciled.Result result;
    if (question.isPresent() && !confirmed(readings)) {
      result = Reconciled.Result.QUESTIONED;
    } else {
      question = Optional.empty();
      result =
          agrees
              ? Reconciled.Result.AGREES
              : suspects.isEmpty()
                  ? Reconciled.Result.UNEXPLAINED
                  : Reconciled.Result.LABELS_COULD_EXPLAIN;
      if (!agrees && difference > 0) {
        changes = rest(pack.hiker(), difference);
      } else if (!agrees) {
        // A kit has no line of less than nothing, so this cannot be accepted as it stands.
        question = Optional.of("The pack is lighter than what is in it: is something left behind?");
      }
    }
    return new Reconciled(
        pack, readings, expected, mass, difference, tolerated, result, suspects, question, changes);
  }

  private Optional<String> slip(String hiker, long expected, long mass) {
    Optional<String> units = Slips.units(expected, mass);
    if (units.isPresent()) {
      return units;
    }
    long worn =
        hiker(hiker).kit().stream()
            .filter(KitItem::worn)
            .mapToLong(k -> k.mass().milligrams())
            .sum();
    if (worn > 0 && Math.abs(mass - expected - worn) <= tolerance.of(expected + worn)) {
      return Optional.of("The difference is what is worn: was it on the scale?");
    }
    for (Hiker other : trip.hikers()) {
      long both = expected + sum(things(other.id()));
      if (!other.id().equals(hiker) && Math.abs(mass - both) <= tolerance.of(both)) {
        return Optional.of("Was " + other.name() + "’s pack on the scale as well?");
      }
    }
    return Optional.empty();
  }

  /** The rest as a line of its own; a line of an earlier weigh-in grows. */
  private List<Change> rest(String hiker, long difference) {
    for (KitItem item : hiker(hiker).kit()) {
      if (item.id().equals(REST)) {
        Mass sum = Mass.ofMilligrams(item.mass().milligrams() + difference);
        return List.of(new Change.KitWeighs(hiker, REST, sum, MassFrom.SCALE));
      }
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

  private static List<Reconciled.Suspect> suspects(List<Stated> things, long difference) {
    List<Reconciled.Suspect> suspects = new ArrayList<>();
    for (Stated thing : things) {
      if (thing.from() != MassFrom.SCALE && thing.milligrams() > 0) {
        long off = difference * 1000 / thing.milligrams();
        if (Math.abs(off) <= MOST_OFF_THOUSANDTHS) {
          suspects.add(new Reconciled.Suspect(thing.thing(), thing.milligrams(), off));
        }
      }
    }
    suspects.sort(Comparator.comparingLong(Reconciled.Suspect::statedMilligrams).reversed());
    return suspects;
  }

  private static long sum(List<Stated> things) {
    return things.stream().mapToLong(Stated::milligrams).sum();
  }

  /** Everything in and on a pack on the first morning, with the readings of single things. */
  private List<Stated> things(String id) {
    Hiker hiker = hiker(id);
    List<Stated> things = new ArrayList<>();
    if (hiker.pack().isPresent()) {
      things.add(weighed(new Weighed.EmptyPack(id), 1));
    }
    for (KitItem item : hiker.kit()) {
      if (!item.worn()) {
        things.add(weighed(new Weighed.OfKit(id, item.id()), 1));
      }
    }
    for (Carry carry : split.carries()) {
      if (carry.hiker().equals(id) && item(carry.piece()).thereOn(1)) {
        things.add(weighed(new Weighed.Piece(carry.piece()), carry.units()));
      }
    }
    return things;
  }

  private Stated weighed(Weighed weighed, int units) {
    Stated stated = stated(weighed);
    Optional<Long> scale = Optional.ofNullable(read.get(weighed));
    return new Stated(
        stated.thing(),
        units * scale.orElse(stated.milligrams()),
        scale.isPresent() ? MassFrom.SCALE : stated.from());
  }

  private Stated stated(Weighed weighed) {
    if (weighed instanceof Weighed.EmptyPack pack) {
      return hiker(pack.hiker())
          .pack()
          .map(p -> new Stated("pack", p.mass().milligrams(), p.massFrom()))
          .orElse(new Stated("pack", 0, MassFrom.ESTIMATE));
    }
    if (weighed instanceof Weighed.OfKit kit) {
      KitItem item =
          hiker(kit.hiker()).kit().stream()
              .filter(k -> k.id().equals(kit.item()))
              .findFirst()
              .orElseThrow(() -> new IllegalArgumentException("no such thing"));
      return new Stated(item.name(), item.mass().milligrams(), item.massFrom());
    }
    PieceRef ref = ((Weighed.Piece) weighed).piece();
    SharedItem item = item(ref);
    return item.form().match(new OfPiece(item.name(), ref));
  }

  private Hiker hiker(String id) {
    return trip.hikers().stream()
        .filter(h -> h.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such hiker"));
  }

  private SharedItem item(PieceRef ref) {
    return trip.shared().stream()
        .filter(s -> s.id().equals(ref.item()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such item"));
  }

  private record OfPiece(String name, PieceRef ref) implements Form.Cases<Stated> {
    @Override
    public Stated whole(Form.Whole form) {
      return new Stated(name, form.mass().milligrams(), form.massFrom());
    }

    @Override
    public Stated parts(Form.Parts form) {
      return form.parts().stream()
          .filter(p -> ref.part().equals(Optional.of(p.id())))
          .findFirst()
          .map(p -> new Stated(name + ": " + p.name(), p.mass().milligrams(), p.massFrom()))
          .orElseThrow(() -> new IllegalArgumentException("no such part"));
    }

    @Override
    public Stated counted(Form.Counted form) {
      return new Stated(name, form.unitMass().milligrams(), form.massFrom());
    }
  }
}
