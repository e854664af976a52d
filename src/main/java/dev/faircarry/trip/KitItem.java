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
 * @param purpose what it is for, in the group's own word; reports add up by it
 * @param labelMass what the maker claims, kept beside a mass read from a scale
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
    Optional<Contains> contains,
    Optional<String> purpose,
    Optional<Mass> labelMass) {
  public KitItem {
    covers = List.copyOf(covers);
  }

  /** A thing of no stated purpose and one known mass. */
  public KitItem(
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
    this(
        id,
        name,
        mass,
        massFrom,
        volume,
        cost,
        stow,
        worn,
        luxury,
        covers,
        use,
        contains,
        Optional.empty(),
        Optional.empty());
  }
}
