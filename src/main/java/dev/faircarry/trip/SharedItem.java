package dev.faircarry.trip;

import dev.faircarry.unit.Cost;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Something the group carries once.
 *
 * @param owner id of the hiker it belongs to
 * @param covers needs of the group it meets
 * @param sleeps places to sleep it gives
 * @param goesInto kind of container it must travel in
 * @param onDays the days on whose mornings it is there, in rising order; empty for all days
 * @param purpose what it is for, in the group's own word; reports add up by it
 * @param form one thing, several parts, or counted units
 */
public record SharedItem(
    String id,
    String name,
    Optional<String> owner,
    List<String> covers,
    OptionalInt sleeps,
    Optional<Cost> cost,
    Optional<String> goesInto,
    List<Integer> onDays,
    Optional<String> purpose,
    Form form) {
  public SharedItem {
    covers = List.copyOf(covers);
    onDays = List.copyOf(onDays);
  }

  /** A thing of no stated purpose. */
  public SharedItem(
      String id,
      String name,
      Optional<String> owner,
      List<String> covers,
      OptionalInt sleeps,
      Optional<Cost> cost,
      Optional<String> goesInto,
      List<Integer> onDays,
      Form form) {
    this(id, name, owner, covers, sleeps, cost, goesInto, onDays, Optional.empty(), form);
  }

  /** Whether the item is in the group on the morning of a day, used up or not. */
  public boolean thereOn(int day) {
    return onDays.isEmpty() || onDays.contains(day);
  }
}
