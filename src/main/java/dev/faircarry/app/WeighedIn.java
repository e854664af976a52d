package dev.faircarry.app;

import dev.faircarry.check.Issue;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.ChangeNote;
import dev.faircarry.weigh.Reconciled;
import dev.faircarry.weigh.Tolerance;
import java.util.List;
import java.util.Optional;

/** What came of a weigh-in. */
public sealed interface WeighedIn {

  /**
   * What each reading says.
   *
   * @param changes what taking over everything that is not questioned would change
   * @param accepted the trip with what was asked to be taken over; empty if nothing was asked
   */
  record Told(
      String tripName,
      Tolerance tolerance,
      List<Line> lines,
      List<Change> changes,
      Optional<Accepted> accepted)
      implements WeighedIn {
    public Told {
      lines = List.copyOf(lines);
      changes = List.copyOf(changes);
    }

    /** Whether every reading agrees with what was stated, and nothing is to be asked. */
    public boolean agrees() {
      return lines.stream().allMatch(l -> l.reconciled().result() == Reconciled.Result.AGREES);
    }

    /** Whether something has to be looked at again before it can be taken over. */
    public boolean asks() {
      return lines.stream().anyMatch(l -> l.reconciled().question().isPresent());
    }
  }

  /** A subject by the name people know it by. */
  record Line(String name, Reconciled reconciled) {}

  /** The trip after taking over. */
  record Accepted(Trip trip, List<ChangeNote> notes) {
    public Accepted {
      notes = List.copyOf(notes);
    }
  }

  /** The readings, or the trip they would make, have issues. */
  record Unfit(List<Issue> issues) implements WeighedIn {
    public Unfit {
      issues = List.copyOf(issues);
    }
  }
}
