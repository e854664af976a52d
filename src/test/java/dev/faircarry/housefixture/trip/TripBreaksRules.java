package dev.faircarry.housefixture.trip;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring, asks the clock and counts in halves. */
public final class TripBreaksRules {

  double half() {
    Wiring.touch();
    return System.nanoTime() / 2.0;
  }
}
