package dev.faircarry.app;

import dev.faircarry.access.Sight;
import dev.faircarry.check.Departure;
import dev.faircarry.check.DepartureCheck;
import dev.faircarry.check.Essentials;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.Optional;

/** Judges whether a group can leave, and how far its split is from the best possible. */
public final class CheckDeparture {
  private final SplitTrip splitTrip;

  public CheckDeparture(SplitTrip splitTrip) {
    this.splitTrip = splitTrip;
  }

  /**
   * A question.
   *
   * @param trip the trip as it is now, without issues
   * @param madeFor the trip the split was made for, if that is known
   */
  public record Asked(Trip trip, Split split, Optional<Trip> madeFor, Essentials essentials) {}

  /**
   * An answer.
   *
   * @param best empty for a split that breaks rules, where the search found nothing, and where it
   *     was not asked for
   */
  public record Answer(Trip trip, Departure departure, Optional<BestKnown> best) {}

  /**
   * Judges.
   *
   * @param effortSteps search steps to spend on the best possible
   */
  public Answer check(Asked asked, long effortSteps) {
    Departure departure = departure(asked);
    Optional<BestKnown> best = Optional.empty();
    if (departure.verdict().keepsRules()
        && splitTrip.split(asked.trip(), effortSteps) instanceof SplitResult.Found found) {
      best = Optional.of(BestKnown.of(asked.trip(), departure.verdict(), found));
    }
    return new Answer(asked.trip(), departure, best);
  }

  /**
   * Judges for somebody who may not know some body masses. Nothing is searched for then, as nothing
   * of it could be told; and the trip is not compared with the one the split was made for, because
   * what has changed may be a hidden mass.
   */
  public Answer check(Asked asked, long effortSteps, Sight sight) {
    if (!sight.hidesAny()) {
      return check(asked, effortSteps);
    }
    Asked alone = new Asked(asked.trip(), asked.split(), Optional.empty(), asked.essentials());
    return new Answer(asked.trip(), departure(alone), Optional.empty());
  }

  private static Departure departure(Asked asked) {
    return DepartureCheck.of(asked.trip(), asked.split(), asked.madeFor(), asked.essentials());
  }
}
