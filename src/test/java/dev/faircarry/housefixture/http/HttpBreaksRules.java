package dev.faircarry.housefixture.http;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class HttpBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
