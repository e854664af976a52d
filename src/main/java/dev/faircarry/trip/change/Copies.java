package dev.faircarry.trip.change;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Pack;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Records that differ from others in one thing. */
final class Copies {
  private Copies() {}

  static Hiker canCarry(Hiker h, Change.CanCarry c) {
    return new Hiker(
        h.id(),
        h.name(),
        c.bodyMass().or(h::bodyMass),
        c.targetLoad().or(h::targetLoad),
        c.targetFraction().or(h::targetFraction),
        c.capFraction().or(h::capFraction),
        c.capLoad().or(h::capLoad),
        c.maxPieces().isPresent() ? c.maxPieces() : h.maxPieces(),
        h.party(),
        h.minor(),
        h.leavesAfterDay(),
        h.pack(),
        h.kit());
  }

  static Hiker leaving(Hiker h, OptionalInt afterDay) {
    return copy(h, afterDay, h.pack(), h.kit());
  }

  static Hiker withKit(Hiker h, List<KitItem> kit) {
    return copy(h, h.leavesAfterDay(), h.pack(), kit);
  }

  static Hiker withPack(Hiker h, Pack pack) {
    return copy(h, h.leavesAfterDay(), Optional.of(pack), h.kit());
  }

  private static Hiker copy(
      Hiker h, OptionalInt leavesAfterDay, Optional<Pack> pack, List<KitItem> kit) {
    return new Hiker(
        h.id(),
        h.name(),
        h.bodyMass(),
        h.targetLoad(),
        h.targetFraction(),
        h.capFraction(),
        h.capLoad(),
        h.maxPieces(),
        h.party(),
        h.minor(),
        leavesAfterDay,
        pack,
        kit);
  }

  /** What a label claimed stays beside the new mass. */
  static KitItem weighing(KitItem k, Mass mass, MassFrom from) {
    Optional<Mass> label = k.massFrom() == MassFrom.LABEL ? Optional.of(k.mass()) : k.labelMass();
    return new KitItem(
        k.id(),
        k.name(),
        mass,
        from,
        k.volume(),
        k.cost(),
        k.stow(),
        k.worn(),
        k.luxury(),
        k.covers(),
        k.use(),
        k.contains(),
        k.purpose(),
        label);
  }

  static SharedItem ownedBy(SharedItem s, Optional<String> owner) {
    return new SharedItem(
        s.id(),
        s.name(),
        owner,
        s.covers(),
        s.sleeps(),
        s.cost(),
        s.goesInto(),
        s.onDays(),
        s.purpose(),
        s.form());
  }

  static SharedItem inForm(SharedItem s, Form form) {
    return new SharedItem(
        s.id(),
        s.name(),
        s.owner(),
        s.covers(),
        s.sleeps(),
        s.cost(),
        s.goesInto(),
        s.onDays(),
        s.purpose(),
        form);
  }

  /** The item with its listed use going on as on the last day; empty if nothing is listed. */
  static Optional<SharedItem> usedLonger(SharedItem item, int days) {
    if (!(item.form() instanceof Form.Counted form)
        || form.use().isEmpty()
        || !(form.use().get() instanceof Use.UnitsPerDay use)
        || !(use.perDay() instanceof Use.PerDay.Listed listed)
        || listed.units().isEmpty()) {
      return Optional.empty();
    }
    List<Integer> units = new ArrayList<>(listed.units());
    int last = units.get(units.size() - 1);
    for (int d = 0; d < days; d++) {
      units.add(last);
    }
    Use longer = new Use.UnitsPerDay(new Use.PerDay.Listed(units), use.leaves());
    return Optional.of(
        inForm(
            item,
            new Form.Counted(
                form.quantity(),
                form.unitMass(),
                form.massFrom(),
                form.unitVolume(),
                form.stow(),
                Optional.of(longer))));
  }
}
