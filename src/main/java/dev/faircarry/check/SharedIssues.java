package dev.faircarry.check;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Use;
import java.util.List;
import java.util.Set;

/** What is wrong with one shared item as stated. */
final class SharedIssues {
  private final Ranges ranges;
  private final Issues issues;
  private final int tripDays;
  private final Set<String> hikers;
  private final Set<String> containerKinds;
  private boolean countsFine = true;

  /**
   * @param tripDays days of the trip; -1 when they are themselves out of range, so that no day can
   *     be judged
   * @param hikers ids of the hikers
   * @param containerKinds kinds of container that the trip has
   */
  SharedIssues(Ranges ranges, int tripDays, Set<String> hikers, Set<String> containerKinds) {
    this.ranges = ranges;
    this.issues = ranges.issues();
    this.tripDays = tripDays;
    this.hikers = hikers;
    this.containerKinds = containerKinds;
  }

  /** Whether every count seen so far keeps its own limit, so that counts can be added up. */
  boolean countsFine() {
    return countsFine;
  }

  void find(SharedItem item, Pointer at) {
    ranges.named(at, item.id(), item.name());
    ranges.covers(at.at("covers"), item.covers());
    item.owner().ifPresent(owner -> owner(at.at("owner"), owner));
    if (item.sleeps().isPresent()) {
      ranges.number(at.at("sleeps"), item.sleeps().getAsInt(), 0, Limits.SLEEPS);
    }
    item.goesInto().ifPresent(kind -> goesInto(at.at("goesInto"), kind));
    item.purpose().ifPresent(purpose -> ranges.word(at.at("purpose"), purpose));
    onDays(item.onDays(), at.at("onDays"));
    item.form().match(new OfForm(item, at));
  }

  private void owner(Pointer at, String owner) {
    if (!hikers.contains(owner)) {
      issues.add(
          IssueCode.UNKNOWN_HIKER,
          at,
          owner,
          "The trip has no hiker \"" + Issues.shortened(owner) + "\".");
    }
  }

  private void goesInto(Pointer at, String kind) {
    if (ranges.word(at, kind) && !containerKinds.contains(kind)) {
      issues.add(
          IssueCode.NO_CONTAINER,
          at,
          kind,
          "Nothing on this trip contains \"" + Issues.shortened(kind) + "\".");
    }
  }

  private void onDays(List<Integer> days, Pointer at) {
    if (tripDays < 1 || !ranges.size(at, days, Limits.DAYS)) {
      return;
    }
    for (int i = 0; i < days.size(); i++) {
      HikerIssues.day(at.at(i), days.get(i), tripDays, issues);
      if (i > 0 && days.get(i) <= days.get(i - 1)) {
        issues.add(
            IssueCode.DAYS_NOT_RISING,
            at.at(i),
            String.valueOf(days.get(i)),
            "Day " + days.get(i) + " comes after day " + days.get(i - 1) + ".");
      }
    }
  }

  /** Checks that differ between forms. The answer says nothing. */
  private final class OfForm implements Form.Cases<Boolean> {
    private final SharedItem item;
    private final Pointer at;

    OfForm(SharedItem item, Pointer at) {
      this.item = item;
      this.at = at;
    }

    @Override
    public Boolean whole(Form.Whole form) {
      ranges.itemMass(at.at("mass"), form.mass());
      ranges.volume(at.at("volume"), form.volume());
      ranges.contains(at.at("contains"), form.contains());
      form.use().ifPresent(use -> ranges.evenly(at.at("use"), use, form.mass()));
      useWithDays(form.use().isPresent());
      return true;
    }

    @Override
    public Boolean parts(Form.Parts form) {
      Pointer list = at.at("parts");
      if (!ranges.notEmpty(list, form.parts())
          || !ranges.size(list, form.parts(), Limits.PARTS_PER_ITEM)) {
        countsFine = false;
        return true;
      }
      ranges.uniqueIds(list, TripIssues.ids(form.parts(), Form.Part::id), "part");
      for (int i = 0; i < form.parts().size(); i++) {
        Form.Part part = form.parts().get(i);
        ranges.named(list.at(i), part.id(), part.name());
        ranges.itemMass(list.at(i).at("mass"), part.mass());
        ranges.volume(list.at(i).at("volume"), part.volume());
      }
      return true;
    }

    @Override
    public Boolean counted(Form.Counted form) {
      if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
        countsFine &= ranges.number(at.at("count"), fixed.count(), 1, Limits.PIECES);
      } else {
        int each = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
        countsFine &= ranges.number(at.at("perPerson").at("countPerDay"), each, 1, Limits.PIECES);
      }
      ranges.itemMass(at.at("unitMass"), form.unitMass());
      ranges.volume(at.at("unitVolume"), form.unitVolume());
      form.use().ifPresent(use -> unitUse(form, use));
      useWithDays(form.use().isPresent());
      return true;
    }

    private void unitUse(Form.Counted form, Use use) {
      Pointer place = at.at("use");
      if (use instanceof Use.Evenly evenly) {
        ranges.evenly(place, evenly, form.unitMass());
        return;
      }
      Use.UnitsPerDay daily = (Use.UnitsPerDay) use;
      ranges.leaves(place, daily.leaves(), form.unitMass());
      perDay(form, daily.perDay(), place.at("perDay"));
    }

    private void perDay(Form.Counted form, Use.PerDay perDay, Pointer place) {
      if (perDay instanceof Use.PerDay.Same same) {
        ranges.number(place, same.units(), 0, Limits.PIECES);
      } else if (perDay instanceof Use.PerDay.Listed listed) {
        listed(listed.units(), place);
      } else if (form.quantity() instanceof Form.Quantity.Fixed) {
        issues.add(
            IssueCode.MISSING,
            place,
            "",
            "How many units are used on each day is not stated.",
            "Add \"perDay\", a number or a list by day.");
      }
    }

    private void listed(List<Integer> units, Pointer place) {
      if (tripDays >= 1 && units.size() != tripDays) {
        issues.add(
            IssueCode.WRONG_LENGTH,
            place,
            String.valueOf(units.size()),
            "The list has " + units.size() + " entries, the trip " + tripDays + " days.");
        return;
      }
      for (int i = 0; i < units.size(); i++) {
        ranges.number(place.at(i), units.get(i), 0, Limits.PIECES);
      }
    }

    private void useWithDays(boolean used) {
      if (used && !item.onDays().isEmpty()) {
        issues.add(
            IssueCode.USE_WITH_DAYS,
            at.at("use"),
            "",
            "The item is there on some days only and is used up as well.");
      }
    }
  }
}
