package dev.faircarry.provision;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Use;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.RouteDay;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.MassText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Fuel: heat for the water of every day at that day's camp, to grams, to whole cartridges or
 * bottles.
 */
final class FuelProvision {
  private final Fuel fuel;
  private final Plan plan;
  private final Party party;
  private final Draft draft;

  FuelProvision(Fuel fuel, Plan plan, Party party, Draft draft) {
    this.fuel = fuel;
    this.plan = plan;
    this.party = party;
    this.draft = draft;
  }

  void add() {
    Fuel.Kind kind = fuel.kind().orElse(Fuel.Kind.GAS);
    BigDecimal heatingValue =
        draft.pick(
            "megajoulesPerKilogram",
            fuel.megajoulesPerKilogram(),
            Defaults.megajoulesPerKilogram(kind),
            "MJ/kg",
            Defaults.heatingValueSource(kind));
    BigDecimal efficiency =
        draft.pick(
            "efficiency",
            fuel.efficiency().map(f -> f.entered()),
            Defaults.EFFICIENCY,
            "",
            Defaults.EFFICIENCY_SOURCE);
    double kilojoules = heat();
    draft.computed(
        "heatKilojoules",
        kilojoules,
        "kJ",
        "water: 4.186 kJ/(kg K), a litre a kilogram; every day at its camp's boiling point");
    double needed =
        Heat.fuelGrams(kilojoules, heatingValue.doubleValue(), efficiency.doubleValue());
    draft.computed("fuelGrams", needed, "g", "heat / (heating value x efficiency)");
    BigDecimal spare =
        draft.pick(
            "spare", fuel.spare().map(f -> f.entered()), Defaults.SPARE, "", Defaults.SPARE_SOURCE);
    double withSpare = needed * (1 + spare.doubleValue());
    draft.computed("fuelGramsWithSpare", withSpare, "g", "fuel x (1 + spare)");
    fill(kind, needed, withSpare);
  }

  /** Heat for the whole trip in kJ. */
  private double heat() {
    double liters =
        draft
            .pick(
                "boiledPerPersonDay",
                fuel.boiledPerPersonDay().map(v -> BigDecimal.valueOf(v.milliliters(), 3)),
                Defaults.BOILED_LITERS,
                "L",
                Defaults.BOILED_SOURCE)
            .doubleValue();
    double startCelsius =
        draft
            .pick(
                "startTemperature",
                fuel.startTemperature().map(t -> BigDecimal.valueOf(t.millicelsius(), 3)),
                Defaults.WATER_CELSIUS,
                "°C",
                Defaults.WATER_CELSIUS_SOURCE)
            .doubleValue();
    double snowShare = fuel.snow().map(s -> s.share().entered().doubleValue()).orElse(0.0);
    double snowCelsius = fuel.snow().map(s -> s.temperature().millicelsius() / 1e3).orElse(0.0);
    if (fuel.snow().isPresent()) {
      draft.pick(
          "snow.share",
          Optional.of(fuel.snow().orElseThrow().share().entered()),
          BigDecimal.ZERO,
          "",
          "");
      draft.computed(
          "meltingKilojoulesPerLiter",
          Heat.meltSnow(1, snowCelsius, 0),
          "kJ/L",
          "ice 2.09 kJ/(kg K), heat of fusion 333.55 kJ/kg (CRC Handbook of Chemistry and Physics, from memory)");
    }
    double sum = 0;
    for (int day = 1; day <= party.days(); day++) {
      double boiling = boilingCelsius(day);
      double dayLiters = liters * party.on(day);
      sum += Heat.heatWater(dayLiters * (1 - snowShare), startCelsius, boiling);
      if (snowShare > 0) {
        sum += Heat.meltSnow(dayLiters * snowShare, snowCelsius, boiling);
      }
      sum += simmerKilojoules(day);
    }
    return sum;
  }

