package dev.faircarry.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.TripIssues;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.Use;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TripGeneratorTest {

  @Test
  void everyTripIsWithoutIssuesAndTogetherTheyHaveEverything() {
    Set<String> seen = new HashSet<>();
    for (long seed = 0; seed < 2000; seed++) {
      Trip trip = TripGenerator.trip(seed, TripGenerator.Shape.of(4, 3, 7));
      assertEquals(List.of(), TripIssues.of(trip), "seed " + seed);
      note(trip, seen);
    }
    Set<String> wanted =
        Set.of(
            "Pinned",
            "Only",
            "Barred",
            "Together",
            "Apart",
            "PartyHas",
            "Whole",
            "Parts",
            "Counted",
            "Evenly",
            "UnitsPerDay",
            "PerPerson",
            "onDays",
            "goesInto",
            "contains",
            "leaver",
            "minor",
            "maxPieces",
            "party",
            "room",
            "luxury",
            "worn",
            "SHARED",
            "LOAD");
    assertTrue(seen.containsAll(wanted), seen.toString());
  }

  private static void note(Trip trip, Set<String> seen) {
    seen.add(trip.policy().basis().name());
    for (Rule rule : trip.rules()) {
      seen.add(rule.getClass().getSimpleName());
    }
    for (SharedItem item : trip.shared()) {
      seen.add(item.form().getClass().getSimpleName());
      item.goesInto().ifPresent(kind -> seen.add("goesInto"));
      if (!item.onDays().isEmpty()) {
        seen.add("onDays");
      }
      if (item.form() instanceof Form.Whole whole && whole.contains().isPresent()) {
        seen.add("contains");
      }
      if (item.form() instanceof Form.Counted counted) {
        seen.add(counted.quantity().getClass().getSimpleName());
        counted.use().map(Use::getClass).ifPresent(use -> seen.add(use.getSimpleName()));
      }
    }
    trip.hikers()
        .forEach(
            h -> {
              if (h.lastDay(trip.days()) < trip.days()) {
                seen.add("leaver");
              }
              if (h.minor()) {
                seen.add("minor");
              }
              h.maxPieces().ifPresent(n -> seen.add("maxPieces"));
              h.party().ifPresent(n -> seen.add("party"));
              h.pack().flatMap(p -> p.volume()).ifPresent(v -> seen.add("room"));
              h.kit()
                  .forEach(
                      k -> {
                        if (k.luxury()) {
                          seen.add("luxury");
                        }
                        if (k.worn()) {
                          seen.add("worn");
                        }
                      });
            });
  }
}
