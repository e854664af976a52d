package dev.faircarry.housefixture.kit;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class KitBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
