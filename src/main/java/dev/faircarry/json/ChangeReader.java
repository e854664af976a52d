package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.ChangeFault;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads changes of plans. */
final class ChangeReader {
  /** Reads the fields of one kind of change. */
  @FunctionalInterface
  private interface Kind {
    Optional<Change> read(Entry entry);
  }

  private static final Map<String, Kind> KINDS = kinds();

  private ChangeReader() {}

  private static Map<String, Kind> kinds() {
    Map<String, Kind> kinds = new LinkedHashMap<>();
    kinds.put("drops-out", e -> Optional.of(new Change.DropsOut(hiker(e))));
    kinds.put(
        "joins",
        e ->
            below(e, "hiker")
                .map(
                    node ->
                        new Change.Joins(
                            new HikerReader(new Ids("h", List.of(node)))
                                .read(node, e.at().at("hiker"), e.issues()))));
    kinds.put("can-carry", e -> Optional.of(canCarry(e)));
    kinds.put(
        "leaves-after",
        e -> Optional.of(new Change.LeavesAfter(hiker(e), e.neededWhole("day", 1))));
    kinds.put("item-added", e -> item(e, "item").map(Change.ItemAdded::new));
    kinds.put("item-gone", e -> Optional.of(new Change.ItemGone(piece(e), e.whole("units", 1))));
    kinds.put(
        "item-replaced",
        e -> {
          String old = e.neededText("item");
          return item(e, "by").map(by -> new Change.ItemReplaced(old, by));
        });
    kinds.put(
        "item-weighs",
        e ->
            Optional.of(
                new Change.ItemWeighs(
                    piece(e), Quantities.neededMass(e, "mass"), HikerReader.massFrom(e))));
    kinds.put(
        "kit-added",
        e -> {
          String hiker = hiker(e);
          return kit(e).map(item -> new Change.KitAdded(hiker, item));
        });
    kinds.put("kit-gone", e -> Optional.of(new Change.KitGone(hiker(e), e.neededText("item"))));
    kinds.put(
        "kit-weighs",
        e ->
            Optional.of(
                new Change.KitWeighs(
                    hiker(e),
                    e.neededText("item"),
                    Quantities.neededMass(e, "mass"),
                    HikerReader.massFrom(e))));
    kinds.put(
        "pack-weighs",
        e ->
            Optional.of(
                new Change.PackWeighs(
                    hiker(e), Quantities.neededMass(e, "mass"), HikerReader.massFrom(e))));
    kinds.put(
        "rule-added",
        e ->
            below(e, "rule")
                .map(
                    node ->
                        new Change.RuleAdded(
                            new RuleReader(new Ids("r", List.of(node)))
                                .read(node, e.at().at("rule"), e.issues()))));
    kinds.put("rule-removed", e -> Optional.of(new Change.RuleRemoved(e.neededText("rule"))));
    kinds.put("days-added", e -> Optional.of(new Change.DaysAdded(e.neededWhole("days", 1))));
    return Collections.unmodifiableMap(kinds);
  }

  /** The changes of a field, in their order. */
  static List<Change> read(Entry around, String field) {
    List<JsonNode> values = around.list(field, Limits.CHANGES).orElse(List.of());
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Entry.of(values.get(i), around.at().at(field).at(i), around.issues())
          .flatMap(ChangeReader::change)
          .ifPresent(changes::add);
    }
    return changes;
  }

  private static Optional<Change> change(Entry entry) {
    Optional<Kind> kind = entry.word("kind", KINDS, e -> Optional.empty());
    if (kind.isEmpty()) {
      entry.missing("kind", "");
      return Optional.empty();
    }
    Optional<Change> change = kind.get().read(entry);
    if (KINDS.containsValue(kind.get())) {
      entry.done();
    }
    return change;
  }

  private static String hiker(Entry entry) {
    return entry.neededText("hiker");
  }

  private static PieceRef piece(Entry entry) {
    return PieceRef.of(entry.neededText("piece"));
  }

  private static Optional<JsonNode> below(Entry entry, String field) {
    Optional<JsonNode> node = entry.find(field);
    if (node.isEmpty()) {
      entry.missing(field, "");
    }
    return node;
  }

  private static Optional<dev.faircarry.trip.SharedItem> item(Entry entry, String field) {
    return below(entry, field)
        .map(
            node ->
                new SharedReader(new Ids("s", List.of(node)))
                    .read(node, entry.at().at(field), entry.issues()));
  }

  private static Optional<KitItem> kit(Entry entry) {
    return below(entry, "item")
        .flatMap(
            node ->
                Entry.of(node, entry.at().at("item"), entry.issues())
                    .map(e -> HikerReader.kitItem(e, new Ids("k", List.of(node)))));
  }

  private static Change canCarry(Entry entry) {
    return new Change.CanCarry(
        hiker(entry),
        Quantities.bodyMass(entry, "bodyMass"),
        Quantities.targetLoad(entry, "targetLoad"),
        Quantities.fraction(entry, "targetFraction", Policy.DEFAULT.targetFraction()),
        Quantities.fraction(entry, "capFraction", Policy.DEFAULT.capFraction()),
        Quantities.mass(entry, "capLoad"),
        entry.whole("maxPieces", 1));
  }

  /** Why changes cannot be made, each at its place. */
  static Issues issues(List<ChangeFault> faults) {
    Issues issues = new Issues();
    for (ChangeFault fault : faults) {
      Pointer place = Pointer.ROOT.at("changes").at(fault.change());
      for (String field : fault.field().split("/", -1)) {
        place = place.at(field);
      }
      String what = "“" + Issues.shortened(fault.value()) + "” ";
      switch (fault.kind()) {
        case UNKNOWN_HIKER ->
            issues.add(IssueCode.UNKNOWN_HIKER, place, fault.value(), what + "is not on the trip.");
        case UNKNOWN_PIECE ->
            issues.add(
                IssueCode.UNKNOWN_PIECE,
                place,
                fault.value(),
                what + "is not among the shared things.");
        case UNKNOWN_THING ->
            issues.add(IssueCode.UNKNOWN_THING, place, fault.value(), what + "is not in that kit.");
        case UNKNOWN_RULE ->
            issues.add(
                IssueCode.UNKNOWN_THING,
                place,
                fault.value(),
                "The trip has no rule with the id " + what.strip() + ".",
                "Name the id of a rule.");
        case DUPLICATE_ID ->
            issues.add(IssueCode.DUPLICATE_ID, place, fault.value(), what + "is there already.");
        case NOT_COUNTED ->
            issues.add(
                IssueCode.CONTRADICTION,
                place,
                fault.value(),
                "Units can go only of what has a stated count.",
                "Leave \"units\" out, or lower \"countPerDay\" by replacing the item.");
        case TOO_MANY_UNITS ->
            issues.add(
                IssueCode.OUT_OF_RANGE,
                place,
                fault.value(),
                what + "is less than one, or more than there are.");
        case NAME_A_PART ->
            issues.add(
                IssueCode.UNKNOWN_PIECE,
                place,
                fault.value(),
                what + "comes in parts, each with its own mass.",
                "Name a part, as \"item/part\".");
        case NO_SUCH_DAY ->
            issues.add(IssueCode.NO_SUCH_DAY, place, fault.value(), "The trip has no such day.");
        case OUT_OF_RANGE ->
            issues.add(
                IssueCode.OUT_OF_RANGE,
                place,
                fault.value(),
                "The trip would have less than one or more than " + Limits.DAYS + " days.");
      }
    }
    return issues;
  }
}
