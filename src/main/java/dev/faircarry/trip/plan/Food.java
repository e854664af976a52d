package dev.faircarry.trip.plan;

import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the group eats. What is left empty takes the service's default, which the answer names with
 * its source.
 *
 * @param kcalPerPersonDay energy a person eats on a day
 * @param kcalPerGram energy density of what is not counted as meals; wins over {@code mix}
 * @param mix the same by what it is made of
 * @param massPerPersonDay mass a person eats on a day, packaging left out; wins over energy
 * @param packagingPerPersonDay packaging of the uncounted food, left with who carries it
 * @param volumePerPersonDay room the uncounted food takes, per person and day
 * @param goesInto kind of container all food must travel in
 * @param meals counted meals; their energy (or mass) is taken off the rest
 */
public record Food(
    OptionalInt kcalPerPersonDay,
    Optional<BigDecimal> kcalPerGram,
    Optional<Mix> mix,
    Optional<Mass> massPerPersonDay,
    Optional<Mass> packagingPerPersonDay,
    Optional<Volume> volumePerPersonDay,
    Optional<String> goesInto,
    List<Meal> meals) {
  public Food {
    meals = List.copyOf(meals);
  }

  /** What a mixture of food is made of; the rest of {@code per} is water and fibre. */
  public record Mix(Mass carbohydrate, Mass protein, Mass fat, Mass per) {}

  /**
   * A meal that comes in units.
   *
   * @param perPersonDay units a person eats on a day
   * @param kcal energy of a unit
   * @param leaves packaging a used unit leaves
   */
  public record Meal(
      String id,
      String name,
      int perPersonDay,
      Mass unitMass,
      Optional<Volume> unitVolume,
      OptionalInt kcal,
      Optional<Mass> leaves) {}
}
