package dev.faircarry.trip;

import dev.faircarry.unit.Mass;
import java.util.List;

/** How a thing is used up. */
public sealed interface Use {

  /**
   * The same amount every day.
   *
   * @param leaves what is left of it after the last day, for example an empty cartridge
   */
  record Evenly(Mass leaves) implements Use {}

  /**
   * Whole units, so many a day.
   *
   * @param perDay units used on each day of the trip, day 1 first; one number stands for every day
   * @param leaves what each used unit leaves with the hiker who held it
   */
  record UnitsPerDay(PerDay perDay, Mass leaves) implements Use {}

  /** Units used by day. */
  sealed interface PerDay {
    /** The same number every day. */
    record Same(int units) implements PerDay {}

    /** A number for each day, day 1 first. */
    record Listed(List<Integer> units) implements PerDay {
      public Listed {
        units = List.copyOf(units);
      }
    }

    /** As many as the item's {@code perPerson} makes of the people present. */
    record FollowsParty() implements PerDay {}
  }
}
