package dev.faircarry.app;

import dev.faircarry.check.Verdict;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.List;

/** What the service answers when asked for a split. Nothing in it has left unchecked. */
public sealed interface SplitResult {
  /** The trip asked about. */
  Trip trip();

  /**
   * A split that keeps all hard rules.
   *
   * @param verdict what the independent check recomputed
   */
  record Found(Trip trip, Split split, Proof proof, Verdict verdict) implements SplitResult {
    /** Whether the split is proved the fairest and within all caps. */
    public boolean fine() {
      return proof.proved() && !verdict.overCap();
    }
  }

  /** The hard rules cannot all hold; fields as in {@code Outcome.Impossible}. */
  record Impossible(Trip trip, List<Demand> conflict, boolean irreducible, long effortSteps)
      implements SplitResult {
    public Impossible {
      conflict = List.copyOf(conflict);
    }
  }

  /** The effort or the clock ended before a split was found or excluded. */
  record Undecided(Trip trip, long effortSteps, boolean cutByClock) implements SplitResult {}
}
