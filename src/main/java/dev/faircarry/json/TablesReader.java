package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the document with which tables are put into a trip. */
public final class TablesReader {
  private TablesReader() {}

  /**
   * What is asked.
   *
   * @param frame the trip they go into, unjudged
   * @param tables name of a table to its text
   */
  public record Asked(Trip frame, Map<String, byte[]> tables) {
    public Asked {
      tables = Map.copyOf(tables);
    }
  }

  /**
   * Reads {@code {"trip": ..., "hikers": "id,name...", ...}}.
   *
   * @param names of the tables that may be there
   */
  public static Reading<Asked> read(byte[] document, List<String> names) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(entry -> asked(entry, names))
        .orElseGet(() -> Report.bad(issues));
  }

  private static Reading<Asked> asked(Entry entry, List<String> names) {
    Optional<JsonNode> stated = entry.find("trip");
    if (stated.isEmpty()) {
      entry.missing("trip", "");
    }
    Map<String, byte[]> tables = new LinkedHashMap<>();
    for (String name : names) {
      entry.text(name).ifPresent(text -> tables.put(name, text.getBytes(StandardCharsets.UTF_8)));
    }
    entry.done();
    Reading<Trip> frame =
        stated
            .map(node -> TripReader.frame(node, Pointer.ROOT.at("trip")))
            .orElseGet(() -> new Reading.Bad<>(List.of(), false));
    return Report.together(
        entry.issues(),
        List.of(frame),
        () -> new Asked(((Reading.Read<Trip>) frame).value(), tables));
  }

  /** Reads a trip document that tables are put into, unjudged; it need not have hikers. */
  public static Reading<Trip> frame(byte[] document) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .map(root -> TripReader.frame(root, Pointer.ROOT))
        .filter(reading -> issues.list().isEmpty())
        .orElseGet(() -> Report.bad(issues));
  }
}
