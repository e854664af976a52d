package dev.faircarry.housefixture.check;

import dev.faircarry.housefixture.Wiring;
import dev.faircarry.housefixture.solve.SolveBreaksRules;

/** Looks up to the wiring, asks the clock and counts in halves. */
public final class CheckBreaksRules {
  SolveBreaksRules proof;

  double half() {
    Wiring.touch();
    return System.nanoTime() / 2.0;
  }
}
