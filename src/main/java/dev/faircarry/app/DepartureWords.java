package dev.faircarry.app;

import dev.faircarry.check.Departure;
import dev.faircarry.check.Fairness;
import dev.faircarry.trip.Trip;
import java.math.BigDecimal;

/** Departure checks in words. */
public final class DepartureWords {
  private final TripNames names;

  public DepartureWords(Trip trip) {
    names = new TripNames(trip);
  }

  /** {@code "Asha gives “Pot” to Tomas and takes “Rope”."} */
  public String of(Fairness.Gain gain) {
    return names.hiker(gain.from())
        + " gives “"
        + names.piece(gain.piece())
        + "” to "
        + names.hiker(gain.to())
        + gain.back().map(b -> " and takes “" + names.piece(b) + "”").orElse("")
        + ".";
  }

  /** The same with what it comes to. */
  public String withGain(Fairness.Gain gain) {
    return of(gain)
        + " The heaviest load is then "
        + ratio(gain.worstThousandths())
        + " of target.";
  }

  /** Somebody's heaviest morning. */
  public String name(Fairness.Standing standing) {
    return names.hiker(standing.hiker());
  }

  public static String ratio(long thousandths) {
    return BigDecimal.valueOf(thousandths, 3).toPlainString();
  }

  public static String of(Departure.Readiness readiness) {
    return switch (readiness) {
      case READY -> "Ready.";
      case READY_WITH_CAUTIONS -> "Ready, with cautions.";
      case NOT_READY -> "Not ready.";
    };
  }
}
