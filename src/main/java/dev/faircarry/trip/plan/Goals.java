package dev.faircarry.trip.plan;

import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Mass;
import java.util.List;
import java.util.Optional;

/**
 * What the hikers would like to reach.
 *
 * @param baseMass base weight for hikers who state none of their own
 * @param spending money for one's whole kit, likewise
 * @param hikers goals of single hikers
 */
public record Goals(Optional<Mass> baseMass, Optional<Cost> spending, List<OfHiker> hikers) {
  public Goals {
    hikers = List.copyOf(hikers);
  }

  /** A hiker's own goals. */
  public record OfHiker(String hiker, Optional<Mass> baseMass, Optional<Cost> spending) {}

  /** The base weight a hiker wants to reach. */
  public Optional<Mass> baseMassOf(String hiker) {
    return own(hiker).flatMap(OfHiker::baseMass).or(this::baseMass);
  }

  /** The money a hiker wants to spend on the whole kit. */
  public Optional<Cost> spendingOf(String hiker) {
    return own(hiker).flatMap(OfHiker::spending).or(this::spending);
  }

  private Optional<OfHiker> own(String hiker) {
    return hikers.stream().filter(h -> h.hiker().equals(hiker)).findFirst();
  }
}
