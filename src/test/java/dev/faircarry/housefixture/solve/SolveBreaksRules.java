package dev.faircarry.housefixture.solve;

import dev.faircarry.housefixture.Wiring;
import dev.faircarry.housefixture.check.CheckBreaksRules;

/** Looks up to the wiring, asks the clock and counts in halves. */
public final class SolveBreaksRules {
  CheckBreaksRules verdict;

  double half() {
    Wiring.touch();
    return System.nanoTime() / 2.0;
  }
}
