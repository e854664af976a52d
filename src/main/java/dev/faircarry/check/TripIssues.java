package dev.faircarry.check;

import dev.faircarry.trip.Form;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Lists what is wrong with a trip as such, however it was read. Rules that merely cannot all hold
 * are no issue of the trip: they make a split impossible, and that is a result.
 */
public final class TripIssues {
  private final Trip trip;
  private final Issues issues = new Issues();
  private final Ranges ranges = new Ranges(issues);

  private TripIssues(Trip trip) {
    this.trip = trip;
  }

  /** All issues of a trip, places given as in its document; none when it can be split. */
  public static List<Issue> of(Trip trip) {
    return new TripIssues(trip).find();
  }

  private List<Issue> find() {
    ranges.name(Pointer.ROOT.at("name"), trip.name());
    boolean daysFine = ranges.number(Pointer.ROOT.at("days"), trip.days(), 1, Limits.DAYS);
    policy(trip.policy(), Pointer.ROOT.at("policy"));
    hikers(daysFine);
    shared(daysFine);
    RuleIssues.find(trip, issues, ranges);
    trip.plan().ifPresent(plan -> PlanIssues.find(trip, plan, ranges));
    return issues.list();
  }

  private void policy(Policy policy, Pointer at) {
    ranges.fraction(at.at("targetFraction"), policy.targetFraction());
    ranges.fraction(at.at("capFraction"), policy.capFraction());
    ranges.number(
        at.at("grain"),
        policy.grainThousandths(),
        Limits.MIN_GRAIN_THOUSANDTHS,
        Limits.MAX_GRAIN_THOUSANDTHS);
  }

  private void hikers(boolean daysFine) {
    Pointer at = Pointer.ROOT.at("hikers");
    if (trip.hikers().isEmpty()) {
      issues.add(IssueCode.EMPTY_GROUP, at, "", "The trip has no hikers.");
      return;
    }
    if (!ranges.size(at, trip.hikers(), Limits.HIKERS)) {
      return;
    }
    ranges.uniqueIds(at, ids(trip.hikers(), Hiker::id), "hiker");
    for (int i = 0; i < trip.hikers().size(); i++) {
      HikerIssues.find(
          trip.hikers().get(i), at.at(i), daysFine ? trip.days() : Limits.DAYS, ranges);
    }
    if (daysFine) {
      nobodyPresent(at);
    }
  }

  private void nobodyPresent(Pointer at) {
    int last = trip.hikers().stream().mapToInt(h -> h.lastDay(trip.days())).max().orElse(0);
    if (last < trip.days()) {
      issues.add(
          IssueCode.NOBODY_PRESENT,
          at,
          String.valueOf(last),
          "After day " + last + " nobody is left, but the trip has " + trip.days() + " days.");
    }
  }

  private void shared(boolean daysFine) {
    Pointer at = Pointer.ROOT.at("shared");
    if (!ranges.size(at, trip.shared(), Limits.SHARED_ITEMS)) {
      return;
    }
    ranges.uniqueIds(at, ids(trip.shared(), SharedItem::id), "shared item");
    Set<String> kinds = containerKinds();
    Set<String> owners = new HashSet<>(ids(trip.hikers(), Hiker::id));
    SharedIssues each = new SharedIssues(ranges, daysFine ? trip.days() : -1, owners, kinds);
    for (int i = 0; i < trip.shared().size(); i++) {
      each.find(trip.shared().get(i), at.at(i));
    }
    if (daysFine && each.countsFine()) {
      pieces(at);
    }
  }

  private void pieces(Pointer at) {
    long pieces = 0;
    for (SharedItem item : trip.shared()) {
      pieces += item.form().match(new PieceCount(item));
    }
    if (pieces > Limits.PIECES) {
      issues.add(
          IssueCode.TOO_MANY_PIECES,
          at,
          String.valueOf(pieces),
          "All items, parts and units together are "
              + pieces
              + " pieces; at most "
              + Limits.PIECES
              + " are allowed.");
    }
  }

  /** How many pieces an item is. */
  private final class PieceCount implements Form.Cases<Long> {
    private final SharedItem item;

    PieceCount(SharedItem item) {
      this.item = item;
    }

    @Override
    public Long whole(Form.Whole form) {
      return 1L;
    }

    @Override
    public Long parts(Form.Parts form) {
      return (long) form.parts().size();
    }

    @Override
    public Long counted(Form.Counted form) {
      if (form.quantity() instanceof Form.Quantity.Fixed fixed) {
        return (long) fixed.count();
      }
      long each = ((Form.Quantity.PerPerson) form.quantity()).countPerDay();
      if (!item.onDays().isEmpty()) {
        return each * presentOn(item.onDays().get(0));
      }
      long persons = 0;
      for (int day = 1; day <= trip.days(); day++) {
        persons += presentOn(day);
      }
      return each * persons;
    }
  }

  private long presentOn(int day) {
    return trip.hikers().stream().filter(h -> day <= h.lastDay(trip.days())).count();
  }

  private Set<String> containerKinds() {
    Set<String> kinds = new HashSet<>();
    for (SharedItem item : trip.shared()) {
      if (item.form() instanceof Form.Whole whole) {
        whole.contains().ifPresent(c -> kinds.add(c.kind()));
      }
    }
    trip.hikers().stream()
        .flatMap(h -> h.kit().stream())
        .forEach(k -> k.contains().ifPresent(c -> kinds.add(c.kind())));
    return kinds;
  }

  static <T> List<String> ids(List<T> things, Function<T, String> id) {
    List<String> ids = new ArrayList<>();
    for (T thing : things) {
      ids.add(id.apply(thing));
    }
    return ids;
  }
}
