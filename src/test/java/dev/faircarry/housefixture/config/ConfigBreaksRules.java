package dev.faircarry.housefixture.config;

import dev.faircarry.housefixture.kit.KitBreaksRules;

/** Imports what this package must not import, and is not null-marked. */
public final class ConfigBreaksRules {
  public KitBreaksRules sideways() {
    return new KitBreaksRules();
  }
}
