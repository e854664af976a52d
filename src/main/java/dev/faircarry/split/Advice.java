package dev.faircarry.split;

import dev.faircarry.trip.PieceRef;
import java.util.List;
import java.util.Optional;

/**
 * What would help.
 *
 * @param binding what keeps the worst-off morning from being better
 * @param lifted single things to leave out that would lower the worst ratio, the most helpful first
 */
public record Advice(Binding binding, List<Lifted> lifted, long effortSteps) {
  public Advice {
    lifted = List.copyOf(lifted);
  }

  /** The same with another binding. */
  public Advice boundBy(Binding other) {
    return new Advice(other, lifted, effortSteps);
  }

  /**
   * Something left out, and what the worst-off morning would then be.
   *
   * @param piece the piece or item left at home, or else
   * @param demand the rule or limit lifted
   * @param worstSteps highest step of the best split found without it
   * @param proved whether no split without it has a lower highest step
   */
  public record Lifted(
      Optional<PieceRef> piece, Optional<Demand> demand, long worstSteps, boolean proved) {}
}
