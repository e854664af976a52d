package dev.faircarry.app;

import dev.faircarry.split.Proof;
import dev.faircarry.trip.Trip;
import java.math.BigDecimal;

/** Says in words how well a split is known to be the fairest. */
public final class ProofWords {
  private ProofWords() {}

  /** One or two sentences. */
  public static String of(SplitResult.Found found) {
    return of(found.trip(), found.proof());
  }

  private static String of(Trip trip, Proof proof) {
    return how(trip, proof)
        + (proof.cutByClock()
            ? " The safety clock ended the search: another run may answer otherwise."
            : "");
  }

  private static String how(Trip trip, Proof proof) {
    if (proof.proved()) {
      return "Proved: no split is fairer, on any morning of anybody.";
    }
    if (!proof.excessProved()) {
      return "Not proved: perhaps another split passes the caps by less.";
    }
    if (proof.provedLevels() == 0) {
      return "Not proved: perhaps the heaviest load can be made lighter, but not to "
          + bound(trip, proof)
          + " of its target.";
    }
    return "The "
        + (proof.provedLevels() == 1
            ? "heaviest morning is proved"
            : proof.provedLevels() + " heaviest mornings of " + proof.levels() + " are proved")
        + "; perhaps the next can be made lighter, but not to "
        + bound(trip, proof)
        + " of its target.";
  }

  /** The ratio that the first unproved level cannot reach. */
  private static String bound(Trip trip, Proof proof) {
    long below = Math.max(0, proof.boundSteps().orElse(0) - 1) * trip.policy().grainThousandths();
    return BigDecimal.valueOf(below, 3).toPlainString();
  }
}
