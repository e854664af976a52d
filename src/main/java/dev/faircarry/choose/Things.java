package dev.faircarry.choose;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Need;
import java.util.Optional;

/** What is there: masses, numbers and how much of a need a thing meets. */
final class Things {
  private Things() {}

  /** The party of a hiker; those without one are a party of their own, without a name. */
  static String party(Hiker hiker) {
    return hiker.party().orElse("");
  }

  static long massMilligrams(Trip trip, SharedItem item) {
    return item.form()
        .match(
            new Form.Cases<Long>() {
              @Override
              public Long whole(Form.Whole form) {
                return form.mass().milligrams();
              }

              @Override
              public Long parts(Form.Parts form) {
                return form.parts().stream().mapToLong(p -> p.mass().milligrams()).sum();
              }

              @Override
              public Long counted(Form.Counted form) {
                return units(trip, item, form) * form.unitMass().milligrams();
              }
            });
  }

  /** Units at departure. */
  static long units(Trip trip, SharedItem item, Form.Counted form) {
    if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
      return fixed.count();
    }
    int perDay = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
    int from = item.onDays().isEmpty() ? 1 : item.onDays().get(0);
    int to = item.onDays().isEmpty() ? trip.days() : from;
    long units = 0;
    for (int day = from; day <= to; day++) {
      int today = day;
      units += perDay * trip.hikers().stream().filter(h -> today <= h.lastDay(trip.days())).count();
    }
    return units;
  }

  static boolean usedUp(SharedItem item) {
    return item.form()
        .match(
            new Form.Cases<Boolean>() {
              @Override
              public Boolean whole(Form.Whole form) {
                return form.use().isPresent();
              }

              @Override
              public Boolean parts(Form.Parts form) {
                return false;
              }

              @Override
              public Boolean counted(Form.Counted form) {
                return form.use().isPresent();
              }
            });
  }

  /**
   * How much of a need a shared item meets. A volume is that inside the container, or the stated
   * one.
   */
  static long meets(Trip trip, SharedItem item, String need, boolean room) {
    if (need.equals(Need.SLEEPING) && item.sleeps().isPresent()) {
      return item.sleeps().getAsInt();
    }
    boolean covers = item.covers().contains(need);
    if (!room) {
      return covers ? number(trip, item) : 0;
    }
    if (!(item.form() instanceof Form.Whole whole)) {
      return 0;
    }
    if (whole.contains().isPresent()
        && (covers || whole.contains().orElseThrow().kind().equals(need))) {
      return whole.contains().orElseThrow().volume().milliliters();
    }
    return covers ? whole.volume().map(v -> v.milliliters()).orElse(0L) : 0;
  }

  /** How much of a need a thing of a kit meets. */
  static long meets(KitItem item, String need, boolean room) {
    boolean covers = item.covers().contains(need);
    if (!room) {
      return covers ? 1 : 0;
    }
    if (item.contains().isPresent()
        && (covers || item.contains().orElseThrow().kind().equals(need))) {
      return item.contains().orElseThrow().volume().milliliters();
    }
    return covers ? item.volume().map(v -> v.milliliters()).orElse(0L) : 0;
  }

  private static long number(Trip trip, SharedItem item) {
    return item.form() instanceof Form.Counted counted ? units(trip, item, counted) : 1;
  }

  static Optional<Hiker> hiker(Trip trip, String id) {
    return trip.hikers().stream().filter(h -> h.id().equals(id)).findFirst();
  }
}
