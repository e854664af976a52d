package dev.faircarry.app;

import dev.faircarry.split.Curve;
import dev.faircarry.split.Handover;
import dev.faircarry.trip.Trip;
import java.util.OptionalInt;

/** Says handovers as a leader reads them out. */
final class HandoverWords {
  private static final String WORTH = "1 % of target for each handover";

  private final TripNames before;
  private final TripNames now;

  /** Names of who is gone come from the trip before. */
  HandoverWords(Trip before, Trip now) {
    this.before = new TripNames(before);
    this.now = new TripNames(now);
  }

  /** {@code "Asha gives “Filter” to Tomas."} */
  String of(Handover handover) {
    String from = now.hiker(handover.from());
    String units = handover.units() == 1 ? "" : handover.units() + " of ";
    return (from.equals(handover.from()) ? before.hiker(handover.from()) : from)
        + " gives "
        + units
        + "“"
        + now.piece(handover.piece())
        + "” to "
        + now.hiker(handover.to())
        + ".";
  }

  /** Why a point is the one to take. */
  String reason(Curve curve, OptionalInt maxHandovers, int chosen) {
    int handovers = curve.points().get(chosen).handovers();
    if (maxHandovers.isPresent()) {
      return handovers <= maxHandovers.getAsInt()
          ? "The fairest with at most " + count(maxHandovers.getAsInt()) + "."
          : "There is none with at most "
              + count(maxHandovers.getAsInt())
              + "; this one has the fewest there can be.";
    }
    if (chosen == curve.points().size() - 1) {
      String gain = handovers == 1 ? " gains" : " gain";
      return "More than " + count(handovers) + gain + " nothing that was found.";
    }
    return "After "
        + count(handovers)
        + ", further ones lower the worst load by less than "
        + WORTH
        + ".";
  }

  private static String count(int handovers) {
    return handovers == 1 ? "1 handover" : handovers + " handovers";
  }
}
