package dev.faircarry.app;

import dev.faircarry.solve.Watch;
import dev.faircarry.split.Advice;
import dev.faircarry.trip.Trip;

/** The port through which use cases ask what keeps a split from being fairer. */
@FunctionalInterface
public interface Adviser {

  /**
   * What binds the worst-off morning, and which single things would help if they were left out.
   *
   * @param trip a trip without issues that has a split
   * @param worstSteps highest step of the split to be explained
   * @param effortSteps search steps for all questions together
   */
  Advice advise(Trip trip, long worstSteps, long effortSteps, Watch watch);
}
