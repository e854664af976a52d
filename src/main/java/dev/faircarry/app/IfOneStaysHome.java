package dev.faircarry.app;

import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What to do if one of the group does not come, worked out for everybody in turn while there still
 * is a network.
 */
public final class IfOneStaysHome {
  private final Rebalance rebalance;

  public IfOneStaysHome(Rebalance rebalance) {
    this.rebalance = rebalance;
  }

  /**
   * One hiker's case.
   *
   * @param text a few plain lines, for a card or a message
   */
  public record Case(String hiker, Rebalanced result, String text) {}

  /**
   * A case for every hiker, in the trip's order.
   *
   * @param effortSteps search steps for each
   */
  public List<Case> cases(Trip trip, Split split, long effortSteps) {
    return cases(trip, split, effortSteps, Set.of());
  }

  /**
   * The same for somebody who may not know some body masses: texts tell nothing that follows from
   * those of hikers who come.
   *
   * @param hidden ids of hikers
   */
  public List<Case> cases(Trip trip, Split split, long effortSteps, Set<String> hidden) {
    List<Case> cases = new ArrayList<>();
    for (Hiker hiker : trip.hikers()) {
      Rebalanced result =
          rebalance.rebalance(
              new Rebalance.Asked(
                  trip,
                  split,
                  List.of(new Change.DropsOut(hiker.id())),
                  Set.of(),
                  OptionalInt.empty()),
              effortSteps);
      boolean all = hidden.stream().allMatch(hiker.id()::equals);
      cases.add(new Case(hiker.id(), result, text(hiker.name(), result, all)));
    }
    return cases;
  }

  private static String text(String name, Rebalanced result, boolean withLoads) {
    StringBuilder text = new StringBuilder("If " + name + " does not come:");
    if (result instanceof Rebalanced.Found found) {
      CurvePoint point = found.curve().points().get(found.chosen());
      List<String> sentences = found.sentences().get(found.chosen());
      sentences.forEach(sentence -> text.append('\n').append(sentence));
      if (sentences.isEmpty()) {
        text.append("\nNothing changes hands.");
      }
      Worst.of(found.trip(), found.verdicts().get(found.chosen()))
          .filter(worst -> withLoads)
          .ifPresent(
              worst ->
                  text.append("\nMost loaded: ")
                      .append(worst.name())
                      .append(", day ")
                      .append(worst.day())
                      .append(", ")
                      .append(percent(worst))
                      .append(" % of target."));
      found.notes().forEach(note -> text.append("\nNote: ").append(note.message()));
      if (withLoads && point.excessThousandths() > 0) {
        text.append("\nA cap is passed; leave something at home.");
      }
    } else if (result instanceof Rebalanced.Impossible impossible) {
      text.append("\nThere is no split that keeps the rules:");
      DemandWords words = new DemandWords(impossible.trip());
      impossible.conflict().forEach(each -> text.append('\n').append(words.words(each)));
    } else if (result instanceof Rebalanced.Unfit unfit) {
      text.append("\nThe trip does not work without ").append(name).append(':');
      unfit.issues().forEach(issue -> text.append('\n').append(issue.message()));
    } else {
      text.append("\nNo split was found in time; ask again.");
    }
    return text.toString();
  }

  /** Percent of target, rounded up: what is above never looks on target. */
  static String percent(Worst worst) {
    return BigDecimal.valueOf(worst.countedMilligrams())
        .movePointRight(8)
        .divide(BigDecimal.valueOf(worst.targetNanograms()), 0, RoundingMode.CEILING)
        .toPlainString();
  }
}
