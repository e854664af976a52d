package dev.faircarry.housefixture.csv;

import dev.faircarry.housefixture.Wiring;

/** Looks up to the wiring. */
public final class CsvBreaksRules {
  void lookUp() {
    Wiring.touch();
  }
}
