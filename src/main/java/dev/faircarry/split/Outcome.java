package dev.faircarry.split;

import java.util.List;

/** What came of asking for a split. */
public sealed interface Outcome {

  /** A split that keeps all hard rules. */
  record Solved(Split split, Proof proof) implements Outcome {}

  /**
   * The hard rules cannot all hold.
   *
   * @param conflict demands that cannot hold together, by name
   * @param irreducible whether it is proved that they can hold as soon as any one of them is
   *     dropped
   */
  record Impossible(List<Demand> conflict, boolean irreducible, long effortSteps)
      implements Outcome {
    public Impossible {
      conflict = List.copyOf(conflict);
    }
  }

  /** The effort or the clock ended before a split was found or excluded. */
  record Undecided(long effortSteps, boolean cutByClock) implements Outcome {}
}
