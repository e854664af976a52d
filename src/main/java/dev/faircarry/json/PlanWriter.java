package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.trip.plan.Amount;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Goals;
import dev.faircarry.trip.plan.Need;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.trip.plan.Taking;
import dev.faircarry.trip.plan.Water;
import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Length;
import dev.faircarry.unit.Temperature;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Writes the plan of a trip; what the plan leaves empty is left out. */
final class PlanWriter {
  private PlanWriter() {}

  static ObjectNode plan(Plan plan) {
    ObjectNode out = TripWriter.object();
    each(out, "route", plan.route(), PlanWriter::route);
    plan.food().ifPresent(food -> out.set("food", food(food)));
    plan.fuel().ifPresent(fuel -> out.set("fuel", fuel(fuel)));
    plan.water().ifPresent(water -> out.set("water", water(water)));
    plan.goals().ifPresent(goals -> out.set("goals", goals(goals)));
    plan.taking().ifPresent(taking -> out.set("taking", taking(taking)));
    return out;
  }

  private static ObjectNode route(RouteDay day) {
    ObjectNode out = TripWriter.object();
    out.put("day", day.day());
    out.put("distance", day.distance().entered());
    out.put("climb", day.climb().entered());
    out.put("descent", day.descent().entered());
    length(out, "gentleDescent", day.gentleDescent());
    length(out, "steepDescent", day.steepDescent());
    out.put("surface", day.surface().text());
    decimal(out, "kmPerHour", day.kmPerHour());
    length(out, "campHeight", day.campHeight());
    return out;
  }

  private static ObjectNode food(Food food) {
    ObjectNode out = TripWriter.object();
    TripWriter.number(out, "kcalPerPersonDay", food.kcalPerPersonDay());
    decimal(out, "kcalPerGram", food.kcalPerGram());
    food.mix()
        .ifPresent(
            mix -> {
              ObjectNode inner = out.putObject("mix");
              inner.put("carbohydrate", mix.carbohydrate().entered());
              inner.put("protein", mix.protein().entered());
              inner.put("fat", mix.fat().entered());
              inner.put("per", mix.per().entered());
            });
    TripWriter.mass(out, "massPerPersonDay", food.massPerPersonDay());
    TripWriter.mass(out, "packagingPerPersonDay", food.packagingPerPersonDay());
    TripWriter.volume(out, "volumePerPersonDay", food.volumePerPersonDay());
    food.goesInto().ifPresent(kind -> out.put("goesInto", kind));
    each(out, "meals", food.meals(), PlanWriter::meal);
    return out;
  }

  private static ObjectNode meal(Food.Meal meal) {
    ObjectNode out = TripWriter.named(meal.id(), meal.name());
    out.put("perPersonDay", meal.perPersonDay());
    out.put("unitMass", meal.unitMass().entered());
    TripWriter.volume(out, "unitVolume", meal.unitVolume());
    TripWriter.number(out, "kcal", meal.kcal());
    TripWriter.mass(out, "leaves", meal.leaves());
    return out;
  }

  private static ObjectNode fuel(Fuel fuel) {
    ObjectNode out = TripWriter.object();
    fuel.kind().ifPresent(kind -> out.put("kind", kind.text()));
    decimal(out, "megajoulesPerKilogram", fuel.megajoulesPerKilogram());
    TripWriter.volume(out, "boiledPerPersonDay", fuel.boiledPerPersonDay());
    temperature(out, "startTemperature", fuel.startTemperature());
    length(out, "height", fuel.height());
    TripWriter.fraction(out, "efficiency", fuel.efficiency());
    fuel.snow()
        .ifPresent(
            snow -> {
              ObjectNode inner = out.putObject("snow");
              inner.put("share", snow.share().entered());
              inner.put("temperature", snow.temperature().entered());
            });
    fuel.simmer()
        .ifPresent(
            simmer -> {
              ObjectNode inner = out.putObject("simmer");
              inner.put("minutesPerDay", simmer.minutesPerDay());
              TripWriter.number(inner, "watts", simmer.watts());
            });
    TripWriter.fraction(out, "spare", fuel.spare());
    each(out, "containers", fuel.containers(), PlanWriter::container);
    return out;
  }

