package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Goals;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.PlanLimits;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.trip.plan.Water;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Lists what is wrong with the plan of a trip. */
final class PlanIssues {
  private static final BigDecimal LEAST_PACE =
      BigDecimal.valueOf(PlanLimits.MIN_METERS_PER_HOUR, 3);
  private static final BigDecimal MOST_PACE = BigDecimal.valueOf(PlanLimits.MAX_METERS_PER_HOUR, 3);
  private static final BigDecimal LEAST_DENSITY = new BigDecimal("0.1");

  private final Trip trip;
  private final PlanRanges ranges;

  private PlanIssues(Trip trip, PlanRanges ranges) {
    this.trip = trip;
    this.ranges = ranges;
  }

  static void find(Trip trip, Plan plan, Ranges ranges) {
    Pointer at = Pointer.ROOT.at("plan");
    PlanIssues issues = new PlanIssues(trip, new PlanRanges(ranges));
    issues.route(plan.route(), at.at("route"));
    plan.food().ifPresent(food -> issues.food(food, at.at("food")));
    plan.fuel().ifPresent(fuel -> issues.fuel(fuel, at.at("fuel")));
    plan.water().ifPresent(water -> issues.water(water, at.at("water")));
    plan.goals().ifPresent(goals -> issues.goals(goals, at.at("goals")));
    plan.taking()
        .ifPresent(taking -> new TakingIssues(trip, issues.ranges).find(taking, at.at("taking")));
  }

  private void day(Pointer at, int day) {
    if (trip.days() >= 1 && trip.days() <= Limits.DAYS) {
      HikerIssues.day(at, day, trip.days(), ranges.ranges().issues());
    }
  }

  private void route(List<RouteDay> route, Pointer at) {
    Set<Integer> seen = new HashSet<>();
    for (int i = 0; i < route.size(); i++) {
      RouteDay day = route.get(i);
      Pointer here = at.at(i);
      day(here.at("day"), day.day());
      if (!seen.add(day.day())) {
        ranges
            .ranges()
            .issues()
            .add(
                IssueCode.DUPLICATE_NAME,
                here.at("day"),
                String.valueOf(day.day()),
                "Day " + day.day() + " is stated twice.");
      }
      ranges.length(here.at("distance"), day.distance(), 1000, PlanLimits.DAY_DISTANCE_MILLIMETERS);
      ranges.length(here.at("climb"), day.climb(), 0, PlanLimits.DAY_CLIMB_MILLIMETERS);
      ranges.length(here.at("descent"), day.descent(), 0, PlanLimits.DAY_CLIMB_MILLIMETERS);
      descents(day, here);
      ranges.decimal(here.at("kmPerHour"), day.kmPerHour(), LEAST_PACE, MOST_PACE);
      ranges.height(here.at("campHeight"), day.campHeight());
    }
  }

  private void descents(RouteDay day, Pointer at) {
    long gentle = day.gentleDescent().map(l -> l.millimeters()).orElse(0L);
    long steep = day.steepDescent().map(l -> l.millimeters()).orElse(0L);
    if (gentle + steep > day.descent().millimeters()) {
      ranges
          .ranges()
          .issues()
          .add(
              IssueCode.CONTRADICTION,
              at.at("descent"),
              day.descent().entered(),
              "Gentle and steep descent together are more than the whole descent.",
              "Correct \"gentleDescent\", \"steepDescent\" or \"descent\".");
    }
  }

