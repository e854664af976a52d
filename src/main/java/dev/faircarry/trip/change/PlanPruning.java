package dev.faircarry.trip.change;

import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Goals;
import dev.faircarry.trip.plan.Offer;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.Taking;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/** Takes out of a plan what names hikers and things that the changed trip does not have. */
final class PlanPruning {
  private PlanPruning() {}

  static Trip prune(Trip trip, BiConsumer<ChangeNote.Kind, String> notes) {
    if (trip.plan().isEmpty()) {
      return trip;
    }
    Plan plan = trip.plan().get();
    Set<String> hikers = new HashSet<>();
    Set<String> things = new HashSet<>();
    trip.hikers()
        .forEach(
            h -> {
              hikers.add(h.id());
              h.kit().forEach(k -> things.add(h.id() + "/" + k.id()));
            });
    trip.shared().forEach(s -> things.add(s.id()));
    Plan pruned =
        new Plan(
            plan.route(),
            plan.food(),
            plan.fuel(),
            plan.water(),
            plan.goals().map(goals -> goals(goals, hikers)),
            plan.taking().map(taking -> taking(taking, hikers, things)));
    if (pruned.equals(plan)) {
      return trip;
    }
    notes.accept(
        ChangeNote.Kind.PLAN_SHORTENED,
        "Goals, offers and things to keep of hikers and things that are gone are left out of the"
            + " plan.");
    return new Trip(
        trip.name(),
        trip.days(),
        trip.policy(),
        trip.hikers(),
        trip.shared(),
        trip.rules(),
        Optional.of(pruned));
  }

  private static Goals goals(Goals goals, Set<String> hikers) {
    return new Goals(
        goals.baseMass(),
        goals.spending(),
        goals.hikers().stream().filter(g -> hikers.contains(g.hiker())).toList());
  }

  private static Taking taking(Taking taking, Set<String> hikers, Set<String> things) {
    List<Offer> offers =
        taking.offers().stream()
            .filter(o -> o.owner().map(hikers::contains).orElse(true))
            .filter(o -> o.forHiker().map(hikers::contains).orElse(true))
            .map(o -> unnecessary(o, things))
            .toList();
    return new Taking(
        taking.needs(),
        offers,
        taking.budget(),
        taking.keep().stream().filter(things::contains).toList());
  }

  private static Offer unnecessary(Offer o, Set<String> things) {
    List<String> left = o.makesUnnecessary().stream().filter(things::contains).toList();
    return new Offer(
        o.id(),
        o.name(),
        o.mass(),
        o.massFrom(),
        o.volume(),
        o.price(),
        o.available(),
        o.owner(),
        o.forHiker(),
        o.stow(),
        o.covers(),
        o.requires(),
        left,
        o.contains());
  }
}
