package dev.faircarry.housefixture.store;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class StoreBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
