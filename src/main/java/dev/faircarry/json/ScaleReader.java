package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.app.WeighIn.Accept;
import dev.faircarry.check.IssueCode;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.unit.Mass;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.Tolerance;
import dev.faircarry.weigh.WeighLimits;
import dev.faircarry.weigh.Weighed;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Reads readings of a scale, and what goes with them. */
final class ScaleReader {
  private static final Map<String, Function<Entry, Weighed>> KINDS = kinds();

  private ScaleReader() {}

  private static Map<String, Function<Entry, Weighed>> kinds() {
    Map<String, Function<Entry, Weighed>> kinds = new LinkedHashMap<>();
    kinds.put("whole-pack", e -> new Weighed.WholePack(e.neededText("hiker")));
    kinds.put("empty-pack", e -> new Weighed.EmptyPack(e.neededText("hiker")));
    kinds.put("kit", e -> new Weighed.OfKit(e.neededText("hiker"), e.neededText("item")));
    kinds.put("piece", e -> new Weighed.Piece(PieceRef.of(e.neededText("piece"))));
    return kinds;
  }

  /** The field {@code readings}, which must be there; those without a kind are left out. */
  static List<ScaleReading> readings(Entry around) {
    List<JsonNode> values =
        around
            .list("readings", WeighLimits.READINGS)
            .orElseGet(() -> around.missing("readings", List.of()));
    List<ScaleReading> readings = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Entry.of(values.get(i), around.at().at("readings").at(i), around.issues())
          .flatMap(ScaleReader::reading)
          .ifPresent(readings::add);
    }
    return readings;
  }

  static Optional<ScaleReading> reading(Entry entry) {
    Function<Entry, Weighed> unknown = e -> new Weighed.WholePack("");
    Optional<Function<Entry, Weighed>> kind = entry.word("kind", KINDS, unknown);
    if (kind.isEmpty()) {
      entry.missing("kind", "");
      return Optional.empty();
    }
    if (kind.get() == unknown) {
      return Optional.empty();
    }
    ScaleReading reading =
        new ScaleReading(
            kind.get().apply(entry),
            Quantities.neededMass(entry, "mass"),
            entry.text("at").orElse(""),
            entry.text("source").orElse(""),
            entry.flag("confirmed"));
    entry.done();
    return Optional.of(reading);
  }

  /** The field {@code tolerance}: {@code {"mass": "50 g", "thousandths": 5}}, or the default. */
  static Tolerance tolerance(Entry around) {
    Optional<Entry> stated = around.child("tolerance");
    if (stated.isEmpty()) {
      return Tolerance.DEFAULT;
    }
    Entry entry = stated.get();
    Optional<Mass> mass = Quantities.mass(entry, "mass");
    long milligrams = mass.map(Mass::milligrams).orElse(Tolerance.DEFAULT.milligrams());
    if (milligrams > WeighLimits.TOLERANCE_MILLIGRAMS) {
      entry
          .issues()
          .add(
              IssueCode.OUT_OF_RANGE,
              entry.at().at("mass"),
              mass.map(Mass::entered).orElse(""),
              "A tolerance is at most " + WeighLimits.TOLERANCE_MILLIGRAMS / 1_000_000L + " kg.");
    }
    int thousandths = entry.whole("thousandths", 0).orElse(Tolerance.DEFAULT.thousandths());
    if (thousandths < 0 || thousandths > WeighLimits.TOLERANCE_THOUSANDTHS) {
      entry
          .issues()
          .add(
              IssueCode.OUT_OF_RANGE,
              entry.at().at("thousandths"),
              String.valueOf(thousandths),
              "A tolerance is from 0 to " + WeighLimits.TOLERANCE_THOUSANDTHS + " thousandths.");
    }
    entry.done();
    return new Tolerance(milligrams, thousandths);
  }

  /** The field {@code accept}: {@code "all"}, or a list of subjects. */
  static Accept accept(Entry around) {
    Optional<JsonNode> node = around.find("accept");
    if (node.isEmpty()) {
      return new Accept.Nothing();
    }
    if (node.get().isTextual() && node.get().asText().equals("all")) {
      return new Accept.Everything();
    }
    if (node.get().isTextual()) {
      around
          .issues()
          .add(
              IssueCode.UNKNOWN_WORD,
              around.at().at("accept"),
              node.get().asText(),
              "\"accept\" does not know this word.",
              "Write \"all\", or a list of subjects.");
      return new Accept.Nothing();
    }
    return new Accept.These(around.texts("accept", WeighLimits.READINGS).orElse(List.of()));
  }
}
