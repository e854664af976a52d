package dev.faircarry.app;

import dev.faircarry.check.Verdict;
import dev.faircarry.split.Proof;
import dev.faircarry.trip.Trip;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How far a split is from the best possible, as far as a limited search knows.
 *
 * @param asFair whether nothing fairer was found
 * @param proved whether the fairest that was found is proved to be the fairest there is
 * @param worst the heaviest hiker-morning of the fairest known split
 * @param excessThousandths what that split passes the caps by
 * @param boundThousandths no split keeps its heaviest morning at this ratio or below; empty where
 *     caps stand in the way of a bound
 */
public record BestKnown(
    boolean asFair,
    boolean proved,
    Optional<Worst> worst,
    long excessThousandths,
    OptionalLong boundThousandths,
    long effortSteps,
    boolean cutByClock) {

  static BestKnown of(Trip trip, Verdict judged, SplitResult.Found found) {
    int order = judged.compareFairness(found.verdict());
    Verdict best = order <= 0 ? judged : found.verdict();
    Proof proof = found.proof();
    return new BestKnown(
        order <= 0,
        order >= 0 && proof.proved(),
        Worst.of(trip, best),
        best.excessThousandths(),
        bound(trip, judged, found),
        proof.effortSteps(),
        proof.cutByClock());
  }

  /** A bound of the first level holds among splits with the least excess over caps. */
  private static OptionalLong bound(Trip trip, Verdict judged, SplitResult.Found found) {
    Proof proof = found.proof();
    boolean leastExcess = found.verdict().excessThousandths() == 0 || proof.excessProved();
    if (!leastExcess || judged.excessThousandths() != found.verdict().excessThousandths()) {
      return OptionalLong.empty();
    }
    OptionalLong steps =
        proof.provedLevels() > 0
            ? OptionalLong.of(found.verdict().steps().get(0))
            : proof.boundSteps();
    return steps.isPresent()
        ? OptionalLong.of(Math.max(0, steps.getAsLong() - 1) * trip.policy().grainThousandths())
        : OptionalLong.empty();
  }

  /** One or two sentences. */
  public String words() {
    String clock = cutByClock ? " The safety clock ended the search." : "";
    if (asFair && proved) {
      return "No split is fairer: that is proved." + clock;
    }
    StringBuilder text = new StringBuilder();
    if (asFair) {
      text.append("A short search found nothing fairer.");
    } else {
      text.append(proved ? "The fairest split" : "A fairer split that a short search found");
      worst.ifPresent(
          w ->
              text.append(" has its heaviest load at ")
                  .append(ratio(w))
                  .append(" of target (")
                  .append(w.name())
                  .append(", day ")
                  .append(w.day())
                  .append(")"));
      text.append(excessThousandths > 0 ? ", and passes the caps by less or no more." : ".");
    }
    if (!proved && boundThousandths.isPresent()) {
      text.append(" No split brings the heaviest load to ")
          .append(DepartureWords.ratio(boundThousandths.getAsLong()))
          .append(" of target or below.");
    }
    return text + clock;
  }

  /** To a thousandth, rounded up: what is above never looks on target. */
  static String ratio(Worst worst) {
    return BigDecimal.valueOf(worst.countedMilligrams())
        .movePointRight(6)
        .divide(BigDecimal.valueOf(worst.targetNanograms()), 3, RoundingMode.CEILING)
        .toPlainString();
  }
}
