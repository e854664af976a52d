package dev.faircarry.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.fixture.Splits;
import dev.faircarry.fixture.Trips;
import dev.faircarry.trip.Trip;
import java.util.List;

/** What tests ask of a verdict. */
final class Judged {
  private Judged() {}

  static Verdict verdict(Trips trips, Splits split) {
    Trip trip = trips.trip();
    assertEquals(List.of(), TripIssues.of(trip), "the trip itself must be fine");
    return SplitCheck.verdict(trip, split.split());
  }

  static List<Finding> stops(Trips trips, Splits split) {
    return verdict(trips, split).findings().stream()
        .filter(f -> f.severity() == Severity.STOP)
        .toList();
  }

  static void keeps(Trips trips, Splits split) {
    assertEquals(List.of(), stops(trips, split));
  }

  /** The one thing that is wrong; its code must break the split. */
  static Finding breaks(FindingCode code, Trips trips, Splits split) {
    List<Finding> stops = stops(trips, split);
    assertEquals(List.of(code), stops.stream().map(Finding::code).toList(), stops.toString());
    assertEquals(false, verdict(trips, split).keepsRules());
    return stops.get(0);
  }
}
