package dev.faircarry.housefixture.weigh;

import dev.faircarry.housefixture.kit.KitBreaksRules;

/** Imports what this package must not import, and is not null-marked. */
public final class WeighBreaksRules {
  public KitBreaksRules sideways() {
    return new KitBreaksRules();
  }
}