  private static ObjectNode container(Fuel.Container container) {
    ObjectNode out = TripWriter.named(container.id(), container.name());
    out.put("fuel", container.fuel().entered());
    out.put("emptyMass", container.emptyMass().entered());
    TripWriter.volume(out, "volume", container.volume());
    TripWriter.flag(out, "refillable", container.refillable());
    return out;
  }

  private static ObjectNode water(Water water) {
    ObjectNode out = TripWriter.object();
    TripWriter.volume(out, "perHour", water.perHour());
    temperature(out, "temperature", water.temperature());
    TripWriter.volume(out, "campPerPerson", water.campPerPerson());
    TripWriter.volume(out, "bottleCapacity", water.bottleCapacity());
    TripWriter.number(out, "bottlesPerPerson", water.bottlesPerPerson());
    TripWriter.mass(out, "bottleMass", water.bottleMass());
    each(
        out,
        "stretches",
        water.stretches(),
        stretch -> {
          ObjectNode inner = TripWriter.object();
          inner.put("day", stretch.day());
          TripWriter.number(inner, "walkingMinutes", stretch.walkingMinutes());
          TripWriter.flag(inner, "dryCamp", stretch.dryCamp());
          return inner;
        });
    return out;
  }

  private static ObjectNode goals(Goals goals) {
    ObjectNode out = TripWriter.object();
    TripWriter.mass(out, "baseMass", goals.baseMass());
    cost(out, "spending", goals.spending());
    each(
        out,
        "hikers",
        goals.hikers(),
        own -> {
          ObjectNode inner = TripWriter.object();
          inner.put("hiker", own.hiker());
          TripWriter.mass(inner, "baseMass", own.baseMass());
          cost(inner, "spending", own.spending());
          return inner;
        });
    return out;
  }

  private static ObjectNode taking(Taking taking) {
    ObjectNode out = TripWriter.object();
    each(out, "needs", taking.needs(), PlanWriter::need);
    each(out, "offers", taking.offers(), PlanWriter::offer);
    cost(out, "budget", taking.budget());
    TripWriter.texts(out, "keep", taking.keep());
    return out;
  }

  private static ObjectNode need(Need need) {
    ObjectNode out = TripWriter.object();
    out.put("covers", need.covers());
    amount(out, "atLeast", need.atLeast());
    TripWriter.number(out, "perParty", need.perParty());
    return out;
  }

  private static ObjectNode offer(Offer offer) {
    ObjectNode out = TripWriter.named(offer.id(), offer.name());
    out.put("mass", offer.mass().entered());
    TripWriter.massFrom(out, offer.massFrom());
    TripWriter.volume(out, "volume", offer.volume());
    cost(out, "price", offer.price());
    out.put("available", offer.available());
    offer.owner().ifPresent(id -> out.put("owner", id));
    offer.forHiker().ifPresent(id -> out.put("forHiker", id));
    TripWriter.stow(out, offer.stow());
    each(out, "covers", offer.covers(), PlanWriter::cover);
    each(out, "requires", offer.requires(), PlanWriter::cover);
    TripWriter.texts(out, "makesUnnecessary", offer.makesUnnecessary());
    TripWriter.contains(out, offer.contains());
    return out;
  }

  private static ObjectNode cover(Offer.Cover cover) {
    ObjectNode out = TripWriter.object();
    out.put("need", cover.need());
    amount(out, "amount", cover.amount());
    return out;
  }

  private static void amount(ObjectNode out, String field, Amount amount) {
    if (amount instanceof Amount.Count count) {
      out.put(field, count.count());
    } else {
      out.put(field, ((Amount.Room) amount).volume().entered());
    }
  }

  private static <T> void each(
      ObjectNode out, String field, List<T> values, Function<T, ObjectNode> write) {
    if (!values.isEmpty()) {
      ArrayNode list = out.putArray(field);
      values.forEach(value -> list.add(write.apply(value)));
    }
  }

  private static void length(ObjectNode out, String field, Optional<Length> length) {
    length.ifPresent(l -> out.put(field, l.entered()));
  }

  private static void temperature(ObjectNode out, String field, Optional<Temperature> temperature) {
    temperature.ifPresent(t -> out.put(field, t.entered()));
  }

  private static void cost(ObjectNode out, String field, Optional<Cost> cost) {
    cost.ifPresent(c -> out.put(field, c.entered()));
  }

  private static void decimal(ObjectNode out, String field, Optional<BigDecimal> number) {
    number.ifPresent(n -> out.put(field, n));
  }
}
