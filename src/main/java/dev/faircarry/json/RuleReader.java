package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the rules of a trip. */
final class RuleReader {
  /** Reads the fields of one kind of rule. */
  @FunctionalInterface
  private interface Kind {
    Rule read(String id, Entry entry);
  }

  private static final Map<String, Kind> KINDS = kinds();

  private final Ids ids;

  RuleReader(Ids ids) {
    this.ids = ids;
  }

  private static Map<String, Kind> kinds() {
    Map<String, Kind> kinds = new LinkedHashMap<>();
    kinds.put("pinned", (id, e) -> new Rule.Pinned(id, pieces(e), e.neededText("hiker")));
    kinds.put("only", (id, e) -> new Rule.Only(id, pieces(e), hikers(e)));
    kinds.put("barred", (id, e) -> new Rule.Barred(id, pieces(e), hikers(e)));
    kinds.put("together", (id, e) -> new Rule.Together(id, pieces(e)));
    kinds.put("apart", (id, e) -> new Rule.Apart(id, pieces(e)));
    kinds.put("party-has", RuleReader::partyHas);
    return Collections.unmodifiableMap(kinds);
  }

  Rule read(JsonNode node, Pointer at, Issues issues) {
    return Entry.of(node, at, issues).map(this::rule).orElseGet(() -> standIn(ids.next()));
  }

  private Rule rule(Entry entry) {
    String id = ids.of(entry);
    Optional<Kind> kind = entry.word("kind", KINDS, RuleReader::unknown);
    if (kind.isEmpty()) {
      entry.missing("kind", id);
      return standIn(id);
    }
    Rule rule = kind.get().read(id, entry);
    if (KINDS.containsValue(kind.get())) {
      entry.done();
    }
    return rule;
  }

  /** The fields of a rule of no known kind are not judged. */
  private static Rule unknown(String id, Entry entry) {
    return standIn(id);
  }

  private static Rule standIn(String id) {
    return new Rule.PartyHas(id, "any", List.of(), 1);
  }

  private static Rule partyHas(String id, Entry entry) {
    return new Rule.PartyHas(
        id,
        entry.neededText("covers"),
        entry.texts("parties", Limits.NAMES_PER_RULE).orElse(List.of()),
        entry.whole("atLeast", 1).orElse(1));
  }

  private static List<PieceRef> pieces(Entry entry) {
    return entry.neededTexts("pieces", Limits.NAMES_PER_RULE).stream().map(PieceRef::of).toList();
  }

  private static List<String> hikers(Entry entry) {
    return entry.neededTexts("hikers", Limits.NAMES_PER_RULE);
  }
}
