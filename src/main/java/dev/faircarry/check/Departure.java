package dev.faircarry.check;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether a group can leave as things are.
 *
 * @param findings everything found, gravest first: those of the verdict and those about leaving
 * @param fairness empty for a split that breaks rules
 */
public record Departure(
    Readiness readiness,
    List<Finding> findings,
    Verdict verdict,
    LabelDoubt labels,
    Optional<Fairness> fairness) {
  public Departure {
    findings = List.copyOf(findings);
  }

  /** The answer in one word. */
  public enum Readiness {
    READY,
    READY_WITH_CAUTIONS,
    NOT_READY;

    /** The answer as it stands in documents: {@code ready-with-cautions}. */
    public String text() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
