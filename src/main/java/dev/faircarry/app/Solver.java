package dev.faircarry.app;

import dev.faircarry.solve.Watch;
import dev.faircarry.split.Outcome;
import dev.faircarry.trip.Trip;

/** The port through which use cases ask for a split. */
@FunctionalInterface
public interface Solver {

  /**
   * Searches for the fairest split of a trip that has no issues.
   *
   * @param effortSteps search steps it may spend; the answer is a function of trip and steps
   * @param watch told of progress, and asked whether to stop
   */
  Outcome solve(Trip trip, long effortSteps, Watch watch);
}
