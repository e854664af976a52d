package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.StoredReading;
import dev.faircarry.app.WeighedIn;
import java.util.List;
import java.util.Optional;

/** Writes readings that are kept with a trip, and what they come to. */
public final class KeptReadingWriter {
  private KeptReadingWriter() {}

  /** A page of readings, in their order. */
  public static byte[] page(List<StoredReading> readings, Optional<String> next) {
    ArrayNode items = JsonNodeFactory.instance.arrayNode();
    readings.forEach(reading -> items.add(reading(reading)));
    return Pages.of(items, next);
  }

  static ObjectNode reading(StoredReading reading) {
    ObjectNode out = TripWriter.object();
    out.put("id", reading.id());
    out.put("received", reading.at().toString());
    KeptWriter.by(out, reading.by());
    reading.split().ifPresent(split -> out.put("split", split));
    out.set("reading", WeighInWriter.reading(reading.reading()));
    return out;
  }

  /**
   * A weigh-in of what is kept.
   *
   * @param sight whose body masses are left out of the trip after taking over
   */
  public static byte[] weighIn(WeighedIn.Told told, List<String> notCounted, Sight sight) {
    ObjectNode out = WeighInWriter.tree(told);
    told.accepted()
        .ifPresent(accepted -> out.set("trip", TripWriter.tree(sight.of(accepted.trip()))));
    TripWriter.texts(out, "notCounted", notCounted);
    return JsonBytes.of(out);
  }
}
