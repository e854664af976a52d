package dev.faircarry.provision;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Use;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Food: counted meals as they are, and the rest of each person's day as one ration. Both follow the
 * party.
 */
final class FoodProvision {
  private final Food food;
  private final Draft draft;

  FoodProvision(Food food, Draft draft) {
    this.food = food;
    this.draft = draft;
  }

  void add() {
    for (Food.Meal meal : food.meals()) {
      draft.item(
          new Provision.Item(
              counted(
                  "meal-" + meal.id(),
                  meal.name(),
                  meal.perPersonDay(),
                  meal.unitMass(),
                  meal.unitVolume(),
                  meal.leaves()),
              "%d for each person and day, as the plan counts them.".formatted(meal.perPersonDay()),
              true));
    }
    BigDecimal rest = food.massPerPersonDay().isPresent() ? restByMass() : restByEnergy();
    if (rest.signum() > 0) {
      ration(rest);
    } else if (!food.meals().isEmpty()) {
      draft.note(
          Note.Code.MEALS_COVER_ENERGY,
          "The counted meals alone give what a person eats on a day.",
          "Raise the day's energy or mass, or take fewer meals, if that is not meant.");
    }
  }

  /** Grams of uncounted food per person and day when its mass is stated. */
  private BigDecimal restByMass() {
    BigDecimal all = grams(food.massPerPersonDay().orElseThrow().milligrams());
    draft.pick("massPerPersonDay", Optional.of(all), all, "g", "");
    BigDecimal meals = BigDecimal.ZERO;
    for (Food.Meal meal : food.meals()) {
      meals = meals.add(eatenGrams(meal).multiply(BigDecimal.valueOf(meal.perPersonDay())));
    }
    return all.subtract(meals);
  }

  /** Grams of uncounted food per person and day from energy. */
  private BigDecimal restByEnergy() {
    Optional<BigDecimal> statedKcal =
        food.kcalPerPersonDay().isPresent()
            ? Optional.of(BigDecimal.valueOf(food.kcalPerPersonDay().getAsInt()))
            : Optional.empty();
    BigDecimal kcal =
        draft.pick(
            "kcalPerPersonDay",
            statedKcal,
            BigDecimal.valueOf(Defaults.KCAL_PER_PERSON_DAY),
            "kcal",
            Defaults.KCAL_SOURCE);
    BigDecimal density = density();
    BigDecimal meals = BigDecimal.ZERO;
    for (Food.Meal meal : food.meals()) {
      BigDecimal unit =
          meal.kcal().isPresent()
              ? BigDecimal.valueOf(meal.kcal().getAsInt())
              : eatenGrams(meal).multiply(density);
      meals = meals.add(unit.multiply(BigDecimal.valueOf(meal.perPersonDay())));
    }
    if (!food.meals().isEmpty()) {
      draft.computed(
          "kcalOfMeals", meals.doubleValue(), "kcal", "units per person and day x their energy");
    }
    BigDecimal rest = kcal.subtract(meals);
    return rest.signum() <= 0 ? BigDecimal.ZERO : rest.divide(density, 6, RoundingMode.HALF_UP);
  }

  private BigDecimal density() {
    if (food.kcalPerGram().isEmpty() && food.mix().isPresent()) {
      BigDecimal density = Atwater.kcalPerGram(food.mix().orElseThrow());
      draft.computed(
          "kcalPerGram",
          density.doubleValue(),
          "kcal/g",
          "general Atwater factors 4, 4 and 9 kcal/g: Merrill and Watt, USDA Agriculture Handbook 74");
      return density;
    }
    return draft.pick(
        "kcalPerGram",
        food.kcalPerGram(),
        Defaults.KCAL_PER_GRAM,
        "kcal/g",
        Defaults.KCAL_PER_GRAM_SOURCE);
  }

  private void ration(BigDecimal restGrams) {
    BigDecimal packaging =
        draft.pick(
            "packagingPerPersonDay",
            food.packagingPerPersonDay().map(m -> grams(m.milligrams())),
            grams(Defaults.PACKAGING_MILLIGRAMS),
            "g",
            Defaults.PACKAGING_SOURCE);
    draft.computed(
        "rationGrams",
        restGrams.doubleValue(),
        "g",
        "what is left for the day / its energy density");
    long eaten = restGrams.setScale(0, RoundingMode.UP).longValueExact() * 1000;
    long wrapping = packaging.movePointRight(3).longValueExact();
    draft.item(
        new Provision.Item(
            counted(
                "ration",
                "Day ration",
                1,
                Mass.ofMilligrams(eaten + wrapping),
                food.volumePerPersonDay(),
                Optional.of(Mass.ofMilligrams(wrapping))),
            "One for each person and day: %s g of food, rounded up, and its packaging."
                .formatted(eaten / 1000),
            true));
  }

  private SharedItem counted(
      String id,
      String name,
      int perDay,
      Mass unitMass,
      Optional<Volume> unitVolume,
      Optional<Mass> leaves) {
    return new SharedItem(
        Provision.ID_PREFIX + id,
        name,
        Optional.empty(),
        List.of(),
        OptionalInt.empty(),
        Optional.empty(),
        food.goesInto(),
        List.of(),
        Optional.of("food"),
        new Form.Counted(
            new Form.Quantity.PerPerson(perDay),
            unitMass,
            MassFrom.ESTIMATE,
            unitVolume,
            Stow.INSIDE,
            Optional.of(
                new Use.UnitsPerDay(
                    new Use.PerDay.FollowsParty(), leaves.orElse(Mass.ofMilligrams(0))))));
  }

  private static BigDecimal eatenGrams(Food.Meal meal) {
    return grams(meal.unitMass().milligrams() - meal.leaves().map(Mass::milligrams).orElse(0L));
  }

  private static BigDecimal grams(long milligrams) {
    return BigDecimal.valueOf(milligrams, 3);
  }
}
