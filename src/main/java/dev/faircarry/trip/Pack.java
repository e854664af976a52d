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
 */
public record Pack(
    Mass mass, MassFrom massFrom, Optional<Volume> volume, Optional<Mass> loadRating, Optional<Cost> cost) {}