  private double boilingCelsius(int day) {
    Optional<Long> camp = plan.routeOn(day).flatMap(RouteDay::campHeight).map(h -> h.millimeters());
    Optional<BigDecimal> given =
        fuel.height().map(h -> h.millimeters()).or(() -> camp).map(mm -> BigDecimal.valueOf(mm, 3));
    boolean once = camp.isEmpty() || fuel.height().isPresent();
    BigDecimal meters = given.orElse(Defaults.HEIGHT_METERS);
    double celsius = BoilingPoint.celsius(meters.doubleValue());
    if (day == 1 || !once) {
      String name = once ? "height" : "campHeight, day " + day;
      draft.pick(name, given, Defaults.HEIGHT_METERS, "m", Defaults.HEIGHT_SOURCE);
      draft.computed(
          once ? "boilingPoint" : "boilingPoint, day " + day,
          celsius,
          "°C",
          "standard atmosphere (ISO 2533) with IAPWS-IF97 equation 31");
    }
    return celsius;
  }

  private double simmerKilojoules(int day) {
    if (fuel.simmer().isEmpty() || party.on(day) == 0) {
      return 0;
    }
    Fuel.Simmer simmer = fuel.simmer().orElseThrow();
    if (day == 1) {
      draft.pick(
          "simmer.watts",
          simmer.watts().isPresent()
              ? Optional.of(BigDecimal.valueOf(simmer.watts().getAsInt()))
              : Optional.empty(),
          BigDecimal.valueOf(Defaults.SIMMER_WATTS),
          "W",
          Defaults.SIMMER_SOURCE);
    }
    return simmer.minutesPerDay() * 60.0 * simmer.watts().orElse(Defaults.SIMMER_WATTS) / 1000;
  }

  private void fill(Fuel.Kind kind, double needed, double withSpare) {
    long neededGrams = (long) Math.ceil(withSpare);
    if (neededGrams <= 0) {
      draft.note(
          Note.Code.NO_FUEL_NEEDED,
          "Nothing is heated, so no fuel is needed.",
          "State what is boiled if that is not meant.");
      return;
    }
    if (neededGrams > ContainerChoice.MAX_GRAMS) {
      draft.note(
          Note.Code.TOO_MUCH_FUEL,
          "More than %d kg of fuel would be needed, more than is planned here."
              .formatted(ContainerChoice.MAX_GRAMS / 1000),
          "Check litres per person and day, efficiency and heating value; plan a long trip in parts.");
      return;
    }
    List<Fuel.Container> containers =
        fuel.containers().isEmpty() ? Defaults.containers(kind) : fuel.containers();
    int[] counts = ContainerChoice.choose(containers, neededGrams);
    long capacity = 0;
    for (int i = 0; i < counts.length; i++) {
      capacity += counts[i] * containers.get(i).fuel().milligrams();
    }
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        draft.item(item(containers.get(i), counts[i], capacity, needed, withSpare));
      }
    }
    if (fuel.containers().isEmpty()) {
      draft.pick(
          "containers",
          Optional.empty(),
          BigDecimal.valueOf(containers.size()),
          "sizes",
          Defaults.CONTAINERS_SOURCE);
    }
  }

  /** Every container gives its share of what is needed; what it keeps beyond that is the spare. */
  private Provision.Item item(
      Fuel.Container container,
      int count,
      long capacityMilligrams,
      double neededGrams,
      double withSpareGrams) {
    double share = (double) container.fuel().milligrams() / capacityMilligrams;
    long filled =
        container.refillable()
            ? Math.min(container.fuel().milligrams(), wholeMilligramsUp(withSpareGrams * share))
            : container.fuel().milligrams();
    long used = Math.min(filled, wholeMilligramsUp(neededGrams * share));
    long spare = filled - used;
    SharedItem item =
        new SharedItem(
            Provision.ID_PREFIX + "fuel-" + container.id(),
            container.name(),
            Optional.empty(),
            List.of("fuel"),
            OptionalInt.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.of("cooking"),
            new Form.Counted(
                new Form.Quantity.Fixed(count),
                Mass.ofMilligrams(filled + container.emptyMass().milligrams()),
                MassFrom.LABEL,
                container.volume(),
                Stow.INSIDE,
                Optional.of(
                    new Use.Evenly(
                        Mass.ofMilligrams(container.emptyMass().milligrams() + spare)))));
    String reason =
        "%d with %s g of fuel in each; %s g of it is spare, and each weighs %s g empty."
            .formatted(
                count, grams(filled), grams(spare), grams(container.emptyMass().milligrams()));
    return new Provision.Item(item, reason, false);
  }

  private static String grams(long milligrams) {
    return MassText.plainGrams(milligrams);
  }

  private static long wholeMilligramsUp(double grams) {
    return (long) Math.ceil(grams * 1000);
  }
}
