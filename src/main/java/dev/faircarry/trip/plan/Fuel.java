package dev.faircarry.trip.plan;

import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Length;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Temperature;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the group boils and with what. What is left empty takes the service's default, which the
 * answer names with its source.
 *
 * @param kind fuel; gas by default
 * @param megajoulesPerKilogram lower heating value in place of the kind's
 * @param boiledPerPersonDay water brought to the boil per person and day
 * @param startTemperature of the water
 * @param height above the sea where is cooked; by default each day's camp
 * @param efficiency part of the fuel's heat that reaches the water
 * @param snow water melted from snow
 * @param simmer cooking on after the boil
 * @param spare added to what is needed, as a fraction of it
 * @param containers what the fuel can come in
 */
public record Fuel(
    Optional<Kind> kind,
    Optional<BigDecimal> megajoulesPerKilogram,
    Optional<Volume> boiledPerPersonDay,
    Optional<Temperature> startTemperature,
    Optional<Length> height,
    Optional<Fraction> efficiency,
    Optional<Snow> snow,
    Optional<Simmer> simmer,
    Optional<Fraction> spare,
    List<Container> containers) {
  public Fuel {
    containers = List.copyOf(containers);
  }

  /** Kinds of fuel. */
  public enum Kind {
    /** Butane and propane mixed, as cartridges hold it. */
    GAS,
    PROPANE,
    BUTANE,
    ETHANOL,
    METHANOL,
    /** White gas and its like. */
    GASOLINE;

    /** The kind as it stands in documents. */
    public String text() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Melting snow.
   *
   * @param share part of the boiled water that is melted first
   * @param temperature of the snow
   */
  public record Snow(Fraction share, Temperature temperature) {}

  /**
   * Cooking on after the boil.
   *
   * @param minutesPerDay for the whole group
   * @param watts that must reach the pot to keep it simmering
   */
  public record Simmer(int minutesPerDay, OptionalInt watts) {}

  /**
   * A cartridge or bottle.
   *
   * @param fuel what it holds when full
   * @param emptyMass what is left of it
   * @param refillable whether it can be filled with less; a cartridge cannot
   */
  public record Container(
      String id,
      String name,
      Mass fuel,
      Mass emptyMass,
      Optional<Volume> volume,
      boolean refillable) {}
}
