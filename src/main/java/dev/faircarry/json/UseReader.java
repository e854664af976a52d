package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Use;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads how a thing is used up, and what travels inside it. */
final class UseReader {
  private enum Kind {
    EVENLY,
    UNITS_PER_DAY
  }

  private static final Map<String, Kind> EVENLY_ONLY = Map.of(Words.text(Kind.EVENLY), Kind.EVENLY);
  private static final Map<String, Kind> EITHER = either();

  private UseReader() {}

  private static Map<String, Kind> either() {
    Map<String, Kind> kinds = new LinkedHashMap<>(EVENLY_ONLY);
    kinds.put(Words.text(Kind.UNITS_PER_DAY), Kind.UNITS_PER_DAY);
    return Collections.unmodifiableMap(kinds);
  }

  /** The use of a thing that does not come in units. */
  static Optional<Use.Evenly> evenly(Entry item) {
    return item.child("use").flatMap(use -> evenlyIn(use));
  }

  private static Optional<Use.Evenly> evenlyIn(Entry use) {
    Optional<Kind> kind = use.word("kind", EVENLY_ONLY, Kind.EVENLY);
    if (kind.isEmpty()) {
      use.missing("kind", Kind.EVENLY);
    }
    Use.Evenly evenly = new Use.Evenly(Quantities.leaves(use));
    // Of a use of a wrong kind the other fields are not judged.
    if (kind.isPresent()
        && use.find("kind").filter(k -> EVENLY_ONLY.containsKey(k.asText())).isPresent()) {
      use.done();
    }
    return Optional.of(evenly);
  }

  /** The use of a counted item. */
  static Optional<Use> ofUnits(Entry item) {
    return item.child("use").flatMap(UseReader::ofUnitsIn);
  }

  private static Optional<Use> ofUnitsIn(Entry use) {
    Optional<Kind> kind = use.word("kind", EITHER, Kind.UNITS_PER_DAY);
    if (kind.isEmpty()) {
      use.missing("kind", Kind.UNITS_PER_DAY);
      return Optional.empty();
    }
    if (use.find("kind").filter(k -> EITHER.containsKey(k.asText())).isEmpty()) {
      return Optional.empty();
    }
    Use read =
        kind.get() == Kind.EVENLY
            ? new Use.Evenly(Quantities.leaves(use))
            : new Use.UnitsPerDay(perDay(use), Quantities.leaves(use));
    use.done();
    return Optional.of(read);
  }

  private static Use.PerDay perDay(Entry use) {
    Optional<JsonNode> value = use.find("perDay");
    if (value.isEmpty()) {
      return new Use.PerDay.FollowsParty();
    }
    if (value.get().isArray()) {
      return new Use.PerDay.Listed(use.wholes("perDay", Limits.DAYS, 1).orElseThrow());
    }
    if (!value.get().isNumber()) {
      Entry.wrongType(
          value.get(),
          use.at().at("perDay"),
          "a whole number or a list of them",
          true,
          use.issues());
      return new Use.PerDay.Same(1);
    }
    return new Use.PerDay.Same(use.wholeOf(value.get(), use.at().at("perDay"), 1));
  }

  /** What can travel inside a thing. */
  static Optional<Contains> contains(Entry item) {
    return item.child("contains")
        .map(
            entry -> {
              Contains contains =
                  new Contains(entry.neededText("kind"), Quantities.neededVolume(entry, "volume"));
              entry.done();
              return contains;
            });
  }
}
