package dev.faircarry.provision;

import static dev.faircarry.provision.PlanSamples.boiling;
import static dev.faircarry.provision.PlanSamples.container;
import static dev.faircarry.provision.PlanSamples.fuel;
import static dev.faircarry.provision.PlanSamples.mass;
import static dev.faircarry.provision.PlanSamples.route;
import static dev.faircarry.provision.PlanSamples.temperature;
import static dev.faircarry.provision.PlanSamples.trip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.Use;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.unit.Fraction;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Fuel quantities worked out by hand, and containers against trying all. */
class FuelProvisionTest {
  private static final List<Fuel.Container> SIZES =
      List.of(container("small", 110, 100, false), container("large", 450, 215, false));

  /**
   * At 2,500 m water boils at 91.64 °C (vector B6): 81.64 K x 4.186 = 341.7 kJ a litre, with butane
   * at one half 14.95 g. Three people on three days and two on one: 11 person-days, 164.4 g.
   */
  @Test
  void gramsFromPeopleDaysAndHeight() {
    Provision provision = Provisions.of(trip(4, fuel(boiling("2500 m", SIZES)), 4, 4, 3));
    assertEquals(164.4, amount(provision, "fuelGrams"), 0.1);
    assertEquals(91.64, amount(provision, "boilingPoint"), 0.01);
    assertEquals(List.of("plan-fuel-small"), ids(provision));
    Form.Counted small = counted(provision);
    assertEquals(new Form.Quantity.Fixed(2), small.quantity());
    assertEquals(210_000, small.unitMass().milligrams());
    Use.Evenly use = (Use.Evenly) small.use().orElseThrow();
    // Two cartridges hold 220 g; each gives half of 164.4 g and keeps the rest besides its own 100
    // g.
    assertEquals(210_000 - 82_200, (double) use.leaves().milligrams(), 100.0);
    assertEquals(List.of("fuel"), provision.items().get(0).item().covers());
    assertFalse(provision.items().get(0).followsParty());
  }

  @Test
  void shrinksWhenSomebodyDropsOut() {
    double three =
        amount(Provisions.of(trip(4, fuel(boiling("0 m", SIZES)), 4, 4, 4)), "fuelGrams");
    double two = amount(Provisions.of(trip(4, fuel(boiling("0 m", SIZES)), 4, 4)), "fuelGrams");
    assertEquals(2.0 / 3, two / three, 1e-4);
  }

  /**
   * Day 1 at sea level boils at 99.97 °C (B1), day 2 at 5,000 m at 83.25 °C (B10): 89.97 K and
   * 73.25 K.
   */
  @Test
  void everyCampHasItsOwnBoilingPoint() {
    Fuel stated = boiling("0 m", SIZES);
    Fuel byCamp =
        new Fuel(
            stated.kind(),
            stated.megajoulesPerKilogram(),
            stated.boiledPerPersonDay(),
            stated.startTemperature(),
            Optional.empty(),
            stated.efficiency(),
            Optional.empty(),
            Optional.empty(),
            stated.spare(),
            SIZES);
    Provision provision =
        Provisions.of(
            trip(
                2,
                fuel(
                    byCamp,
                    route(1, "10 km", "0 m", "0 m", Optional.of("0 m")),
                    route(2, "10 km", "0 m", "0 m", Optional.of("5000 m"))),
                2));
    assertEquals((89.97 + 73.25) * 4.186, amount(provision, "heatKilojoules"), 0.1);
  }

  /**
   * By hand: 1 L from snow at -10 °C to 99.97 °C is 20.9 + 333.55 + 418.5 kJ; 20 min at 500 W are
   * 600 kJ.
   */
  @Test
  void snowAndSimmering() {
    Fuel water = boiling("0 m", SIZES);
    Fuel snow =
        new Fuel(
            water.kind(),
            water.megajoulesPerKilogram(),
            water.boiledPerPersonDay(),
            water.startTemperature(),
            water.height(),
            water.efficiency(),
            Optional.of(new Fuel.Snow(Fraction.of("1"), temperature("-10 C"))),
            Optional.of(new Fuel.Simmer(20, OptionalInt.of(500))),
            water.spare(),
            SIZES);
    assertEquals(
        20.9 + 333.55 + 99.97 * 4.186 + 600,
        amount(Provisions.of(trip(1, fuel(snow), 1)), "heatKilojoules"),
        0.1);
  }

  /**
   * 1 L a day, one person, ten days from 10 °C at sea level: 164.7 g of butane; a bottle is filled
   * to just that.
   */
  @Test
  void bottlesAreFilledToWhatIsNeeded() {
    Provision provision =
        Provisions.of(
            trip(10, fuel(boiling("0 m", List.of(container("bottle", 390, 30, true)))), 10));
    Form.Counted bottle = counted(provision);
    assertEquals(new Form.Quantity.Fixed(1), bottle.quantity());
    assertEquals(
        amount(provision, "fuelGrams") + 30, bottle.unitMass().milligrams() / 1000.0, 0.002);
  }

