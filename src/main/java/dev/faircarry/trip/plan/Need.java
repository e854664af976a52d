package dev.faircarry.trip.plan;

import java.util.List;
import java.util.OptionalInt;

/**
 * Something the group needs so much of.
 *
 * @param covers its name, as items name it in {@code covers}; {@code sleeping} counts places to
 *     sleep
 * @param atLeast so much in the whole group; nothing strikes the need
 * @param perParty each party needs at least so many of its own
 */
public record Need(String covers, Amount atLeast, OptionalInt perParty) {
  /** Places to sleep; what a shared item {@code sleeps} counts for it. */
  public static final String SLEEPING = "sleeping";

  /** Room in pots; measured as a volume unless stated otherwise. */
  public static final String POT = "pot";

  /** Needs that every group has by default and that are counted. */
  public static final List<String> COUNTED =
      List.of(SLEEPING, "flame", "water-treatment", "first-aid", "navigation", "light", "repair");
}
