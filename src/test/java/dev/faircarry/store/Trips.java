package dev.faircarry.store;

import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;

/** Small trips for the stores to keep. */
final class Trips {
  private Trips() {}

  /** Two hikers, one stove; the name tells trips apart. */
  static Trip named(String name) {
    return read(
        """
        {"format": "faircarry-trip/1", "name": "%s", "days": 2,
         "hikers": [{"id": "asha", "name": "Asha", "bodyMass": "58.25 kg"},
                    {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"}],
         "shared": [{"id": "stove", "name": "Stove", "mass": "95 g"}]}
        """
            .formatted(name));
  }

  /** The same without the hiker who states a body mass. */
  static Trip withoutAsha(String name) {
    return read(
        """
        {"format": "faircarry-trip/1", "name": "%s", "days": 2,
         "hikers": [{"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"}],
         "shared": [{"id": "stove", "name": "Stove", "mass": "95 g"}]}
        """
            .formatted(name));
  }

  private static Trip read(String document) {
    if (TripReader.read(document.getBytes(StandardCharsets.UTF_8))
        instanceof Reading.Read<Trip> read) {
      return read.value();
    }
    throw new AssertionError("not a trip: " + document);
  }
}
