package dev.faircarry.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.TripIssues;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Trip;
import java.util.List;
import org.junit.jupiter.api.Test;

class FamilyTripsTest {

  @Test
  void tripsHaveTheirSizeAndNoIssues() {
    int[][] sizes = {{1, 3}, {2, 2}, {4, 12}, {8, 30}, {30, 200}};
    for (int[] size : sizes) {
      for (Family.Hardness hardness : Family.Hardness.values()) {
        for (int seed = 0; seed < 10; seed++) {
          for (int days : new int[] {1, 5}) {
            Family plain = Family.plain(size[0], size[1], 5, hardness).overDays(days);
            for (Family family : List.of(plain, plain.withRules())) {
              if (days > 1 && size[1] < 12) {
                continue;
              }
              Trip trip = FamilyTrips.trip(seed, family);
              assertEquals(List.of(), TripIssues.of(trip), family + " seed " + seed);
              assertEquals(size[0], trip.hikers().size());
              assertEquals(size[1], pieces(trip), family + " seed " + seed);
              assertEquals(days, trip.days());
              assertTrue(family.ruled() || trip.rules().isEmpty());
            }
          }
        }
      }
    }
  }

  private static int pieces(Trip trip) {
    int sum = 0;
    for (var item : trip.shared()) {
      if (item.form() instanceof Form.Counted counted) {
        sum += ((Form.Quantity.Fixed) counted.quantity()).count();
      } else if (item.form() instanceof Form.Parts parts) {
        sum += parts.parts().size();
      } else {
        sum++;
      }
    }
    return sum;
  }
}
