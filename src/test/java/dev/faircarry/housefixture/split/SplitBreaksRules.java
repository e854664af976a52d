package dev.faircarry.housefixture.split;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring, asks the clock and counts in halves. */
public final class SplitBreaksRules {

  double half() {
    Wiring.touch();
    return System.nanoTime() / 2.0;
  }
}
