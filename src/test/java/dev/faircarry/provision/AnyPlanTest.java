package dev.faircarry.provision;

import static dev.faircarry.provision.PlanSamples.container;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.check.IssueCode;
import dev.faircarry.check.TripIssues;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.trip.plan.Water;
import dev.faircarry.unit.Fraction;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Laws that hold for every plan without issues. */
class AnyPlanTest {
  private static final int DAYS = 5;

  /** What is provisioned makes a trip without issues, but for too many pieces, and that is said. */
  @Test
  void theTripIsFineAfterwards() {
    int items = 0;
    for (long seed = 0; seed < 500; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Trip trip = PlanSamples.trip(DAYS, plan(random), DAYS, random.nextInt(1, DAYS + 1), DAYS);
      assertEquals(List.of(), TripIssues.of(trip), "seed " + seed);
      Provision provision = Provisions.of(trip);
      items += provision.items().size();
      List<IssueCode> codes =
          TripIssues.of(provision.applyTo(trip)).stream().map(i -> i.code()).toList();
      boolean said =
          provision.notes().stream().anyMatch(n -> n.code() == Note.Code.TOO_MANY_PIECES);
      assertEquals(said ? List.of(IssueCode.TOO_MANY_PIECES) : List.of(), codes, "seed " + seed);
    }
    assertTrue(items > 500, items + " items");
  }

  /** One more hiker never needs less of anything that is eaten, burnt or drunk. */
  @Test
  void morePeopleNeedNoLess() {
    for (long seed = 0; seed < 200; seed++) {
      Plan plan = plan(new SplittableRandom(seed));
      long three = milligrams(PlanSamples.trip(DAYS, plan, DAYS, DAYS, DAYS));
      long two = milligrams(PlanSamples.trip(DAYS, plan, DAYS, DAYS));
      assertTrue(two <= three, "seed " + seed + ": " + two + " for two, " + three + " for three");
    }
  }

  private static long milligrams(Trip trip) {
    int[] people =
        IntStream.rangeClosed(1, DAYS)
            .map(d -> (int) trip.hikers().stream().filter(h -> d <= h.lastDay(DAYS)).count())
            .toArray();
    long sum = 0;
    for (Provision.Item item : Provisions.of(trip).items()) {
      SharedItem shared = item.item();
      Form.Counted counted = (Form.Counted) shared.form();
      long units;
      if (counted.quantity() instanceof Form.Quantity.Fixed fixed) {
        units = fixed.count();
      } else {
        long each = ((Form.Quantity.PerPerson) counted.quantity()).countPerDay();
        units =
            each
                * (shared.onDays().isEmpty()
                    ? IntStream.of(people).sum()
                    : people[shared.onDays().get(0) - 1]);
      }
      sum += units * counted.unitMass().milligrams();
    }
    return sum;
  }

  private static Plan plan(SplittableRandom random) {
    List<RouteDay> route = new ArrayList<>();
    for (int day = 1; day <= DAYS; day++) {
      if (random.nextBoolean()) {
        route.add(
            PlanSamples.route(
                day,
                random.nextInt(3, 25) + " km",
                random.nextInt(0, 1500) + " m",
                random.nextInt(0, 1500) + " m",
                Optional.of(random.nextInt(-300, 5000) + " m")));
      }
    }
    return new Plan(
        route,
        Optional.of(food(random)),
        Optional.of(fuel(random)),
        Optional.of(water(random)),
        Optional.empty(),
        Optional.empty());
  }

  private static Food food(SplittableRandom random) {
    List<Food.Meal> meals = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      meals.add(
          new Food.Meal(
              "meal" + i,
              "Meal " + i,
              random.nextInt(1, 3),
              PlanSamples.mass(random.nextInt(50, 400) + " g"),
              Optional.empty(),
              random.nextBoolean()
                  ? OptionalInt.of(random.nextInt(100, 1500))
                  : OptionalInt.empty(),
              Optional.of(PlanSamples.mass(random.nextInt(0, 50) + " g"))));
    }
    return new Food(
        random.nextBoolean() ? OptionalInt.of(random.nextInt(1000, 6000)) : OptionalInt.empty(),
        Optional.of(new BigDecimal("4.1")),
        Optional.empty(),
        random.nextBoolean() ? Optional.of(PlanSamples.mass("750 g")) : Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        meals);
  }

  private static Fuel fuel(SplittableRandom random) {
    Fuel.Kind[] kinds = Fuel.Kind.values();
    return new Fuel(
        Optional.of(kinds[random.nextInt(kinds.length)]),
        Optional.empty(),
        Optional.of(PlanSamples.volume(random.nextInt(0, 4000) + " mL")),
        Optional.of(PlanSamples.temperature(random.nextInt(0, 60) + " °C")),
        Optional.empty(),
        Optional.of(Fraction.of("0." + random.nextInt(1, 10))),
        random.nextBoolean()
            ? Optional.of(new Fuel.Snow(Fraction.of("0.5"), PlanSamples.temperature("-7 °C")))
            : Optional.empty(),
        random.nextBoolean()
            ? Optional.of(new Fuel.Simmer(random.nextInt(0, 60), OptionalInt.empty()))
            : Optional.empty(),
        Optional.empty(),
        random.nextBoolean()
            ? List.of()
            : List.of(
                container(
                    "a", random.nextInt(1, 300), random.nextInt(0, 200), random.nextBoolean()),
                container(
                    "b", random.nextInt(1, 500), random.nextInt(0, 200), random.nextBoolean())));
  }

  private static Water water(SplittableRandom random) {
    List<Water.Stretch> stretches = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      stretches.add(
          new Water.Stretch(
              random.nextInt(1, DAYS + 1),
              random.nextBoolean() ? OptionalInt.of(random.nextInt(0, 600)) : OptionalInt.empty(),
              random.nextBoolean()));
    }
    return new Water(
        random.nextBoolean()
            ? Optional.of(PlanSamples.volume(random.nextInt(0, 1500) + " mL"))
            : Optional.empty(),
        Optional.of(PlanSamples.temperature(random.nextInt(-20, 45) + " °C")),
        Optional.empty(),
        Optional.of(PlanSamples.volume(random.nextInt(300, 3000) + " mL")),
        OptionalInt.of(random.nextInt(0, 4)),
        Optional.empty(),
        stretches);
  }
}
