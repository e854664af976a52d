package dev.faircarry.kit;

import dev.faircarry.trip.Stow;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A thing that is better stowed elsewhere. Common practice: what is needed on the move at hand, a
 * wet shelter outside.
 *
 * @param better where it belongs
 */
public record StowAdvice(String ref, String name, Stow stow, Stow better, String reason) {

  /** Needs that come up on the move. */
  private static final Set<String> ON_THE_MOVE =
      Set.of("navigation", "first-aid", "water-treatment", "water", "rain", "sun", "whistle");

  static List<StowAdvice> of(List<Carried> things) {
    List<StowAdvice> advice = new ArrayList<>();
    for (Carried thing : things) {
      if (thing.where().isEmpty()) {
        continue;
      }
      Stow now = thing.where().orElseThrow();
      boolean buried = now == Stow.INSIDE || now == Stow.BOTTOM;
      if (buried && thing.covers().stream().anyMatch(ON_THE_MOVE::contains)) {
        advice.add(
            new StowAdvice(
                thing.ref(), thing.name(), now, Stow.AT_HAND, "It is needed on the move."));
      } else if (buried && thing.sleeps()) {
        advice.add(
            new StowAdvice(
                thing.ref(),
                thing.name(),
                now,
                Stow.OUTSIDE,
                "A wet shelter soaks what it lies with."));
      }
    }
    return List.copyOf(advice);
  }
}
