package dev.faircarry.csv;

import dev.faircarry.check.IssueCode;
import dev.faircarry.trip.Contains;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The things hikers bring anyway, a row each. */
final class KitTable {
  private KitTable() {}

  static KitItem read(Row row, FreeIds ids) {
    String id = ids.of(row);
    return new KitItem(
        id,
        FreeIds.name(row, id),
        neededMass(row),
        row.word("massFrom", MassFrom.values(), MassFrom.LABEL),
        row.volume("volume"),
        row.cost("cost"),
        row.word("stow", Stow.values(), Stow.INSIDE),
        row.flag("worn"),
        row.flag("luxury"),
        row.texts("covers"),
        evenly(row),
        contains(row),
        row.text("purpose"),
        row.mass("labelMass", Row.NO_MASS));
  }

  static Map<String, String> written(String hiker, KitItem item) {
    Cells cells =
        new Cells()
            .put("hiker", hiker)
            .put("id", item.id())
            .put("name", item.name())
            .put("mass", item.mass().entered())
            .word("massFrom", item.massFrom(), MassFrom.LABEL)
            .volume("volume", item.volume())
            .cost("cost", item.cost())
            .word("stow", item.stow(), Stow.INSIDE)
            .flag("worn", item.worn())
            .flag("luxury", item.luxury())
            .list("covers", item.covers())
            .contains(item.contains())
            .text("purpose", item.purpose())
            .mass("labelMass", item.labelMass());
    item.use().ifPresent(use -> cells.put("use", HowUsed.EVENLY.text()).leaves(use.leaves()));
    return cells.map();
  }

  static Mass neededMass(Row row) {
    if (!row.has("mass")) {
      row.missing("mass", "Write a mass such as \"31 oz\".");
    }
    return row.mass("mass", SharedTable.MASS_STAND_IN).orElse(SharedTable.MASS_STAND_IN);
  }

  /** The use of a thing that does not come in units. */
  static Optional<Use.Evenly> evenly(Row row) {
    Optional<HowUsed> use = row.word("use", List.of(HowUsed.EVENLY), HowUsed.EVENLY);
    if (use.isEmpty() && row.has("leaves")) {
      row.note(
          IssueCode.MISSING,
          "use",
          "Something is left of it, but not how it is used.",
          "Write evenly into \"use\", or leave \"leaves\" empty.");
    }
    return use.map(u -> new Use.Evenly(leaves(row)));
  }

  static Mass leaves(Row row) {
    return row.mass("leaves", Row.NO_MASS).orElse(Row.NO_MASS);
  }

  static Optional<Contains> contains(Row row) {
    Optional<String> kind = row.text("containsKind");
    Optional<Volume> volume = row.volume("containsVolume");
    if (kind.isEmpty() && volume.isEmpty()) {
      return Optional.empty();
    }
    if (kind.isEmpty()) {
      row.missing("containsKind", "Say what kind of thing travels inside it.");
    }
    if (volume.isEmpty()) {
      row.missing("containsVolume", "Write a volume such as \"11 L\".");
    }
    return Optional.of(
        new Contains(kind.orElse("?"), volume.orElseGet(() -> new Volume("0 L", 0))));
  }
}