  private void food(Food food, Pointer at) {
    ranges.number(
        at.at("kcalPerPersonDay"), food.kcalPerPersonDay(), 1, PlanLimits.MAX_KCAL_PER_PERSON_DAY);
    ranges.decimal(
        at.at("kcalPerGram"),
        food.kcalPerGram(),
        LEAST_DENSITY,
        BigDecimal.valueOf(PlanLimits.MAX_KCAL_PER_GRAM));
    food.mix().ifPresent(mix -> mix(mix, at.at("mix")));
    ranges.mass(at.at("massPerPersonDay"), food.massPerPersonDay());
    ranges.mass(at.at("packagingPerPersonDay"), food.packagingPerPersonDay());
    ranges.ranges().volume(at.at("volumePerPersonDay"), food.volumePerPersonDay());
    food.goesInto().ifPresent(kind -> ranges.ranges().word(at.at("goesInto"), kind));
    Pointer meals = at.at("meals");
    ranges.ranges().uniqueIds(meals, TripIssues.ids(food.meals(), Food.Meal::id), "meal");
    for (int i = 0; i < food.meals().size(); i++) {
      Food.Meal meal = food.meals().get(i);
      Pointer here = meals.at(i);
      provisionId(here.at("id"), meal.id());
      ranges.ranges().name(here.at("name"), meal.name());
      ranges
          .ranges()
          .number(here.at("perPersonDay"), meal.perPersonDay(), 1, PlanLimits.UNITS_PER_PERSON_DAY);
      ranges.ranges().itemMass(here.at("unitMass"), meal.unitMass());
      ranges.ranges().volume(here.at("unitVolume"), meal.unitVolume());
      ranges.number(here.at("kcal"), meal.kcal(), 0, PlanLimits.MAX_KCAL_PER_PERSON_DAY);
      ranges.leaves(here, meal.leaves(), meal.unitMass());
    }
  }

  private void mix(Food.Mix mix, Pointer at) {
    long parts =
        mix.carbohydrate().milligrams() + mix.protein().milligrams() + mix.fat().milligrams();
    if (parts <= 0 || parts > mix.per().milligrams()) {
      ranges
          .ranges()
          .issues()
          .add(
              IssueCode.CONTRADICTION,
              at.at("per"),
              mix.per().entered(),
              "Carbohydrate, protein and fat together are nothing, or more than what they are of.",
              "State how much of each is in \"per\" of the food.");
    }
  }

  private void fuel(Fuel fuel, Pointer at) {
    ranges.decimal(
        at.at("megajoulesPerKilogram"),
        fuel.megajoulesPerKilogram(),
        BigDecimal.ONE,
        BigDecimal.valueOf(PlanLimits.MAX_MEGAJOULES_PER_KILOGRAM));
    ranges.volume(
        at.at("boiledPerPersonDay"),
        fuel.boiledPerPersonDay(),
        0,
        PlanLimits.WATER_PER_PERSON_MILLILITERS);
    ranges.temperature(
        at.at("startTemperature"), fuel.startTemperature(), 0, PlanLimits.MAX_WATER_MILLICELSIUS);
    ranges.height(at.at("height"), fuel.height());
    ranges.fraction(
        at.at("efficiency"),
        fuel.efficiency(),
        PlanLimits.MIN_EFFICIENCY_MILLIONTHS,
        PlanLimits.MAX_EFFICIENCY_MILLIONTHS);
    fuel.snow()
        .ifPresent(
            snow -> {
              ranges.fraction(at.at("snow").at("share"), Optional.of(snow.share()), 0, 1_000_000);
              ranges.temperature(
                  at.at("snow").at("temperature"),
                  Optional.of(snow.temperature()),
                  PlanLimits.MIN_AIR_MILLICELSIUS,
                  0);
            });
    fuel.simmer()
        .ifPresent(
            simmer -> {
              ranges
                  .ranges()
                  .number(
                      at.at("simmer").at("minutesPerDay"),
                      simmer.minutesPerDay(),
                      0,
                      PlanLimits.MINUTES_PER_DAY);
              ranges.number(
                  at.at("simmer").at("watts"), simmer.watts(), 1, PlanLimits.MAX_SIMMER_WATTS);
            });
    ranges.fraction(at.at("spare"), fuel.spare(), 0, PlanLimits.MAX_SPARE_MILLIONTHS);
    containers(fuel.containers(), at.at("containers"));
  }

