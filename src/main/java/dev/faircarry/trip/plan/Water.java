package dev.faircarry.trip.plan;

import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Temperature;
import dev.faircarry.unit.Volume;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How the group drinks and where there is no water. What is left empty takes the service's default,
 * which the answer names with its source.
 *
 * @param perHour a person drinks on the way; wins over the temperature's habit
 * @param temperature of the air, from which a habit follows
 * @param campPerPerson a person needs for a night without water
 * @param bottleCapacity what one bottle holds; water travels in units of at most this
 * @param bottlesPerPerson bottles each person has
 * @param bottleMass one empty bottle, for those that are missing
 */
public record Water(
    Optional<Volume> perHour,
    Optional<Temperature> temperature,
    Optional<Volume> campPerPerson,
    Optional<Volume> bottleCapacity,
    OptionalInt bottlesPerPerson,
    Optional<Mass> bottleMass,
    List<Stretch> stretches) {
  public Water {
    stretches = List.copyOf(stretches);
  }

  /**
   * A way between sources, walked on one day.
   *
   * @param walkingMinutes on the way; by default the walking time of that day's route
   * @param dryCamp whether it ends at a camp without water
   */
  public record Stretch(int day, OptionalInt walkingMinutes, boolean dryCamp) {}
}
