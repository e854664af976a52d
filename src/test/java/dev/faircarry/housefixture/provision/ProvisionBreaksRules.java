package dev.faircarry.housefixture.provision;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class ProvisionBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
