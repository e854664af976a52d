package dev.faircarry.provision;

import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Food;
import dev.faircarry.trip.plan.Plan;
import java.util.stream.Stream;

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
    plan.food()
        .flatMap(Food::goesInto)
        .filter(kind -> !brings(trip, kind))
        .ifPresent(
            kind ->
                draft.note(
                    Note.Code.CONTAINER_MISSING,
                    "All food goes into \"" + kind + "\", but nobody brings such a container.",
                    "Add a container with \"contains\" of that kind, or take \"goesInto\" away."));
    Provision provision = draft.provision();
    if (pieces(trip, provision) > Limits.PIECES) {
      draft.note(
          Note.Code.TOO_MANY_PIECES,
          "With these items the trip has more than " + Limits.PIECES + " pieces.",
          "Pack several meals or bottles as one unit.");
    }
    return draft.provision();
  }

  private static boolean brings(Trip trip, String kind) {
    Stream<Contains> shared =
        trip.shared().stream()
            .map(SharedItem::form)
            .flatMap(form -> form instanceof Form.Whole w ? w.contains().stream() : Stream.empty());
    Stream<Contains> own =
        trip.hikers().stream().flatMap(h -> h.kit().stream()).flatMap(k -> k.contains().stream());
    return Stream.concat(shared, own).anyMatch(c -> c.kind().equals(kind));
  }

  private static long pieces(Trip trip, Provision provision) {
    Party party = Party.of(trip);
    long pieces = 0;
    for (SharedItem item : provision.applyTo(trip).shared()) {
      if (item.form() instanceof Form.Counted counted) {
        pieces += units(party, item, counted);
      } else {
        pieces += item.form() instanceof Form.Parts parts ? parts.parts().size() : 1;
      }
    }
    return pieces;
  }

  private static long units(Party party, SharedItem item, Form.Counted counted) {
    if (counted.quantity() instanceof Form.Quantity.Fixed fixed) {
      return fixed.count();
    }
    long each = ((Form.Quantity.PerPerson) counted.quantity()).countPerDay();
    return each * (item.onDays().isEmpty() ? party.personDays() : party.on(item.onDays().get(0)));
  }
}
