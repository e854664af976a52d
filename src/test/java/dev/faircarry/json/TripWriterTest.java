package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A trip that is written and read again is the same trip, word for word. */
class TripWriterTest {

  @Test
  void everyKindOfThingComesBack() {
    Trip trip = Documents.trip(Documents.resource("/trips/each-kind-once.json"));
    assertEquals(trip, Documents.trip(TripWriter.write(trip)));
  }

  @Test
  void rarerFieldsComeBack() {
    Trip trip =
        Documents.trip(
            """
            {"format": "faircarry-trip/1", "name": "سفر", "days": 3,
             "policy": {"targetFraction": 0.2, "capFraction": 0.300, "basis": "shared",
                        "grain": 50, "minorsMayCarryFlameAndFuel": true},
             "hikers": [
               {"id": "a", "name": "Ünal 🏔", "bodyMass": "60kg", "minor": true,
                "capFraction": 0.25,
                "pack": {"mass": "1 kg", "massFrom": "estimate", "cost": "99"},
                "kit": [{"id": "box", "name": "Box", "mass": "0 g", "stow": "outside",
                         "contains": {"kind": "food", "volume": "200 cu in"}}]}],
             "shared": [
               {"id": "x", "name": "X", "count": 2, "unitMass": "1 oz", "massFrom": "scale",
                "stow": "top", "sleeps": 0, "cost": "1.5",
                "use": {"kind": "evenly", "leaves": "0.5 oz"}},
               {"id": "y", "name": "Y", "count": 3, "unitMass": "1 oz",
                "use": {"kind": "units-per-day", "perDay": [1, 0, 2]}},
               {"id": "z", "name": "Z", "perPerson": {"countPerDay": 2}, "unitMass": "5 g",
                "onDays": [1, 3]}],
             "rules": [{"id": "r", "kind": "party-has", "covers": "light", "atLeast": 2}]}
            """);
    assertEquals(trip, Documents.trip(TripWriter.write(trip)));
  }

  @Test
  void quantitiesStandAsEntered() {
    List<String> quantities =
        List.of(
            "1 lb 12 oz",
            "1lb12oz",
            " 31 OZ ",
            "0.790 kg",
            "00.5kg",
            ".5 kg",
            "5. g",
            "58\u00a0kg");
    for (String quantity : quantities) {
      String document =
          """
          {"format": "faircarry-trip/1", "name": "N", "days": 1,
           "hikers": [{"id": "a", "targetLoad": "9 kg"}],
           "shared": [{"id": "s", "mass": "%s"}]}
          """
              .formatted(quantity);
      String written =
          new String(TripWriter.write(Documents.trip(document)), StandardCharsets.UTF_8);
      assertTrue(written.contains("\"" + quantity + "\""), quantity + " in " + written);
    }
  }

  @Test
  void whatEqualsAnAssumptionIsLeftOut() {
    Trip trip =
        Documents.trip(
            """
            {"format": "faircarry-trip/1", "name": "N", "days": 1,
             "hikers": [{"id": "a", "targetLoad": "9 kg", "minor": false, "kit": [
               {"id": "k", "mass": "1 g", "massFrom": "label", "stow": "inside", "worn": false,
                "luxury": false, "covers": []}]}]}
            """);
    String written = new String(TripWriter.write(trip), StandardCharsets.UTF_8);
    for (String field : List.of("minor\"", "massFrom", "stow", "worn", "luxury", "covers")) {
      assertEquals(-1, written.indexOf("\"" + field), field + " in " + written);
    }
  }
}
