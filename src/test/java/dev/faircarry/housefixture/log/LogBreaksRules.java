package dev.faircarry.housefixture.log;

import dev.faircarry.housefixture.kit.KitBreaksRules;

/** Imports what this package must not import, and is not null-marked. */
public final class LogBreaksRules {
  public KitBreaksRules sideways() {
    return new KitBreaksRules();
  }
}
