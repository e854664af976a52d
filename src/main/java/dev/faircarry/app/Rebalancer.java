package dev.faircarry.app;

import dev.faircarry.solve.Watch;
import dev.faircarry.split.CurveOutcome;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.Set;

/** The port through which use cases ask what handovers gain after a change of plans. */
@FunctionalInterface
public interface Rebalancer {

  /**
   * The best splits for each number of handovers.
   *
   * @param trip the trip as it is now, without issues
   * @param earlier who carried what; may name hikers and pieces that are gone
   * @param frozen pieces that stay with who has them
   * @param maxHandovers most handovers of interest
   */
  CurveOutcome curve(
      Trip trip,
      Split earlier,
      Set<PieceRef> frozen,
      int maxHandovers,
      long effortSteps,
      Watch watch);
}
