package dev.faircarry.app.card;

import dev.faircarry.app.Rebalance;
import dev.faircarry.app.Rebalanced;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.split.Handover;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What to do if one hiker does not come: who takes what over. No number in it depends on a body
 * mass, so that it may stand on everybody's card.
 *
 * @param handovers what changes hands; things of the absent hiker come from them by name only
 */
public record Absence(String hiker, Outcome outcome, List<Handover> handovers) {
  public Absence {
    handovers = List.copyOf(handovers);
  }

  /** What came of working it out. */
  public enum Outcome {
    /** The handovers are known. */
    HANDOVERS,
    /** Without this hiker the rules cannot all hold. */
    IMPOSSIBLE,
    /** The effort ended first. */
    UNDECIDED,
    /** Without this hiker there is no trip to divide, or parts of it make no sense. */
    UNFIT
  }

  /**
   * A case for every hiker, in the order of the trip.
   *
   * @param effortSteps search steps for all of them together
   */
  public static List<Absence> of(Rebalance rebalance, Trip trip, Split split, long effortSteps) {
    List<Absence> all = new ArrayList<>();
    long each =
        Math.max(ServiceLimits.MIN_EFFORT_STEPS, effortSteps / Math.max(1, trip.hikers().size()));
    for (Hiker hiker : trip.hikers()) {
      all.add(
          of(
              hiker.id(),
              rebalance.rebalance(
                  new Rebalance.Asked(
                      trip,
                      split,
                      List.of(new Change.DropsOut(hiker.id())),
                      Set.of(),
                      OptionalInt.empty()),
                  each)));
    }
    return all;
  }

  private static Absence of(String hiker, Rebalanced result) {
    if (result instanceof Rebalanced.Found found) {
      return new Absence(
          hiker, Outcome.HANDOVERS, found.curve().points().get(found.chosen()).list());
    }
    if (result instanceof Rebalanced.Impossible) {
      return new Absence(hiker, Outcome.IMPOSSIBLE, List.of());
    }
    return new Absence(
        hiker,
        result instanceof Rebalanced.Undecided ? Outcome.UNDECIDED : Outcome.UNFIT,
        List.of());
  }
}
