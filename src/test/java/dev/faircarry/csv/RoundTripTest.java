package dev.faircarry.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.faircarry.demo.DemoTrips;
import dev.faircarry.trip.Trip;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A trip written as tables and read again is the same trip. What tables do not hold: name, days,
 * policy, rules and plan, which come from the trip they are put into.
 */
class RoundTripTest {

  static List<String> demos() {
    return DemoTrips.names();
  }

  private static Map<Table, byte[]> tables(Trip trip) {
    Map<Table, byte[]> tables = new EnumMap<>(Table.class);
    for (Table table : List.of(Table.HIKERS, Table.KIT, Table.SHARED)) {
      tables.put(table, TableWriter.write(table, trip));
    }
    return tables;
  }

  /** The same trip without anything that stands in tables. */
  private static Trip frame(Trip trip) {
    return new Trip(
        trip.name(), trip.days(), trip.policy(), List.of(), List.of(), trip.rules(), trip.plan());
  }

  private static void comesBack(Trip trip) {
    assertEquals(
        trip,
        TableIssues.value(TripTables.into(frame(trip), tables(trip), TripTables.Way.REPLACE)));
  }

  @ParameterizedTest
  @MethodSource("demos")
  void everyDemoTripComesBack(String demo) {
    comesBack(DemoTrips.trip(demo));
  }

  @Test
  void rarerFieldsComeBack() {
    comesBack(
        TableIssues.trip(
            """
            {"format": "faircarry-trip/1", "name": "سفر", "days": 1,
             "hikers": [
               {"id": "a", "name": "=Ünal 🏔, \\"the\\" ;-x", "bodyMass": "60kg", "minor": true,
                "capFraction": 0.250, "targetLoad": "9 kg", "maxPieces": 0, "party": "'+1",
                "pack": {"mass": "1 kg", "massFrom": "estimate", "cost": "99", "labelMass": "2 lb",
                         "volume": "2400 cu in", "loadRating": "12 kg"},
                "kit": [{"id": "box", "name": "'tis a box", "mass": " 0 g", "stow": "at-hand",
                         "covers": ["a|b", " c\\\\", "d, e"], "labelMass": "1 oz",
                         "purpose": "-x", "luxury": true, "worn": true,
                         "contains": {"kind": "food", "volume": "200 cu in"}}]}],
             "shared": [
               {"id": "x", "name": "X", "count": 2, "unitMass": "1 oz", "massFrom": "scale",
                "stow": "top", "sleeps": 1, "cost": "1.5", "goesInto": "food",
                "use": {"kind": "evenly", "leaves": "0.5 oz"}},
               {"id": "y", "name": "Y", "count": 3, "unitMass": "1 oz",
                "use": {"kind": "units-per-day", "perDay": [2]}},
               {"id": "v", "name": "V", "count": 3, "unitMass": "1 oz",
                "use": {"kind": "units-per-day", "perDay": 2, "leaves": "1 g"}},
               {"id": "w", "name": "W", "perPerson": {"countPerDay": 2}, "unitMass": "5 g",
                "use": {"kind": "units-per-day"}},
               {"id": "s", "name": "S", "owner": "a", "parts": [
                 {"id": "s", "name": "=part", "mass": "1 g", "stow": "outside"},
                 {"id": "t", "name": "t", "mass": "2 g", "volume": "1 L", "massFrom": "scale"}]},
               {"id": "z", "name": "Z", "perPerson": {"countPerDay": 2}, "unitMass": "5 g",
                "onDays": [1]}]}
            """));
  }

  /** What was changed in a table is changed in the trip, so that coming back is no coincidence. */
  @Test
  void aChangedCellChangesTheTrip() {
    Trip trip = DemoTrips.trip("whole-things");
    Map<Table, byte[]> tables = tables(trip);
    String shared = new String(tables.get(Table.SHARED), java.nio.charset.StandardCharsets.UTF_8);
    String first = trip.shared().get(0).name();
    tables.put(Table.SHARED, TableIssues.bytes(shared.replace(first, "Other")));
    Trip changed = TableIssues.value(TripTables.into(frame(trip), tables, TripTables.Way.REPLACE));
    assertNotEquals(trip, changed);
    assertEquals("Other", changed.shared().get(0).name());
  }
}
