package dev.faircarry.provision;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * A number that a quantity was worked out from, or a step on the way.
 *
 * @param name as the plan names it, or as the step is called
 * @param unit its unit in words; empty for a plain number
 * @param source where it comes from: a publication, "common practice", or the rule of computation
 */
public record Figure(String name, BigDecimal amount, String unit, Origin origin, String source) {

  /** Who said it. */
  public enum Origin {
    /** Stated in the plan. */
    GIVEN,
    /** The service's own, because the plan says nothing; stating it in the plan replaces it. */
    DEFAULT,
    /** Follows from other figures. */
    COMPUTED;

    /** The origin as it stands in documents. */
    public String text() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static Figure given(String name, BigDecimal amount, String unit) {
    return new Figure(name, amount, unit, Origin.GIVEN, "stated in the plan");
  }

  static Figure assumed(String name, BigDecimal amount, String unit, String source) {
    return new Figure(name, amount, unit, Origin.DEFAULT, source);
  }

  static Figure computed(String name, BigDecimal amount, String unit, String source) {
    return new Figure(name, amount, unit, Origin.COMPUTED, source);
  }
}
