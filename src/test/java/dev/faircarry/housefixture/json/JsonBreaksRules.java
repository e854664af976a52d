package dev.faircarry.housefixture.json;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class JsonBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
