package dev.faircarry.weigh;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What trip and split say that things weigh on the first morning. */
final class Stated {

  /**
   * A thing in a pack, or several units of one.
   *
   * @param name as people know it
   */
  record Thing(String name, long milligrams, MassFrom from) {}

  private final Trip trip;
  private final Split split;

  Stated(Trip trip, Split split) {
    this.trip = trip;
    this.split = split;
  }

  List<Hiker> hikers() {
    return trip.hikers();
  }

  Hiker hiker(String id) {
    return trip.hikers().stream()
        .filter(h -> h.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such hiker"));
  }

  /** A single thing. A pack that nobody described weighs nothing, by a guess. */
  Thing of(Weighed weighed) {
    if (weighed instanceof Weighed.EmptyPack pack) {
      return hiker(pack.hiker())
          .pack()
          .map(p -> new Thing("pack", p.mass().milligrams(), p.massFrom()))
          .orElse(new Thing("pack", 0, MassFrom.ESTIMATE));
    }
    if (weighed instanceof Weighed.OfKit kit) {
      KitItem item =
          hiker(kit.hiker()).kit().stream()
              .filter(k -> k.id().equals(kit.item()))
              .findFirst()
              .orElseThrow(() -> new IllegalArgumentException("no such thing"));
      return new Thing(item.name(), item.mass().milligrams(), item.massFrom());
    }
    PieceRef ref = ((Weighed.Piece) weighed).piece();
    SharedItem item =
        trip.shared().stream()
            .filter(s -> isPieceOf(s, ref))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no such piece"));
    return item.form().match(new OfPiece(item.name(), ref));
  }

  /**
   * Everything in and on a pack on the first morning.
   *
   * @param read masses of single things that were weighed, which stand in place of stated ones
   */
  List<Thing> inPack(String hiker, Map<Weighed, Long> read) {
    List<Thing> things = new ArrayList<>();
    if (hiker(hiker).pack().isPresent()) {
      things.add(of(new Weighed.EmptyPack(hiker), 1, read));
    }
    for (KitItem item : hiker(hiker).kit()) {
      if (!item.worn()) {
        things.add(of(new Weighed.OfKit(hiker, item.id()), 1, read));
      }
    }
    for (Carry carry : split.carries()) {
      // What a hand-made split names and the trip does not have is the check's to tell.
      boolean there =
          trip.shared().stream().anyMatch(s -> isPieceOf(s, carry.piece()) && s.thereOn(1));
      if (carry.hiker().equals(hiker) && there) {
        things.add(of(new Weighed.Piece(carry.piece()), carry.units(), read));
      }
    }
    return things;
  }

  private Thing of(Weighed weighed, int units, Map<Weighed, Long> read) {
    Thing stated = of(weighed);
    Optional<Long> scale = Optional.ofNullable(read.get(weighed));
    return new Thing(
        stated.name(),
        units * scale.orElse(stated.milligrams()),
        scale.isPresent() ? MassFrom.SCALE : stated.from());
  }

  static long sum(List<Thing> things) {
    return things.stream().mapToLong(Thing::milligrams).sum();
  }

  /** Whether a reference names a piece of an item: a part of one in parts, else the item. */
  static boolean isPieceOf(SharedItem item, PieceRef ref) {
    boolean named =
        item.form() instanceof Form.Parts parts
            ? parts.parts().stream().anyMatch(p -> ref.part().equals(Optional.of(p.id())))
            : ref.part().isEmpty();
    return named && item.id().equals(ref.item());
  }

  private record OfPiece(String name, PieceRef ref) implements Form.Cases<Thing> {
    @Override
    public Thing whole(Form.Whole form) {
      return new Thing(name, form.mass().milligrams(), form.massFrom());
    }

    @Override
    public Thing parts(Form.Parts form) {
      return form.parts().stream()
          .filter(p -> ref.part().equals(Optional.of(p.id())))
          .findFirst()
          .map(p -> new Thing(name + ": " + p.name(), p.mass().milligrams(), p.massFrom()))
          .orElseThrow(() -> new IllegalArgumentException("no such part"));
    }

    @Override
    public Thing counted(Form.Counted form) {
      return new Thing(name, form.unitMass().milligrams(), form.massFrom());
    }
  }
}
