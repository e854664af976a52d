package dev.faircarry.trip;

import dev.faircarry.trip.plan.Plan;
import java.util.List;
import java.util.Optional;

/**
 * The group, its days, its gear and its rules, as stated. Nothing here is judged; {@code
 * dev.faircarry.check} lists what is wrong with a trip.
 *
 * @param days how many days the trip has; day d runs from 1 to {@code days}
 * @param plan the rest of the trip around the split, if it is stated
 */
public record Trip(
    String name,
    int days,
    Policy policy,
    List<Hiker> hikers,
    List<SharedItem> shared,
    List<Rule> rules,
    Optional<Plan> plan) {
  public Trip {
    hikers = List.copyOf(hikers);
    shared = List.copyOf(shared);
    rules = List.copyOf(rules);
  }

  /** A trip without a plan. */
  public Trip(
      String name,
      int days,
      Policy policy,
      List<Hiker> hikers,
      List<SharedItem> shared,
      List<Rule> rules) {
    this(name, days, policy, hikers, shared, rules, Optional.empty());
  }
}
