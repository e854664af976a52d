package dev.faircarry.housefixture.choose;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class ChooseBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
