package dev.faircarry.trip.plan;

import dev.faircarry.unit.Cost;
import java.util.List;
import java.util.Optional;

/**
 * The question what to take.
 *
 * @param needs what the group needs; each replaces the default need of the same name, the other
 *     defaults stay
 * @param offers what could be taken besides what the trip already names
 * @param budget most money that may be spent; empty for no bound
 * @param keep things of the trip that stay whatever the needs say: {@code "pot"}, {@code
 *     "asha/chair"}
 */
public record Taking(
    List<Need> needs, List<Offer> offers, Optional<Cost> budget, List<String> keep) {
  public Taking {
    needs = List.copyOf(needs);
    offers = List.copyOf(offers);
    keep = List.copyOf(keep);
  }

  /** A question that says nothing: the default needs, what the trip already names. */
  public static final Taking EMPTY = new Taking(List.of(), List.of(), Optional.empty(), List.of());
}
