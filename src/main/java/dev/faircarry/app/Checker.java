package dev.faircarry.app;

import dev.faircarry.check.Verdict;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;

/** The port through which use cases ask for an independent reading of a split. */
@FunctionalInterface
public interface Checker {

  /** Recomputes everything from trip and split. */
  Verdict check(Trip trip, Split split);
}
