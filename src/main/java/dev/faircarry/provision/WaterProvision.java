package dev.faircarry.provision;

import dev.faircarry.effort.WalkingRule;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.trip.plan.Water;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Rounding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Water between sources: on each day with a stretch, what a person needs on the longest of that
 * day's stretches, in units of at most a bottle, there on that day's morning. Bottles are filled
 * again at every source, so stretches of one day do not add up.
 */
final class WaterProvision {
  private static final int MILLIGRAMS_PER_MILLILITER = 1000;

  private final Water water;
  private final Plan plan;
  private final Party party;
  private final Draft draft;

  WaterProvision(Water water, Plan plan, Party party, Draft draft) {
    this.water = water;
    this.plan = plan;
    this.party = party;
    this.draft = draft;
  }

  void add() {
    if (water.stretches().isEmpty()) {
      return;
    }
    long perHour = perHourMilliliters();
    long camp =
        draft
            .pick(
                "campPerPerson",
                water.campPerPerson().map(v -> BigDecimal.valueOf(v.milliliters())),
                BigDecimal.valueOf(Defaults.CAMP_MILLILITERS),
                "mL",
                Defaults.CAMP_SOURCE)
            .longValueExact();
    long bottle =
        draft
            .pick(
                "bottleCapacity",
                water.bottleCapacity().map(v -> BigDecimal.valueOf(v.milliliters())),
                BigDecimal.valueOf(Defaults.BOTTLE_MILLILITERS),
                "mL",
                Defaults.BOTTLE_SOURCE)
            .longValueExact();
    Map<Integer, Long> byDay = new TreeMap<>();
    for (Water.Stretch stretch : water.stretches()) {
      long needed = Rounding.up(minutes(stretch) * perHour, 60) + (stretch.dryCamp() ? camp : 0);
      byDay.merge(stretch.day(), needed, Math::max);
    }
    long missing = 0;
    int bottles = bottlesPerPerson();
    for (Map.Entry<Integer, Long> entry : byDay.entrySet()) {
      if (party.on(entry.getKey()) > 0 && entry.getValue() > 0) {
        long units = carry(entry.getKey(), entry.getValue(), bottle);
        missing = Math.max(missing, (units - bottles) * party.on(entry.getKey()));
      }
    }
    if (missing > 0) {
      lend(missing, bottle);
    }
  }

  /** Adds a day's water; answers how many bottles of it each person has. */
  private long carry(int day, long milliliters, long bottle) {
    long units = Rounding.up(milliliters, bottle);
    long unit = Rounding.up(milliliters, units);
    draft.computed(
        "waterPerPerson, day " + day,
        (double) milliliters,
        "mL",
        "walking time x water an hour, and the night if it is dry");
    draft.item(
        new Provision.Item(
            new SharedItem(
                Provision.ID_PREFIX + "water-" + day,
                "Water, day " + day,
                Optional.empty(),
                List.of("water"),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(day),
                Optional.of("water"),
                new Form.Counted(
                    new Form.Quantity.PerPerson(Math.toIntExact(units)),
                    Mass.ofMilligrams(unit * MILLIGRAMS_PER_MILLILITER),
                    MassFrom.ESTIMATE,
                    Optional.empty(),
                    Stow.AT_HAND,
                    Optional.empty())),
            "%d mL for each person there, in %d of %d mL; full on that morning, bottles counted in own kit."
                .formatted(milliliters, units, unit),
            true));
    return units;
  }

  private void lend(long missing, long bottle) {
    long each =
        draft
            .pick(
                "bottleMass",
                water.bottleMass().map(m -> BigDecimal.valueOf(m.milligrams(), 3)),
                BigDecimal.valueOf(Defaults.BOTTLE_MILLIGRAMS, 3),
                "g",
                Defaults.BOTTLE_MASS_SOURCE)
            .movePointRight(3)
            .longValueExact();
    draft.note(
        Note.Code.BOTTLES_MISSING,
        "The driest day needs %d more bottles of %d mL than the group has."
            .formatted(missing, bottle),
        "Bring them: they are among the items, empty, as base weight.");
    draft.item(
        new Provision.Item(
            new SharedItem(
                Provision.ID_PREFIX + "bottle",
                "Spare water bottle, empty",
                Optional.empty(),
                List.of(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.of("water"),
                new Form.Counted(
                    new Form.Quantity.Fixed(Math.toIntExact(missing)),
                    Mass.ofMilligrams(each),
                    MassFrom.ESTIMATE,
                    Optional.empty(),
                    Stow.AT_HAND,
                    Optional.empty())),
            "What the driest day needs beyond the bottles at hand.",
            false));
  }

  private int bottlesPerPerson() {
    return draft
        .pick(
            "bottlesPerPerson",
            water.bottlesPerPerson().isPresent()
                ? Optional.of(BigDecimal.valueOf(water.bottlesPerPerson().getAsInt()))
                : Optional.empty(),
            BigDecimal.valueOf(Defaults.BOTTLES),
            "",
            Defaults.BOTTLES_SOURCE)
        .intValueExact();
  }

  private long perHourMilliliters() {
    Optional<BigDecimal> stated = water.perHour().map(v -> BigDecimal.valueOf(v.milliliters()));
    BigDecimal habit = BigDecimal.ZERO;
    if (stated.isEmpty()) {
      BigDecimal celsius =
          draft.pick(
              "temperature",
              water.temperature().map(t -> BigDecimal.valueOf(t.millicelsius(), 3)),
              Defaults.AIR_CELSIUS,
              "°C",
              Defaults.AIR_SOURCE);
      habit = BigDecimal.valueOf(habitMilliliters(celsius.doubleValue()));
    }
    return draft
        .pick("perHour", stated, habit, "mL/h", Defaults.WATER_HABIT_SOURCE)
        .longValueExact();
  }

  /** What a person drinks in an hour on the way, by the temperature of the air. Common practice. */
  static int habitMilliliters(double celsius) {
    if (celsius < 15) {
      return 400;
    }
    if (celsius <= 25) {
      return 500;
    }
    return celsius <= 30 ? 750 : 1000;
  }

  private long minutes(Water.Stretch stretch) {
    if (stretch.walkingMinutes().isPresent()) {
      return stretch.walkingMinutes().getAsInt();
    }
    Optional<RouteDay> route = plan.routeOn(stretch.day());
    double minutes = route.map(r -> WalkingRule.NAISMITH_LANGMUIR.hours(r) * 60).orElse(0.0);
    if (route.isPresent()) {
      draft.computed(
          "walkingMinutes, day " + stretch.day(),
          minutes,
          "min",
          WalkingRule.NAISMITH_LANGMUIR.source());
    } else {
      draft.note(
          Note.Code.WALKING_TIME_ASSUMED,
          "Day %d has a stretch of no stated length and no route: only the night is counted."
              .formatted(stretch.day()),
          "State walkingMinutes for the stretch, or the route of the day.");
    }
    return (long) Math.ceil(minutes);
  }
}
