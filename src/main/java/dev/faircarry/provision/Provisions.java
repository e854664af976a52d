package dev.faircarry.provision;

import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Plan;

/** Works out what a trip's plan asks to be carried. */
public final class Provisions {
  private Provisions() {}

  /** Food, fuel and water of a trip whose plan has no issues; nothing for a trip without a plan. */
  public static Provision of(Trip trip) {
    Draft draft = new Draft();
    Plan plan = trip.plan().orElse(Plan.EMPTY);
    Party party = Party.of(trip);
    if (party.personDays() == 0) {
      draft.note(
          Note.Code.NOBODY_THERE,
          "There is nobody on the trip, so nothing is needed.",
          "Add the hikers and ask again.");
      return draft.provision();
    }
    plan.food().ifPresent(food -> new FoodProvision(food, draft).add());
    plan.fuel().ifPresent(fuel -> new FuelProvision(fuel, plan, party, draft).add());
    plan.water().ifPresent(water -> new WaterProvision(water, plan, party, draft).add());
    return draft.provision();
  }
}
