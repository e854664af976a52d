package dev.faircarry.oracle;

import dev.faircarry.check.TripIssues;
import dev.faircarry.fixture.HikerOf;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;

/** Random changes of plans of every kind that can be made and leave a trip without issues. */
public final class ChangeGenerator {
  private static final int KINDS = 15;

  private final SplittableRandom random;
  private Trip trip;
  private int fresh;

  private ChangeGenerator(Trip trip, SplittableRandom random) {
    this.trip = trip;
    this.random = random;
  }

  /** From one to so many changes, to be made in this order. */
  public static List<Change> changes(Trip trip, int most, SplittableRandom random) {
    ChangeGenerator generator = new ChangeGenerator(trip, random);
    int wanted = random.nextInt(1, most + 1);
    List<Change> changes = new ArrayList<>();
    for (int tries = 0; tries < 100 && changes.size() < wanted; tries++) {
      Change change = generator.draw();
      if (TripChanging.apply(generator.trip, List.of(change)) instanceof Changed.Made made
          && TripIssues.of(made.trip()).isEmpty()) {
        generator.trip = made.trip();
        changes.add(change);
      }
    }
    return changes;
  }

  private Change draw() {
    Hiker hiker = one(trip.hikers());
    if (trip.shared().isEmpty()) {
      return new Change.ItemAdded(newItem(unusedId(), List.of()));
    }
    SharedItem item = one(trip.shared());
    PieceRef piece = pieceOf(item);
    return switch (random.nextInt(KINDS)) {
      case 0, 1 -> new Change.DropsOut(hiker.id());
      case 2 -> new Change.Joins(newHiker());
      case 3 -> canCarry(hiker);
      case 4 -> new Change.LeavesAfter(hiker.id(), random.nextInt(1, trip.days() + 1));
      case 5 -> new Change.ItemAdded(newItem(unusedId(), item.covers()));
      case 6 ->
          new Change.ItemGone(
              piece,
              item.form() instanceof Form.Counted && random.nextBoolean()
                  ? OptionalInt.of(random.nextInt(1, 4))
                  : OptionalInt.empty());
      case 7 -> new Change.ItemReplaced(item.id(), newItem(unusedId(), item.covers()));
      case 8, 9 -> new Change.ItemWeighs(piece, Trips.grams(random.nextInt(900)), MassFrom.SCALE);
      case 10, 11 -> new Change.RuleAdded(newRule(hiker, piece));
      case 12 -> new Change.RuleRemoved(trip.rules().isEmpty() ? "none" : one(trip.rules()).id());
      case 13 -> kit(hiker);
      default ->
          trip.days() < 3
              ? new Change.DaysAdded(1)
              : new Change.PackWeighs(hiker.id(), Trips.grams(random.nextInt(400)), MassFrom.SCALE);
    };
  }

  private <T> T one(List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private String unusedId() {
    return "new" + ++fresh + "-" + random.nextInt(1000);
  }

  private PieceRef pieceOf(SharedItem item) {
    return item.form() instanceof Form.Parts parts
        ? PieceRef.part(item.id(), one(parts.parts()).id())
        : PieceRef.item(item.id());
  }

  private Hiker newHiker() {
    String id = unusedId();
    return Trips.days(1)
        .hiker(
            id,
            h -> {
              HikerOf of = h.target(random.nextInt(400, 4000)).kit("things", random.nextInt(300));
              return random.nextInt(5) == 0 ? of.minor() : of;
            })
        .trip()
        .hikers()
        .get(0);
  }

  /** Something whole or counted. */
  private SharedItem newItem(String id, List<String> covers) {
    int grams = random.nextInt(700);
    return Trips.days(1)
        .item(
            id,
            s -> {
              s.mass(grams).covers(covers.toArray(String[]::new));
              return random.nextInt(3) == 0 ? s.count(random.nextInt(1, 4)) : s;
            })
        .trip()
        .shared()
        .get(0);
  }

  private Change canCarry(Hiker hiker) {
    int which = random.nextInt(3);
    return new Change.CanCarry(
        hiker.id(),
        Optional.empty(),
        which == 0 ? Optional.of(Trips.grams(random.nextInt(300, 3000))) : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        which == 1 ? Optional.of(Trips.grams(random.nextInt(200, 2500))) : Optional.empty(),
        which == 2 ? OptionalInt.of(random.nextInt(6)) : OptionalInt.empty());
  }

  private Rule newRule(Hiker hiker, PieceRef piece) {
    String id = unusedId();
    List<PieceRef> two =
        List.of(PieceRef.item(one(trip.shared()).id()), PieceRef.item(piece.item()));
    return switch (random.nextInt(5)) {
      case 0 -> new Rule.Pinned(id, List.of(piece), hiker.id());
      case 1 -> new Rule.Only(id, List.of(piece), List.of(hiker.id(), one(trip.hikers()).id()));
      case 2 -> new Rule.Barred(id, List.of(piece), List.of(hiker.id()));
      case 3 -> new Rule.Together(id, two);
      default -> new Rule.Apart(id, two);
    };
  }

  private Change kit(Hiker hiker) {
    if (hiker.kit().isEmpty() || random.nextInt(3) == 0) {
      return new Change.KitAdded(
          hiker.id(),
          Trips.days(1)
              .hiker("x", h -> h.kit(unusedId(), random.nextInt(500)))
              .trip()
              .hikers()
              .get(0)
              .kit()
              .get(0));
    }
    String item = one(hiker.kit()).id();
    return random.nextBoolean()
        ? new Change.KitGone(hiker.id(), item)
        : new Change.KitWeighs(hiker.id(), item, Trips.grams(random.nextInt(500)), MassFrom.SCALE);
  }
}