  @Test
  void spareIsAddedAndStated() {
    Fuel none = boiling("0 m", List.of(container("bottle", 390, 30, true)));
    Fuel half =
        new Fuel(
            none.kind(),
            none.megajoulesPerKilogram(),
            none.boiledPerPersonDay(),
            none.startTemperature(),
            none.height(),
            none.efficiency(),
            none.snow(),
            none.simmer(),
            Optional.of(Fraction.of("0.5")),
            none.containers());
    Provision provision = Provisions.of(trip(10, fuel(half), 10));
    double needed = amount(provision, "fuelGrams");
    assertEquals(needed * 1.5, amount(provision, "fuelGramsWithSpare"), 0.01);
    Use.Evenly use = (Use.Evenly) counted(provision).use().orElseThrow();
    assertEquals(30 + needed / 2, use.leaves().milligrams() / 1000.0, 0.01);
    assertTrue(
        provision.items().get(0).reason().contains("spare"), provision.items().get(0).reason());
  }

  @Test
  void warmWaterNeedsNoFuel() {
    Fuel cold = boiling("5000 m", SIZES);
    Fuel hot =
        new Fuel(
            cold.kind(),
            cold.megajoulesPerKilogram(),
            cold.boiledPerPersonDay(),
            Optional.of(temperature("90 °C")),
            cold.height(),
            cold.efficiency(),
            cold.snow(),
            cold.simmer(),
            cold.spare(),
            SIZES);
    Provision provision = Provisions.of(trip(2, fuel(hot), 2));
    assertEquals(List.of(), provision.items());
    assertEquals(Note.Code.NO_FUEL_NEEDED, provision.notes().get(0).code());
  }

  @Test
  void tooMuchFuelIsSaidNotPlanned() {
    Fuel poor = boiling("0 m", SIZES);
    Fuel waste =
        new Fuel(
            poor.kind(),
            poor.megajoulesPerKilogram(),
            Optional.of(PlanSamples.volume("20 L")),
            poor.startTemperature(),
            poor.height(),
            Optional.of(Fraction.of("0.01")),
            poor.snow(),
            poor.simmer(),
            poor.spare(),
            SIZES);
    Provision provision = Provisions.of(trip(30, fuel(waste), 30, 30));
    assertEquals(List.of(), provision.items());
    assertEquals(Note.Code.TOO_MUCH_FUEL, provision.notes().get(0).code());
  }

  @Test
  void askingAgainReplacesOnlyItsOwnItems() {
    Trip trip = trip(2, fuel(boiling("0 m", SIZES)), 2, 2);
    Trip once = Provisions.of(trip).applyTo(trip);
    Trip twice = Provisions.of(once).applyTo(once);
    assertEquals(once, twice);
    assertEquals(1, once.shared().size());
  }

  /**
   * Least mass on the first morning, then fewest containers, against trying every number of each
   * size.
   */
  @Test
  void containersAreTheLightest() {
    for (long seed = 0; seed < 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      boolean refillable = random.nextInt(4) == 0;
      List<Fuel.Container> kinds =
          List.of(
              container("a", random.nextInt(30, 200), random.nextInt(10, 120), refillable),
              container("b", random.nextInt(30, 300), random.nextInt(10, 150), refillable),
              container("c", random.nextInt(30, 500), random.nextInt(10, 250), refillable));
      int needed = random.nextInt(1, 700);
      int[] chosen = ContainerChoice.choose(kinds, needed);
      long best = Long.MAX_VALUE;
      int fewest = 0;
      for (int a = 0; a <= 24; a++) {
        for (int b = 0; b <= 24; b++) {
          for (int c = 0; c <= 24; c++) {
            int[] counts = {a, b, c};
            if (holds(kinds, counts) >= needed) {
              long mass = mass(kinds, counts);
              int number = a + b + c;
              if (mass < best || (mass == best && number < fewest)) {
                best = mass;
                fewest = number;
              }
            }
          }
        }
      }
      String message = "seed " + seed;
      assertTrue(holds(kinds, chosen) >= needed, message);
      assertEquals(best, mass(kinds, chosen), message);
      assertEquals(fewest, chosen[0] + chosen[1] + chosen[2], message);
    }
  }

  private static long holds(List<Fuel.Container> kinds, int[] counts) {
    long grams = 0;
    for (int i = 0; i < counts.length; i++) {
      grams += counts[i] * (kinds.get(i).fuel().milligrams() / 1000);
    }
    return grams;
  }

  private static long mass(List<Fuel.Container> kinds, int[] counts) {
    long sum = 0;
    for (int i = 0; i < counts.length; i++) {
      Fuel.Container kind = kinds.get(i);
      sum +=
          counts[i]
              * (kind.emptyMass().milligrams()
                  + (kind.refillable() ? 0 : kind.fuel().milligrams()));
    }
    return sum;
  }

  private static double amount(Provision provision, String name) {
    return provision.figures().stream()
        .filter(f -> f.name().equals(name))
        .findFirst()
        .orElseThrow()
        .amount()
        .doubleValue();
  }

  private static List<String> ids(Provision provision) {
    return provision.items().stream().map(i -> i.item().id()).toList();
  }

  private static Form.Counted counted(Provision provision) {
    return (Form.Counted) provision.items().get(0).item().form();
  }
}
