package dev.faircarry.provision;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.trip.plan.Surface;
import dev.faircarry.trip.plan.Water;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Length;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import dev.faircarry.unit.Temperature;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Small trips and plans for the tests of this package. */
final class PlanSamples {
  private PlanSamples() {}

  /** A trip of so many days; each number is the last day of a hiker. */
  static Trip trip(int days, Plan plan, int... lastDays) {
    List<Hiker> hikers = new ArrayList<>();
    for (int i = 0; i < lastDays.length; i++) {
      hikers.add(
          new Hiker(
              "h" + i,
              "Hiker " + i,
              Optional.of(mass("70 kg")),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              OptionalInt.empty(),
              Optional.empty(),
              false,
              lastDays[i] < days ? OptionalInt.of(lastDays[i]) : OptionalInt.empty(),
              Optional.empty(),
              List.of()));
    }
    return new Trip("Test", days, Policy.DEFAULT, hikers, List.of(), List.of(), Optional.of(plan));
  }

  static Plan food(Food food) {
    return new Plan(
        List.of(),
        Optional.of(food),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Plan fuel(Fuel fuel, RouteDay... route) {
    return new Plan(
        List.of(route),
        Optional.empty(),
        Optional.of(fuel),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static Plan water(Water water, RouteDay... route) {
    return new Plan(
        List.of(route),
        Optional.empty(),
        Optional.empty(),
        Optional.of(water),
        Optional.empty(),
        Optional.empty());
  }

  /** Boils 1 L a person and day from 10 °C with butane at an efficiency of one half, no spare. */
  static Fuel boiling(String height, List<Fuel.Container> containers) {
    return new Fuel(
        Optional.of(Fuel.Kind.BUTANE),
        Optional.empty(),
        Optional.of(volume("1 L")),
        Optional.of(temperature("10 °C")),
        Optional.of(height(height)),
        Optional.of(Fraction.of("0.5")),
        Optional.empty(),
        Optional.empty(),
        Optional.of(Fraction.of("0")),
        containers);
  }

  static Fuel.Container container(String id, int fuelGrams, int emptyGrams, boolean refillable) {
    return new Fuel.Container(
        id, id, mass(fuelGrams + " g"), mass(emptyGrams + " g"), Optional.empty(), refillable);
  }

  static RouteDay route(
      int day, String distance, String climb, String descent, Optional<String> camp) {
    return new RouteDay(
        day,
        height(distance),
        height(climb),
        height(descent),
        Optional.empty(),
        Optional.empty(),
        Surface.DIRT_ROAD,
        Optional.<BigDecimal>empty(),
        camp.map(PlanSamples::height));
  }

  static Mass mass(String text) {
    return ((Parse.Read<Mass>) Mass.parse(text)).value();
  }

  static Volume volume(String text) {
    return ((Parse.Read<Volume>) Volume.parse(text)).value();
  }

  static Length height(String text) {
    return ((Parse.Read<Length>) Length.parseHeight(text)).value();
  }

  static Temperature temperature(String text) {
    return ((Parse.Read<Temperature>) Temperature.parse(text)).value();
  }
}
