package dev.faircarry.app;

import dev.faircarry.check.Issue;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.Curve;
import dev.faircarry.split.Demand;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.ChangeFault;
import dev.faircarry.trip.change.ChangeNote;
import java.util.List;

/** What came of changing plans. */
public sealed interface Rebalanced {

  /**
   * The trade-off.
   *
   * @param trip the trip after the changes
   * @param notes what the changes brought with them
   * @param verdicts what an independent reading says of each point
   * @param sentences for each point, who gives what to whom
   * @param chosen index of the point that was asked for, or is recommended
   * @param reason why that point, in a sentence
   */
  record Found(
      Trip trip,
      List<ChangeNote> notes,
      Curve curve,
      List<Verdict> verdicts,
      List<List<String>> sentences,
      int chosen,
      String reason,
      long effortSteps,
      boolean cutByClock)
      implements Rebalanced {
    public Found {
      notes = List.copyOf(notes);
      verdicts = List.copyOf(verdicts);
      sentences = sentences.stream().map(List::copyOf).toList();
    }
  }

  /** The rules, with what is frozen, cannot all hold after the changes. */
  record Impossible(
      Trip trip,
      List<ChangeNote> notes,
      List<Demand> conflict,
      boolean irreducible,
      long effortSteps)
      implements Rebalanced {
    public Impossible {
      notes = List.copyOf(notes);
      conflict = List.copyOf(conflict);
    }
  }

  /** The effort or the clock ended before anything was found or excluded. */
  record Undecided(Trip trip, List<ChangeNote> notes, long effortSteps, boolean cutByClock)
      implements Rebalanced {
    public Undecided {
      notes = List.copyOf(notes);
    }
  }

  /** Some change cannot be made. */
  record Refused(List<ChangeFault> faults) implements Rebalanced {
    public Refused {
      faults = List.copyOf(faults);
    }
  }

  /** The changes can be made, but the trip they make has issues. */
  record Unfit(List<Issue> issues) implements Rebalanced {
    public Unfit {
      issues = List.copyOf(issues);
    }
  }
}
