package dev.faircarry.json;

import java.util.Set;

/**
 * Fields that the service computes and adds to a split it answers with. They may come back: they
 * are passed over, because everything is recomputed from trip and carries. Whoever writes a new one
 * lists it here.
 */
final class SplitFields {
  /** Beside {@code carries}. */
  static final Set<String> OF_SPLIT =
      Set.of(
          "result",
          "worst",
          "excessThousandths",
          "ownExcessThousandths",
          "overCap",
          "proof",
          "findings",
          "cautions",
          "kept");

  /** Beside {@code hiker} and {@code pieces}. */
  static final Set<String> OF_CARRY = Set.of("name", "targetGrams", "mornings");

  private SplitFields() {}
}
