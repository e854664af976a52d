package dev.faircarry.csv;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Pack;
import dev.faircarry.trip.Policy;
import dev.faircarry.unit.Mass;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Hikers and their packs, a row each. Kits have a table of their own. */
final class HikerTable {
  private static final Mass BODY_STAND_IN = Mass.ofMilligrams(70_000_000L);
  static final Mass LOAD_STAND_IN = Mass.ofMilligrams(10_000_000L);
  private static final List<String> OF_PACK =
      List.of("packMassFrom", "packVolume", "packLoadRating", "packCost", "packLabelMass");

  private HikerTable() {}

  static Hiker read(Row row, FreeIds ids) {
    String id = ids.of(row);
    return new Hiker(
        id,
        FreeIds.name(row, id),
        row.mass("bodyMass", BODY_STAND_IN),
        row.mass("targetLoad", LOAD_STAND_IN),
        row.fraction("targetFraction", Policy.DEFAULT.targetFraction()),
        row.fraction("capFraction", Policy.DEFAULT.capFraction()),
        row.mass("capLoad", LOAD_STAND_IN),
        row.whole("maxPieces", 0),
        row.text("party"),
        row.flag("minor"),
        row.whole("leavesAfterDay", 1),
        pack(row),
        List.of());
  }

  /** A hiker of whom only this is known. */
  static Hiker known(String id) {
    return new Hiker(
        id,
        id,
        Optional.empty(),
        Optional.of(LOAD_STAND_IN),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        false,
        OptionalInt.empty(),
        Optional.empty(),
        List.of());
  }

  private static Optional<Pack> pack(Row row) {
    Optional<Mass> mass = row.mass("packMass", Row.NO_MASS);
    if (mass.isEmpty() && OF_PACK.stream().noneMatch(row::has)) {
      return Optional.empty();
    }
    if (mass.isEmpty()) {
      row.missing("packMass", "State the mass of the pack, or leave all its cells empty.");
    }
    return Optional.of(
        new Pack(
            mass.orElse(Row.NO_MASS),
            row.word("packMassFrom", MassFrom.values(), MassFrom.LABEL),
            row.volume("packVolume"),
            row.mass("packLoadRating", Row.NO_MASS),
            row.cost("packCost"),
            row.mass("packLabelMass", Row.NO_MASS)));
  }

  static Map<String, String> written(Hiker hiker) {
    Cells cells =
        new Cells()
            .put("id", hiker.id())
            .put("name", hiker.name())
            .mass("bodyMass", hiker.bodyMass())
            .mass("targetLoad", hiker.targetLoad())
            .fraction("targetFraction", hiker.targetFraction())
            .fraction("capFraction", hiker.capFraction())
            .mass("capLoad", hiker.capLoad())
            .whole("maxPieces", hiker.maxPieces())
            .text("party", hiker.party())
            .flag("minor", hiker.minor())
            .whole("leavesAfterDay", hiker.leavesAfterDay());
    hiker
        .pack()
        .ifPresent(
            pack ->
                cells
                    .put("packMass", pack.mass().entered())
                    .word("packMassFrom", pack.massFrom(), MassFrom.LABEL)
                    .volume("packVolume", pack.volume())
                    .mass("packLoadRating", pack.loadRating())
                    .cost("packCost", pack.cost())
                    .mass("packLabelMass", pack.labelMass()));
    return cells.map();
  }

  /** The same hiker with another body mass and kit. */
  static Hiker with(Hiker h, Optional<Mass> bodyMass, List<KitItem> kit) {
    return new Hiker(
        h.id(),
        h.name(),
        bodyMass,
        h.targetLoad(),
        h.targetFraction(),
        h.capFraction(),
        h.capLoad(),
        h.maxPieces(),
        h.party(),
        h.minor(),
        h.leavesAfterDay(),
        h.pack(),
        kit);
  }
}
