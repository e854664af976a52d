package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Pack;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Stow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the hikers of a trip, with pack and kit. */
final class HikerReader {
  private final Ids ids;

  HikerReader(Ids ids) {
    this.ids = ids;
  }

  Hiker read(JsonNode node, Pointer at, Issues issues) {
    return Entry.of(node, at, issues).map(this::hiker).orElseGet(this::standIn);
  }

  private Hiker hiker(Entry entry) {
    String id = ids.of(entry);
    Hiker hiker =
        new Hiker(
            id,
            Names.of(entry, id),
            Quantities.bodyMass(entry, "bodyMass"),
            Quantities.targetLoad(entry, "targetLoad"),
            Quantities.fraction(entry, "targetFraction", Policy.DEFAULT.targetFraction()),
            Quantities.fraction(entry, "capFraction", Policy.DEFAULT.capFraction()),
            Quantities.mass(entry, "capLoad"),
            entry.whole("maxPieces", Limits.PIECES),
            entry.text("party"),
            entry.flag("minor"),
            entry.whole("leavesAfterDay", 1),
            entry.child("pack").map(HikerReader::pack),
            kit(entry));
    entry.done();
    return hiker;
  }

  /** In place of what is no object, so that the places of the others stay right. */
  private Hiker standIn() {
    String id = ids.next();
    return new Hiker(
        id,
        id,
        Optional.empty(),
        Optional.of(Quantities.LOAD_STAND_IN),
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

  private static Pack pack(Entry entry) {
    Pack pack =
        new Pack(
            Quantities.neededMass(entry, "mass"),
            massFrom(entry),
            Quantities.volume(entry, "volume"),
            Quantities.mass(entry, "loadRating"),
            Quantities.cost(entry, "cost"),
            Quantities.mass(entry, "labelMass"));
    entry.done();
    return pack;
  }

  static MassFrom massFrom(Entry entry) {
    return entry.word("massFrom", Words.MASS_FROM, MassFrom.LABEL).orElse(MassFrom.LABEL);
  }

  static Stow stow(Entry entry) {
    return entry.word("stow", Words.STOW, Stow.INSIDE).orElse(Stow.INSIDE);
  }

  private static List<KitItem> kit(Entry hiker) {
    List<JsonNode> values = hiker.list("kit", Limits.KIT_ITEMS_PER_HIKER).orElse(List.of());
    Ids ids = new Ids("k", values);
    List<KitItem> kit = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      kit.add(
          Entry.of(values.get(i), hiker.at().at("kit").at(i), hiker.issues())
              .map(entry -> kitItem(entry, ids))
              .orElseGet(() -> standIn(ids.next())));
    }
    return kit;
  }

  static KitItem kitItem(Entry entry, Ids ids) {
    String id = ids.of(entry);
    KitItem item =
        new KitItem(
            id,
            Names.of(entry, id),
            Quantities.neededMass(entry, "mass"),
            massFrom(entry),
            Quantities.volume(entry, "volume"),
            Quantities.cost(entry, "cost"),
            stow(entry),
            entry.flag("worn"),
            entry.flag("luxury"),
            entry.texts("covers", Limits.COVERS_PER_ITEM).orElse(List.of()),
            UseReader.evenly(entry),
            UseReader.contains(entry),
            entry.text("purpose"),
            Quantities.mass(entry, "labelMass"));
    entry.done();
    return item;
  }

  private static KitItem standIn(String id) {
    return new KitItem(
        id,
        id,
        Quantities.NO_MASS,
        MassFrom.LABEL,
        Optional.empty(),
        Optional.empty(),
        Stow.INSIDE,
        false,
        false,
        List.of(),
        Optional.empty(),
        Optional.empty());
  }
}
