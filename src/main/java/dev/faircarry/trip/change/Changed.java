package dev.faircarry.trip.change;

import dev.faircarry.trip.Trip;
import java.util.List;

/** What came of changing a trip. */
public sealed interface Changed {

  /**
   * All changes were made. Whether the trip is a good one is judged by {@code
   * dev.faircarry.check.TripIssues}.
   */
  record Made(Trip trip, List<ChangeNote> notes) implements Changed {
    public Made {
      notes = List.copyOf(notes);
    }
  }

  /** Some change cannot be made; none was. */
  record Refused(List<ChangeFault> faults) implements Changed {
    public Refused {
      faults = List.copyOf(faults);
    }
  }
}
