package dev.faircarry.trip;

import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.util.List;
import java.util.Optional;

/**
 * A thing a hiker brings and carries or wears anyway.
 *
 * @param worn on the body or in the hand: no part of the load
 * @param luxury wanted by its owner alone: carried, but not counted in the ratio
 * @param covers needs of the group it meets for its owner's party
 * @param use how it is used up over its owner's own days
 * @param contains what can travel inside it
 */
public record KitItem(
    String id,
    String name,
    Mass mass,
    MassFrom massFrom,
    Optional<Volume> volume,
    Optional<Cost> cost,
    Stow stow,
    boolean worn,
    boolean luxury,
    List<String> covers,
    Optional<Use.Evenly> use,
    Optional<Contains> contains) {
  public KitItem {
    covers = List.copyOf(covers);
  }
}
