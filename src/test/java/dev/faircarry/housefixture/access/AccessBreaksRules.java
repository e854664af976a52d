package dev.faircarry.housefixture.access;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class AccessBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
