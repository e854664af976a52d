package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.weigh.ScaleReading;
import java.util.List;

/** Readings of a scale as a document of their own: {@code {"readings": [...]}}. */
public final class ScaleDocument {
  private ScaleDocument() {}

  /** Reads the document; whether the things are on a trip is not judged. */
  public static Reading<List<ScaleReading>> read(byte[] document) {
    Issues issues = new Issues();
    return JsonText.read(document, issues)
        .flatMap(root -> Entry.of(root, Pointer.ROOT, issues))
        .map(
            entry -> {
              List<ScaleReading> readings = ScaleReader.readings(entry);
              entry.done();
              return Report.together(issues, List.of(), () -> readings);
            })
        .orElseGet(() -> Report.bad(issues));
  }

  /** Writes the document. */
  public static byte[] write(List<ScaleReading> readings) {
    ObjectNode out = TripWriter.object();
    ArrayNode list = out.putArray("readings");
    readings.forEach(reading -> list.add(WeighInWriter.reading(reading)));
    return JsonBytes.of(out);
  }
}
