package dev.faircarry.split;

import java.util.List;

/** What came of asking for a trade-off curve. */
public sealed interface CurveOutcome {
  /** There is at least one split. */
  record Found(Curve curve, long effortSteps, boolean cutByClock) implements CurveOutcome {}

  /** The hard rules, with what is frozen, cannot all hold. */
  record Impossible(List<Demand> conflict, boolean irreducible, long effortSteps)
      implements CurveOutcome {
    public Impossible {
      conflict = List.copyOf(conflict);
    }
  }

  /** The effort or the clock ended before a split was found or excluded. */
  record Undecided(long effortSteps, boolean cutByClock) implements CurveOutcome {}
}