  private void containers(List<Fuel.Container> containers, Pointer at) {
    ranges.ranges().uniqueIds(at, TripIssues.ids(containers, Fuel.Container::id), "container");
    for (int i = 0; i < containers.size(); i++) {
      Fuel.Container container = containers.get(i);
      Pointer here = at.at(i);
      provisionId(here.at("id"), container.id());
      ranges.ranges().name(here.at("name"), container.name());
      if (container.fuel().milligrams() < PlanLimits.MIN_CONTAINER_FUEL_MILLIGRAMS) {
        ranges.outside(here.at("fuel"), container.fuel().entered(), "mass", "1 g to 200000 g");
      }
      ranges.ranges().itemMass(here.at("fuel"), container.fuel());
      ranges.ranges().itemMass(here.at("emptyMass"), container.emptyMass());
      ranges.ranges().volume(here.at("volume"), container.volume());
    }
  }

  private void water(Water water, Pointer at) {
    ranges.volume(at.at("perHour"), water.perHour(), 0, PlanLimits.WATER_PER_PERSON_MILLILITERS);
    ranges.temperature(
        at.at("temperature"),
        water.temperature(),
        PlanLimits.MIN_AIR_MILLICELSIUS,
        PlanLimits.MAX_AIR_MILLICELSIUS);
    ranges.volume(
        at.at("campPerPerson"), water.campPerPerson(), 0, PlanLimits.WATER_PER_PERSON_MILLILITERS);
    ranges.volume(
        at.at("bottleCapacity"),
        water.bottleCapacity(),
        PlanLimits.MIN_BOTTLE_MILLILITERS,
        PlanLimits.WATER_PER_PERSON_MILLILITERS);
    ranges.number(
        at.at("bottlesPerPerson"), water.bottlesPerPerson(), 0, PlanLimits.BOTTLES_PER_PERSON);
    ranges.mass(at.at("bottleMass"), water.bottleMass());
    for (int i = 0; i < water.stretches().size(); i++) {
      Water.Stretch stretch = water.stretches().get(i);
      Pointer here = at.at("stretches").at(i);
      day(here.at("day"), stretch.day());
      ranges.number(
          here.at("walkingMinutes"), stretch.walkingMinutes(), 0, PlanLimits.MINUTES_PER_DAY);
    }
  }

  private void goals(Goals goals, Pointer at) {
    ranges.mass(at.at("baseMass"), goals.baseMass());
    Set<String> hikers = new HashSet<>(TripIssues.ids(trip.hikers(), Hiker::id));
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < goals.hikers().size(); i++) {
      Goals.OfHiker own = goals.hikers().get(i);
      Pointer here = at.at("hikers").at(i).at("hiker");
      if (!hikers.contains(own.hiker())) {
        unknownHiker(ranges, here, own.hiker());
      } else if (!seen.add(own.hiker())) {
        ranges
            .ranges()
            .issues()
            .add(IssueCode.DUPLICATE_NAME, here, own.hiker(), "The hiker has goals twice.");
      }
      ranges.mass(at.at("hikers").at(i).at("baseMass"), own.baseMass());
    }
  }

  static void unknownHiker(PlanRanges ranges, Pointer at, String hiker) {
    ranges
        .ranges()
        .issues()
        .add(
            IssueCode.UNKNOWN_HIKER,
            at,
            hiker,
            "The trip has no hiker \"" + Issues.shortened(hiker) + "\".");
  }

  private void provisionId(Pointer at, String id) {
    ranges.ranges().id(at, id);
    if (id.length() > PlanLimits.PROVISION_ID_LENGTH) {
      ranges
          .ranges()
          .issues()
          .add(
              IssueCode.TEXT_TOO_LONG,
              at,
              id,
              "The id is longer than " + PlanLimits.PROVISION_ID_LENGTH + " characters.");
    }
  }
}
