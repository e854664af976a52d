package dev.faircarry.trip;

import java.util.List;

/**
 * The group, its days, its gear and its rules, as stated. Nothing here is judged; {@code dev.faircarry.check} lists what
 * is wrong with a trip.
 *
 * @param days how many days the trip has; day d runs from 1 to {@code days}
 */
public record Trip(
    String name, int days, Policy policy, List<Hiker> hikers, List<SharedItem> shared, List<Rule> rules) {
  public Trip {
    hikers = List.copyOf(hikers);
    shared = List.copyOf(shared);
    rules = List.copyOf(rules);
  }
}
