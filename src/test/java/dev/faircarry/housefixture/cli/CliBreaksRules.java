package dev.faircarry.housefixture.cli;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class CliBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
