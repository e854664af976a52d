package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.IdText;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.PieceRef;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a split document, hand-made or as the service answered it. Whether it fits a trip is not
 * judged here: that is the verdict.
 */
public final class SplitReader {
  /** Name of the format and its version. */
  public static final String FORMAT = "faircarry-split/1";

  private final Issues issues;
  private final List<Carry> carries = new ArrayList<>();

  private SplitReader(Issues issues) {
    this.issues = issues;
  }

  /** Reads the bytes of a document. */
  public static Reading<Split> read(byte[] document) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .map(root -> read(root, Pointer.ROOT, issues))
        .orElseGet(() -> Report.bad(issues));
  }

  /**
   * Reads a split that stands inside a larger document.
   *
   * @param at its place there
   * @param found issues found so far, to be reported together
   */
  static Reading<Split> read(JsonNode root, Pointer at, Issues found) {
    Issues issues = new Issues();
    Optional<Split> split =
        Entry.of(root, Pointer.ROOT, issues).map(entry -> new SplitReader(issues).split(entry));
    return Report.of(split, found, at, issues, List.of());
  }

  private Split split(Entry entry) {
    TripReader.format(entry, FORMAT);
    List<JsonNode> values =
        entry.list("carries", Limits.HIKERS).orElseGet(() -> entry.missing("carries", List.of()));
    Set<String> hikers = new HashSet<>();
    for (int i = 0; i < values.size(); i++) {
      Entry.of(values.get(i), entry.at().at("carries").at(i), issues)
          .ifPresent(carry -> carry(carry, hikers));
    }
    List<Opened> opened = new ArrayList<>();
    entries(entry, "opened", Limits.PIECES).forEach(e -> opened.add(opened(e)));
    List<CampHandover> handovers = new ArrayList<>();
    entries(entry, "handoversAtCamp", Limits.HANDOVERS_AT_CAMP)
        .forEach(e -> handovers.add(handover(e)));
    entry.pass(SplitFields.OF_SPLIT);
    entry.done();
    return new Split(carries, opened, handovers);
  }

  private void carry(Entry entry, Set<String> hikers) {
    String hiker = hiker(entry, "hiker");
    if (!hikers.add(hiker)) {
      duplicate(entry.at().at("hiker"), hiker);
    }
    List<JsonNode> values =
        entry.list("pieces", Limits.PIECES).orElseGet(() -> entry.missing("pieces", List.of()));
    Set<PieceRef> seen = new HashSet<>();
    for (int i = 0; i < values.size(); i++) {
      Pointer place = entry.at().at("pieces").at(i);
      Optional<Carry> carry = piece(hiker, values.get(i), place);
      if (carry.isPresent()) {
        carries.add(carry.get());
        if (!seen.add(carry.get().piece())) {
          duplicate(place, carry.get().piece().text());
        }
      }
    }
    entry.pass(SplitFields.OF_CARRY);
    entry.done();
  }

  private Optional<Carry> piece(String hiker, JsonNode node, Pointer place) {
    if (node.isTextual()) {
      return Optional.of(new Carry(hiker, ref(node.asText(), place), 1));
    }
    if (!node.isObject()) {
      Entry.wrongType(node, place, "the name of a piece, or piece and units", true, issues);
      return Optional.empty();
    }
    return Entry.of(node, place, issues)
        .map(
            entry -> {
              PieceRef piece = piece(entry);
              int units = units(entry);
              entry.done();
              return new Carry(hiker, piece, units);
            });
  }

  private Opened opened(Entry entry) {
    int day = day(entry, "day");
    String item = entry.neededText("piece");
    id(item, entry.at().at("piece"));
    Opened opened = new Opened(day, item, hiker(entry, "hiker"), units(entry));
    entry.done();
    return opened;
  }

  private CampHandover handover(Entry entry) {
    CampHandover handover =
        new CampHandover(
            day(entry, "afterDay"),
            hiker(entry, "from"),
            hiker(entry, "to"),
            piece(entry),
            units(entry));
    entry.done();
    return handover;
  }

  private List<Entry> entries(Entry entry, String field, int most) {
    List<JsonNode> values = entry.list(field, most).orElse(List.of());
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Entry.of(values.get(i), entry.at().at(field).at(i), issues).ifPresent(entries::add);
    }
    return entries;
  }

  private PieceRef piece(Entry entry) {
    return ref(entry.neededText("piece"), entry.at().at("piece"));
  }

  private PieceRef ref(String text, Pointer place) {
    PieceRef ref = PieceRef.of(text);
    if (id(ref.item(), place) && ref.part().isPresent()) {
      id(ref.part().get(), place);
    }
    return ref;
  }

  private String hiker(Entry entry, String field) {
    String hiker = entry.neededText(field);
    id(hiker, entry.at().at(field));
    return hiker;
  }

  /** Whether the text can be an id; noted if it cannot, unless its place is already known bad. */
  private boolean id(String text, Pointer place) {
    Optional<IssueCode> fault = IdText.fault(text);
    if (fault.isPresent() && !issues.has(place)) {
      issues.add(fault.get(), place, text, "This cannot be an id: " + fault.get().meaning());
    }
    return fault.isEmpty();
  }

  /** How many units, one unless stated. */
  private int units(Entry entry) {
    int units = entry.whole("units", 1).orElse(1);
    inRange(units, Limits.PIECES, entry.at().at("units"));
    return units;
  }

  private int day(Entry entry, String field) {
    int day = entry.neededWhole(field, 1);
    inRange(day, Limits.DAYS, entry.at().at(field));
    return day;
  }

  private void inRange(int number, int most, Pointer place) {
    if (number < 1 || number > most) {
      issues.add(
          IssueCode.OUT_OF_RANGE,
          place,
          String.valueOf(number),
          "The number " + number + " is outside 1 to " + most + ".",
          "Write a whole number from 1 to " + most + ".");
    }
  }

  private void duplicate(Pointer place, String name) {
    if (!issues.has(place)) {
      issues.add(
          IssueCode.DUPLICATE_NAME,
          place,
          name,
          "\"" + Issues.shortened(name) + "\" is named twice in this list.");
    }
  }
}
