package dev.faircarry.housefixture.effort;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class EffortBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
