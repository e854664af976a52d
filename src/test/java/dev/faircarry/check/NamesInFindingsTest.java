package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Messages and remedies speak of people by name; ids stand in the fields. */
class NamesInFindingsTest {
  private static final Map<String, String> NAMES = Map.of("a", "Asha", "b", "Bo", "c", "Cleo");

  private static Hiker named(Hiker h) {
    return new Hiker(
        h.id(),
        NAMES.getOrDefault(h.id(), h.id()),
        h.bodyMass(),
        h.targetLoad(),
        h.targetFraction(),
        h.capFraction(),
        h.capLoad(),
        h.maxPieces(),
        h.party(),
        h.minor(),
        h.leavesAfterDay(),
        h.pack(),
        h.kit());
  }

  private static Finding found(Trips trips, Splits split) {
    Trip t = trips.trip();
    List<Hiker> hikers = t.hikers().stream().map(NamesInFindingsTest::named).toList();
    Trip trip = new Trip(t.name(), t.days(), t.policy(), hikers, t.shared(), t.rules());
    List<Finding> findings = SplitCheck.verdict(trip, split.split()).findings();
    assertEquals(1, findings.size(), findings.toString());
    return findings.get(0);
  }

  @Test
  void onlyNamesThoseAllowed() {
    Finding found =
        found(
            Trips.targets(1000, 1000, 1000).pieces(100).only(List.of("a", "b"), "p1"),
            Splits.of("c", "p1"));
    assertEquals(List.of("c"), found.hikers());
    assertEquals("Cleo carries “p1” on day 1.", found.message());
    assertEquals("Rule r1 allows only Asha, Bo.", found.remedy());
  }

  @Test
  void pinnedNamesTheOneItIsFor() {
    Finding found =
        found(Trips.targets(1000, 1000).pieces(100).pinned("a", "p1"), Splits.of("b", "p1"));
    assertEquals("Bo carries “p1” on day 1.", found.message());
    assertEquals("Rule r1 gives it to Asha.", found.remedy());
  }
}
