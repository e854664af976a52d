package dev.faircarry.choose;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Need;
import dev.faircarry.unit.Rounding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a group needs unless it says otherwise. All numbers are common practice; a need of the same
 * name in the plan takes the place of one here, and one of nothing strikes it.
 */
public final class DefaultNeeds {
  private DefaultNeeds() {}

  private static final long POT_MILLILITERS_PER_PERSON = 500;
  private static final long PEOPLE_PER_STOVE = 4;

  /** A need, by itself and for each party, before the plan has its say. */
  record Default(String need, long atLeast, boolean room, int perParty, String reason) {}

  static List<Default> of(Trip trip) {
    int people = trip.hikers().size();
    List<Default> needs = new ArrayList<>();
    if (people == 0) {
      return needs;
    }
    if (trip.days() > 1) {
      needs.add(new Default(Need.SLEEPING, people, false, 0, "a place to sleep for each"));
    }
    needs.add(
        new Default(
            Need.POT,
            POT_MILLILITERS_PER_PERSON * people,
            true,
            0,
            "half a litre of pot for each"));
    needs.add(
        new Default(
            "flame",
            Rounding.up(people, PEOPLE_PER_STOVE),
            false,
            1,
            "one stove for four, and one for each party"));
    needs.add(
        new Default("water-treatment", 2, false, 1, "one and a spare, and one for each party"));
    needs.add(new Default("first-aid", 1, false, 1, "one for each party"));
    needs.add(new Default("navigation", 1, false, 1, "one for each party"));
    needs.add(new Default("light", people, false, 0, "one for each"));
    needs.add(new Default("repair", 1, false, 0, "one for the group"));
    foodStorage(trip)
        .forEach(
            (kind, milliliters) -> {
              if (milliliters > 0) {
                needs.add(
                    new Default(
                        kind,
                        milliliters,
                        true,
                        0,
                        "room for all that must travel in such a container on the first morning"));
              }
            });
    return needs;
  }

  /** What the land manager orders is what the trip's things say they go into. */
  private static Map<String, Long> foodStorage(Trip trip) {
    Map<String, Long> milliliters = new TreeMap<>();
    for (SharedItem item : trip.shared()) {
      if (item.goesInto().isPresent() && item.thereOn(1)) {
        milliliters.merge(item.goesInto().orElseThrow(), volumeMilliliters(trip, item), Long::sum);
      }
    }
    return milliliters;
  }

  private static long volumeMilliliters(Trip trip, SharedItem item) {
    return item.form()
        .match(
            new Form.Cases<Long>() {
              @Override
              public Long whole(Form.Whole form) {
                return form.volume().map(v -> v.milliliters()).orElse(0L);
              }

              @Override
              public Long parts(Form.Parts form) {
                return form.parts().stream()
                    .mapToLong(p -> p.volume().map(v -> v.milliliters()).orElse(0L))
                    .sum();
              }

              @Override
              public Long counted(Form.Counted form) {
                return Things.units(trip, item, form)
                    * form.unitVolume().map(v -> v.milliliters()).orElse(0L);
              }
            });
  }
}
