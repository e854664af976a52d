package dev.faircarry.trip;

import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.util.Optional;

/**
 * What a hiker carries everything in. Its mass is part of the load.
 *
 * @param volume room inside; without it there is room for anything
 * @param loadRating the most its maker allows in and including the pack
 * @param labelMass what the maker claims, kept beside a mass read from a scale
 */
public record Pack(
    Mass mass,
    MassFrom massFrom,
    Optional<Volume> volume,
    Optional<Mass> loadRating,
    Optional<Cost> cost,
    Optional<Mass> labelMass) {

  /** A pack of one known mass. */
  public Pack(
      Mass mass,
      MassFrom massFrom,
      Optional<Volume> volume,
      Optional<Mass> loadRating,
      Optional<Cost> cost) {
    this(mass, massFrom, volume, loadRating, cost, Optional.empty());
  }
}
