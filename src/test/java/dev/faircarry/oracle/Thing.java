package dev.faircarry.oracle;

import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Form;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Volume;
import java.util.Optional;

/**
 * A whole item, a part, or all units of a counted item.
 *
 * @param units 1 for a whole item or a part
 * @param usedOn units used on each day, at index day - 1; all 0 where none are used by units
 * @param usedByUnits whether units are used by the day
 * @param unitMilligrams mass of an unused unit on each morning it is there
 * @param leavesMilligrams what a used unit leaves
 */
record Thing(
    SharedItem item,
    PieceRef ref,
    int units,
    boolean usedByUnits,
    int[] usedOn,
    long[] unitMilligrams,
    long leavesMilligrams,
    Optional<Volume> volume,
    Stow stow,
    Optional<Contains> contains) {

  static Thing part(SharedItem item, Form.Part part) {
    return new Thing(
        item,
        PieceRef.part(item.id(), part.id()),
        1,
        false,
        new int[0],
        new long[] {part.mass().milligrams()},
        0,
        part.volume(),
        part.stow(),
        Optional.empty());
  }

  static Thing of(Trip trip, SharedItem item) {
    PieceRef ref = PieceRef.item(item.id());
    if (item.form() instanceof Form.Whole form) {
      long[] masses = evenly(trip.days(), form.mass().milligrams(), form.use().map(u -> (Use) u));
      return new Thing(
          item, ref, 1, false, new int[0], masses, 0, form.volume(), form.stow(), form.contains());
    }
    Form.Counted form = (Form.Counted) item.form();
    int count = count(trip, item, form);
    boolean byUnits = form.use().filter(u -> u instanceof Use.UnitsPerDay).isPresent();
    return new Thing(
        item,
        ref,
        count,
        byUnits,
        byUnits ? usedOn(trip, form, count) : new int[0],
        evenly(trip.days(), form.unitMass().milligrams(), form.use()),
        byUnits ? ((Use.UnitsPerDay) form.use().orElseThrow()).leaves().milligrams() : 0,
        form.unitVolume(),
        form.stow(),
        Optional.empty());
  }

  private static long[] evenly(int days, long mass, Optional<Use> use) {
    long[] masses = new long[days];
    for (int day = 1; day <= days; day++) {
      masses[day - 1] = mass;
      if (use.isPresent() && use.get() instanceof Use.Evenly evenly) {
        masses[day - 1] -= (mass - evenly.leaves().milligrams()) * (day - 1) / days;
      }
    }
    return masses;
  }

  private static int people(Trip trip, int day) {
    return (int)
        trip.hikers().stream()
            .filter(h -> h.leavesAfterDay().isEmpty() || h.leavesAfterDay().getAsInt() >= day)
            .count();
  }

  private static int count(Trip trip, SharedItem item, Form.Counted form) {
    if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
      return fixed.count();
    }
    int each = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
    if (!item.onDays().isEmpty()) {
      return each * people(trip, item.onDays().get(0));
    }
    int sum = 0;
    for (int day = 1; day <= trip.days(); day++) {
      sum += each * people(trip, day);
    }
    return sum;
  }

  private static int[] usedOn(Trip trip, Form.Counted form, int count) {
    Use.PerDay perDay = ((Use.UnitsPerDay) form.use().orElseThrow()).perDay();
    int[] used = new int[trip.days()];
    int left = count;
    for (int day = 1; day <= trip.days(); day++) {
      int wanted;
      if (perDay instanceof Use.PerDay.Same same) {
        wanted = same.units();
      } else if (perDay instanceof Use.PerDay.Listed listed) {
        wanted = listed.units().get(day - 1);
      } else {
        wanted = ((Form.Quantity.PerPerson) form.quantity()).countPerDay() * people(trip, day);
      }
      used[day - 1] = Math.min(wanted, left);
      left -= used[day - 1];
    }
    return used;
  }

  boolean isPart() {
    return ref.part().isPresent();
  }

  int usedOnDay(int day) {
    return usedByUnits ? usedOn[day - 1] : 0;
  }

  boolean thereOn(int day) {
    return item.onDays().isEmpty() || item.onDays().contains(day);
  }

  /** Whether an unused piece of it is there on this morning or a later one. */
  boolean neededFrom(int day, int days) {
    for (int d = day; d <= days; d++) {
      if (thereOn(d)) {
        return true;
      }
    }
    return false;
  }

  long milligrams(int day) {
    return unitMilligrams[isPart() ? 0 : day - 1];
  }

  long milliliters() {
    return volume.map(Volume::milliliters).orElse(0L);
  }

  /** Whether a reference of a rule names it. */
  boolean namedBy(PieceRef reference) {
    return reference.equals(ref) || reference.equals(PieceRef.item(item.id()));
  }
}
