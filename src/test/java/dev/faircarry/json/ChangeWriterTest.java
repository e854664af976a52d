package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.change.Change;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Changes are written as they are read: each kind once, with every field it can have. */
class ChangeWriterTest {
  private static final String ALL =
      """
      {"changes": [
        {"kind": "drops-out", "hiker": "asha"},
        {"kind": "joins", "hiker": {"id": "mo", "name": "Mo", "bodyMass": "70 kg"}},
        {"kind": "can-carry", "hiker": "mo", "bodyMass": "71 kg", "targetLoad": "9 kg",
         "targetFraction": 0.15, "capFraction": 0.2, "capLoad": "12 kg", "maxPieces": 3},
        {"kind": "leaves-after", "hiker": "mo", "day": 2},
        {"kind": "item-added", "item": {"id": "saw", "name": "Saw", "mass": "8 oz"}},
        {"kind": "item-gone", "piece": "dinner", "units": 2},
        {"kind": "item-replaced", "item": "pot", "by": {"id": "pan", "name": "Pan", "mass": "300 g"}},
        {"kind": "item-weighs", "piece": "shelter/fly", "mass": "2 lb", "massFrom": "scale"},
        {"kind": "kit-added", "hiker": "mo", "item": {"id": "hat", "name": "Hat", "mass": "60 g"}},
        {"kind": "kit-gone", "hiker": "mo", "item": "hat"},
        {"kind": "kit-weighs", "hiker": "mo", "item": "quilt", "mass": "650 g", "massFrom": "estimate"},
        {"kind": "pack-weighs", "hiker": "mo", "mass": "2.3 lb"},
        {"kind": "rule-added", "rule": {"id": "r9", "kind": "together", "pieces": ["pot", "stove"]}},
        {"kind": "rule-removed", "rule": "r1"},
        {"kind": "days-added", "days": 1}]}
      """;

  private static List<Change> read(JsonNode root) {
    Issues issues = new Issues();
    List<Change> changes =
        ChangeReader.read(Entry.of(root, Pointer.ROOT, issues).orElseThrow(), "changes");
    assertEquals(List.of(), issues.list());
    return changes;
  }

  @Test
  void everyKindIsWrittenAsItIsRead() {
    JsonNode root = JsonText.read(ALL.getBytes(StandardCharsets.UTF_8), new Issues()).orElseThrow();
    List<Change> changes = read(root);
    assertEquals(
        Change.class.getPermittedSubclasses().length,
        changes.stream().map(Change::getClass).distinct().count());
    ObjectNode written = TripWriter.object();
    written.set("changes", ChangeWriter.list(changes));
    assertEquals(changes, read(written));
    assertEquals(root.toString(), written.toString());
  }
}
