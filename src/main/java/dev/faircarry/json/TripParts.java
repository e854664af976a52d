package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;

/** Writes parts of a trip as they stand in its document, each as an object with one field. */
public final class TripParts {
  private TripParts() {}

  /** The hikers, with their kits. */
  public static byte[] hikers(Trip trip) {
    ObjectNode out = TripWriter.object();
    ArrayNode hikers = out.putArray("hikers");
    trip.hikers().forEach(hiker -> hikers.add(TripWriter.hiker(hiker)));
    return JsonBytes.of(out);
  }

  /** The kits, each with its hiker. */
  public static byte[] kits(Trip trip) {
    ObjectNode out = TripWriter.object();
    ArrayNode kits = out.putArray("kits");
    for (Hiker hiker : trip.hikers()) {
      ObjectNode one = kits.addObject();
      one.put("hiker", hiker.id());
      ArrayNode kit = one.putArray("kit");
      hiker.kit().forEach(item -> kit.add(TripWriter.kitItem(item)));
    }
    return JsonBytes.of(out);
  }

  /** The shared things. */
  public static byte[] shared(Trip trip) {
    ObjectNode out = TripWriter.object();
    ArrayNode shared = out.putArray("shared");
    trip.shared().forEach(item -> shared.add(TripWriter.shared(item)));
    return JsonBytes.of(out);
  }
}
