package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Goals;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.PlanLimits;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.trip.plan.Surface;
import dev.faircarry.trip.plan.Water;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** Reads the plan of a trip: route, food, fuel, water and goals. */
final class PlanReader {
  private PlanReader() {}

  static Plan read(Entry entry) {
    Plan plan =
        new Plan(
            each(entry, "route", Limits.DAYS, (day, ids) -> route(day)),
            entry.child("food").map(PlanReader::food),
            entry.child("fuel").map(PlanReader::fuel),
            entry.child("water").map(PlanReader::water),
            entry.child("goals").map(PlanReader::goals),
            entry.child("taking").map(TakingReader::read));
    entry.done();
    return plan;
  }

  /**
   * Reads a list of objects; what is no object is noted and left out, and the rest is read all the
   * same.
   */
  static <T> List<T> each(Entry entry, String field, int most, BiFunction<Entry, Ids, T> read) {
    List<JsonNode> values = entry.list(field, most).orElse(List.of());
    Ids ids = new Ids(field.substring(0, 1), values);
    List<T> all = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Entry.of(values.get(i), entry.at().at(field).at(i), entry.issues())
          .map(e -> read.apply(e, ids))
          .ifPresent(all::add);
    }
    return all;
  }

  private static RouteDay route(Entry entry) {
    RouteDay day =
        new RouteDay(
            entry.neededWhole("day", 1),
            Quantities.length(entry, "distance")
                .orElseGet(() -> entry.missing("distance", Quantities.NO_LENGTH)),
            Quantities.length(entry, "climb").orElse(Quantities.NO_LENGTH),
            Quantities.length(entry, "descent").orElse(Quantities.NO_LENGTH),
            Quantities.length(entry, "gentleDescent"),
            Quantities.length(entry, "steepDescent"),
            entry.word("surface", Words.SURFACE, Surface.DIRT_ROAD).orElse(Surface.DIRT_ROAD),
            Quantities.decimal(entry, "kmPerHour"),
            Quantities.height(entry, "campHeight"));
    entry.done();
    return day;
  }

  private static Food food(Entry entry) {
    Food food =
        new Food(
            entry.whole("kcalPerPersonDay", 1),
            Quantities.decimal(entry, "kcalPerGram"),
            entry.child("mix").map(PlanReader::mix),
            Quantities.mass(entry, "massPerPersonDay"),
            Quantities.mass(entry, "packagingPerPersonDay"),
            Quantities.volume(entry, "volumePerPersonDay"),
            entry.text("goesInto"),
            each(entry, "meals", PlanLimits.MEALS, PlanReader::meal));
    entry.done();
    return food;
  }

  private static Food.Mix mix(Entry entry) {
    Food.Mix mix =
        new Food.Mix(
            Quantities.neededMass(entry, "carbohydrate"),
            Quantities.neededMass(entry, "protein"),
            Quantities.neededMass(entry, "fat"),
            Quantities.neededMass(entry, "per"));
    entry.done();
    return mix;
  }

  private static Food.Meal meal(Entry entry, Ids ids) {
    String id = ids.of(entry);
    Food.Meal meal =
        new Food.Meal(
            id,
            Names.of(entry, id),
            entry.whole("perPersonDay", 1).orElse(1),
            Quantities.neededMass(entry, "unitMass"),
            Quantities.volume(entry, "unitVolume"),
            entry.whole("kcal", 0),
            Quantities.mass(entry, "leaves"));
    entry.done();
    return meal;
  }

  private static Fuel fuel(Entry entry) {
    Fuel fuel =
        new Fuel(
            entry.word("kind", Words.FUEL, Fuel.Kind.GAS),
            Quantities.decimal(entry, "megajoulesPerKilogram"),
            Quantities.volume(entry, "boiledPerPersonDay"),
            Quantities.temperature(entry, "startTemperature"),
            Quantities.height(entry, "height"),
            Quantities.share(entry, "efficiency"),
            entry.child("snow").map(PlanReader::snow),
            entry.child("simmer").map(PlanReader::simmer),
            Quantities.share(entry, "spare"),
            each(entry, "containers", PlanLimits.CONTAINERS, PlanReader::container));
    entry.done();
    return fuel;
  }

  private static Fuel.Snow snow(Entry entry) {
    Fuel.Snow snow =
        new Fuel.Snow(
            Quantities.share(entry, "share").orElse(Fraction.of("1")),
            Quantities.temperature(entry, "temperature").orElse(new Temperature("0 °C", 0)));
    entry.done();
    return snow;
  }

  private static Fuel.Simmer simmer(Entry entry) {
    Fuel.Simmer simmer =
        new Fuel.Simmer(entry.neededWhole("minutesPerDay", 0), entry.whole("watts", 1));
    entry.done();
    return simmer;
  }

  private static Fuel.Container container(Entry entry, Ids ids) {
    String id = ids.of(entry);
    Fuel.Container container =
        new Fuel.Container(
            id,
            Names.of(entry, id),
            Quantities.neededMass(entry, "fuel"),
            Quantities.neededMass(entry, "emptyMass"),
            Quantities.volume(entry, "volume"),
            entry.flag("refillable"));
    entry.done();
    return container;
  }

  private static Water water(Entry entry) {
    Water water =
        new Water(
            Quantities.volume(entry, "perHour"),
            Quantities.temperature(entry, "temperature"),
            Quantities.volume(entry, "campPerPerson"),
            Quantities.volume(entry, "bottleCapacity"),
            entry.whole("bottlesPerPerson", 0),
            Quantities.mass(entry, "bottleMass"),
            each(entry, "stretches", PlanLimits.STRETCHES, (s, ids) -> stretch(s)));
    entry.done();
    return water;
  }

  private static Water.Stretch stretch(Entry entry) {
    Water.Stretch stretch =
        new Water.Stretch(
            entry.neededWhole("day", 1), entry.whole("walkingMinutes", 0), entry.flag("dryCamp"));
    entry.done();
    return stretch;
  }

  private static Goals goals(Entry entry) {
    Goals goals =
        new Goals(
            Quantities.mass(entry, "baseMass"),
            Quantities.cost(entry, "spending"),
            each(entry, "hikers", Limits.HIKERS, (hiker, ids) -> own(hiker)));
    entry.done();
    return goals;
  }

  private static Goals.OfHiker own(Entry entry) {
    Goals.OfHiker own =
        new Goals.OfHiker(
            entry.neededText("hiker"),
            Quantities.mass(entry, "baseMass"),
            Quantities.cost(entry, "spending"));
    entry.done();
    return own;
  }
}
