package dev.faircarry.provision;

import static dev.faircarry.provision.PlanSamples.food;
import static dev.faircarry.provision.PlanSamples.mass;
import static dev.faircarry.provision.PlanSamples.trip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Use;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Plan;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Food quantities worked out by hand. */
class FoodProvisionTest {
  private static final Food.Meal DINNER =
      new Food.Meal(
          "dinner",
          "Dinner pouch",
          1,
          mass("170 g"),
          Optional.empty(),
          OptionalInt.of(640),
          Optional.of(mass("12 g")));

  private static Food food3000(
      Optional<String> kcalPerGram, Optional<String> grams, List<Food.Meal> meals) {
    return new Food(
        OptionalInt.of(3000),
        kcalPerGram.map(BigDecimal::new),
        Optional.empty(),
        grams.map(PlanSamples::mass),
        Optional.of(mass("30 g")),
        Optional.empty(),
        Optional.of("food"),
        meals);
  }

  /**
   * 3,000 kcal less one dinner of 640 are 2,360; at 4 kcal/g 590 g, with 30 g of packaging 620 g.
   */
  @Test
  void energyLessMeals() {
    Provision provision =
        Provisions.of(
            trip(4, food(food3000(Optional.of("4"), Optional.empty(), List.of(DINNER))), 4, 4, 2));
    assertEquals(List.of("plan-meal-dinner", "plan-ration"), ids(provision));
    Form.Counted ration = counted(provision, 1);
    assertEquals(620_000, ration.unitMass().milligrams());
    assertEquals(new Form.Quantity.PerPerson(1), ration.quantity());
    Use.UnitsPerDay use = (Use.UnitsPerDay) ration.use().orElseThrow();
    assertEquals(30_000, use.leaves().milligrams());
    assertEquals(new Use.PerDay.FollowsParty(), use.perDay());
    assertEquals(Optional.of("food"), provision.items().get(1).item().goesInto());
    assertTrue(provision.items().stream().allMatch(Provision.Item::followsParty));
    assertEquals(
        List.of(Note.Code.CONTAINER_MISSING), provision.notes().stream().map(Note::code).toList());
  }

  /** 3,000 / 4.4 = 681.8, rounded up to 682 g. */
  @Test
  void defaultsAreNamedWithTheirSource() {
    Provision provision =
        Provisions.of(trip(2, food(food3000(Optional.empty(), Optional.empty(), List.of())), 2));
    assertEquals(712_000, counted(provision, 0).unitMass().milligrams());
    Figure density =
        provision.figures().stream()
            .filter(f -> f.name().equals("kcalPerGram"))
            .findFirst()
            .orElseThrow();
    assertEquals(Figure.Origin.DEFAULT, density.origin());
    assertTrue(density.source().contains("common practice"), density.source());
    Figure energy =
        provision.figures().stream()
            .filter(f -> f.name().equals("kcalPerPersonDay"))
            .findFirst()
            .orElseThrow();
    assertEquals(Figure.Origin.GIVEN, energy.origin());
  }

  /** 700 g a day less 158 g eaten of the dinner are 542 g, and 30 g of packaging. */
  @Test
  void massWinsOverEnergy() {
    Provision provision =
        Provisions.of(
            trip(4, food(food3000(Optional.of("4"), Optional.of("700 g"), List.of(DINNER))), 4));
    assertEquals(572_000, counted(provision, 1).unitMass().milligrams());
  }

  @Test
  void mealsThatCoverTheDayLeaveNoRation() {
    Food.Meal all =
        new Food.Meal(
            "all",
            "All",
            5,
            mass("170 g"),
            Optional.empty(),
            OptionalInt.of(640),
            Optional.empty());
    Provision provision =
        Provisions.of(trip(4, food(food3000(Optional.of("4"), Optional.empty(), List.of(all))), 4));
    assertEquals(List.of("plan-meal-all"), ids(provision));
    assertEquals(Note.Code.MEALS_COVER_ENERGY, provision.notes().get(0).code());
    assertEquals(Note.Code.CONTAINER_MISSING, provision.notes().get(1).code());
  }

  /** 60, 15 and 20 g in 100 g: 4.8 kcal/g by the Atwater factors; 3,000 kcal are 625 g. */
  @Test
  void mixtureGivesTheDensity() {
    Food food =
        new Food(
            OptionalInt.of(3000),
            Optional.empty(),
            Optional.of(new Food.Mix(mass("60 g"), mass("15 g"), mass("20 g"), mass("100 g"))),
            Optional.empty(),
            Optional.of(mass("0.1 g")),
            Optional.empty(),
            Optional.empty(),
            List.of());
    assertEquals(
        625_100, counted(Provisions.of(trip(1, food(food), 1)), 0).unitMass().milligrams());
  }

  @Test
  void nobodyNeedsNothing() {
    Provision provision =
        Provisions.of(trip(4, food(food3000(Optional.empty(), Optional.empty(), List.of()))));
    assertEquals(List.of(), provision.items());
    assertEquals(Note.Code.NOBODY_THERE, provision.notes().get(0).code());
  }

  @Test
  void noPlanNoProvision() {
    assertEquals(
        new Provision(List.of(), List.of(), List.of()), Provisions.of(trip(2, Plan.EMPTY, 2)));
  }

  private static List<String> ids(Provision provision) {
    return provision.items().stream().map(i -> i.item().id()).toList();
  }

  private static Form.Counted counted(Provision provision, int index) {
    return (Form.Counted) provision.items().get(index).item().form();
  }
}
