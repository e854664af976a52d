package dev.faircarry.trip.plan;

import dev.faircarry.unit.Volume;

/** How much of a need: a number of things or places, or a volume. */
public sealed interface Amount {
  /** So many. */
  record Count(int count) implements Amount {}

  /** So much room: of pots, of food containers. */
  record Room(Volume volume) implements Amount {}

  /** The number, or the volume in millilitres. */
  default long size() {
    return this instanceof Count c ? c.count() : ((Room) this).volume().milliliters();
  }

  /** Whether this is a volume. */
  default boolean isRoom() {
    return this instanceof Room;
  }
}
