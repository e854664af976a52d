package dev.faircarry.solve;

import dev.faircarry.split.CurveOutcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.Set;

/** Searches for the trade-off between handovers and fairness after a change of plans. */
public final class RebalanceSolver {
  private RebalanceSolver() {}

  /**
   * The best splits for each number of handovers, from the fewest there can be to where more gain
   * nothing.
   *
   * @param trip the trip as it is now, without issues
   * @param earlier who carried what; may name hikers and pieces that are gone
   * @param frozen pieces that stay with who has them; a bare name stands for all units of a counted
   *     item
   * @param maxHandovers most handovers of interest
   * @param effortSteps search steps it may spend
   * @param watch told of progress, and asked whether to stop
   */
  public static CurveOutcome curve(
      Trip trip,
      Split earlier,
      Set<PieceRef> frozen,
      int maxHandovers,
      long effortSteps,
      Watch watch) {
    return new CurveSearch(trip, earlier, frozen, maxHandovers, new Effort(effortSteps, watch))
        .run();
  }
}
