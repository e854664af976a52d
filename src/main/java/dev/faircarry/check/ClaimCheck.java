package dev.faircarry.check;

import dev.faircarry.split.Proof;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** Refuses claims of proof that do not agree with the split or with what can be recomputed. */
public final class ClaimCheck {
  private ClaimCheck() {}

  /** What is wrong with a proof; nothing if it is consistent. */
  public static List<Finding> of(Trip trip, Verdict verdict, Proof proof) {
    List<Finding> wrong = new ArrayList<>();
    int levels = verdict.steps().size();
    if (proof.levels() != levels) {
      wrong.add(
          claim(
              "The proof speaks of " + proof.levels() + " levels; the split has " + levels + "."));
      return wrong;
    }
    if (proof.provedByBound() > Bounds.provedLevels(trip, verdict.steps())) {
      wrong.add(claim(proof.provedByBound() + " levels are said to follow from bounds; fewer do."));
    }
    if (proof.boundSteps().isPresent()) {
      long reported = verdict.steps().get(proof.provedLevels());
      if (proof.boundSteps().getAsLong() > reported) {
        wrong.add(
            claim(
                "The bound of level "
                    + (proof.provedLevels() + 1)
                    + " is "
                    + proof.boundSteps().getAsLong()
                    + ", above the split’s own "
                    + reported
                    + "."));
      }
    }
    if (verdict.excessThousandths() > 0 && !proof.excessProved() && proof.provedLevels() > 0) {
      wrong.add(claim("Levels cannot be proved while less excess over caps may be possible."));
    }
    if (proof.proved() && !verdict.keepsRules()) {
      wrong.add(claim("The split breaks rules, so it is not the best of those that keep them."));
    }
    return wrong;
  }

  private static Finding claim(String message) {
    return new Finding(
        FindingCode.CLAIM_WRONG,
        Severity.STOP,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        message,
        "Do not rely on the proof; check the split by itself.");
  }
}
