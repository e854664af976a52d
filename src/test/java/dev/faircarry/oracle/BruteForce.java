package dev.faircarry.oracle;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Tries every split of a small trip: every assignment, opening plan and camp handover. */
public final class BruteForce {
  private static final int MOST_COURSES = 20_000;

  /**
   * What trying everything says.
   *
   * @param splits how many splits keep every hard rule
   * @param best least excess, and with it the lexicographically smallest list; empty when there is
   *     no split
   * @param byHandovers the best by number of handovers from the earlier split; empty without one
   */
  public record Answer(
      long splits,
      Optional<Value> best,
      Optional<Split> example,
      SortedMap<Integer, Value> byHandovers) {
    public boolean possible() {
      return splits > 0;
    }

    /** The best with at most so many handovers, if there is any. */
    public Optional<Value> bestWithin(int handovers) {
      return byHandovers.headMap(handovers + 1).values().stream().min(Value::compareTo);
    }
  }

  private final PlainTrip plain;
  private final Judge judge;
  private final Predicate<Demand> active;
  private final Optional<Split> earlier;
  private final Set<PieceRef> frozen;
  private final List<List<Course>> choices = new ArrayList<>();
  private final Course[] chosen;
  private final SortedMap<Integer, Value> byHandovers = new TreeMap<>();
  private long splits;
  private Optional<Value> best = Optional.empty();
  private Optional<Split> example = Optional.empty();

  private BruteForce(
      Trip trip, Predicate<Demand> active, Optional<Split> earlier, Set<PieceRef> frozen) {
    plain = new PlainTrip(trip);
    judge = new Judge(plain);
    this.active = active;
    this.earlier = earlier;
    this.frozen = frozen;
    chosen = new Course[plain.things.size()];
  }

  /** Tries everything, unless that is more than so many splits. */
  public static Optional<Answer> answer(Trip trip, long most) {
    return answer(trip, most, demand -> true, Optional.empty());
  }

  /**
   * @param most give up when there is more than this to try
   * @param active the demands that are asked for
   * @param earlier counts handovers from this split
   */
  public static Optional<Answer> answer(
      Trip trip, long most, Predicate<Demand> active, Optional<Split> earlier) {
    return answer(trip, most, active, earlier, Set.of());
  }

  /**
   * @param frozen pieces, or all units of a counted item, that stay with whoever has them in the
   *     earlier split and is on the trip; there are no fewer units now than then
   */
  public static Optional<Answer> answer(
      Trip trip,
      long most,
      Predicate<Demand> active,
      Optional<Split> earlier,
      Set<PieceRef> frozen) {
    try {
      return Optional.of(new BruteForce(trip, active, earlier, frozen).run(most));
    } catch (TooLarge e) {
      return Optional.empty();
    }
  }

  private Answer run(long most) {
    long all = 1;
    for (Thing thing : plain.things) {
      List<Course> courses =
          Courses.of(plain, thing, MOST_COURSES).stream()
              .filter(course -> judge.keepsAlone(thing, course, active) && stays(thing, course))
              .toList();
      choices.add(courses);
      all *= courses.size();
      if (all > most) {
        throw new TooLarge();
      }
    }
    choose(0);
    return new Answer(splits, best, example, byHandovers);
  }

  /** Whether nobody gives away what is frozen. */
  private boolean stays(Thing thing, Course course) {
    if (earlier.isEmpty() || !frozen.contains(thing.ref())) {
      return true;
    }
    return earlier.get().carries().stream()
        .filter(c -> c.piece().equals(thing.ref()))
        .filter(c -> plain.trip.hikers().stream().anyMatch(h -> h.id().equals(c.hiker())))
        .allMatch(c -> now(course, c.hiker()) >= c.units());
  }

  private void choose(int t) {
    if (t == chosen.length) {
      judge();
      return;
    }
    for (Course course : choices.get(t)) {
      chosen[t] = course;
      choose(t + 1);
    }
  }

  private void judge() {
    if (!judge.keepsTogether(chosen, active)) {
      return;
    }
    splits++;
    Value value = judge.value(chosen);
    if (best.isEmpty() || value.compareTo(best.get()) < 0) {
      best = Optional.of(value);
      example = Optional.of(split(chosen));
    }
    if (earlier.isPresent()) {
      byHandovers.merge(handovers(earlier.get()), value, (x, y) -> x.compareTo(y) <= 0 ? x : y);
    }
  }

  /** Pieces and units that leave one hiker for another. */
  private int handovers(Split from) {
    int sum = 0;
    for (int t = 0; t < chosen.length; t++) {
      Thing thing = plain.things.get(t);
      int left = 0;
      int before = 0;
      for (Carry carry : from.carries()) {
        if (carry.piece().equals(thing.ref())) {
          before += carry.units();
          left += Math.max(0, carry.units() - now(chosen[t], carry.hiker()));
        }
      }
      // Units that are no longer there went to nobody.
      sum += Math.max(0, left - Math.max(0, before - thing.units()));
    }
    return sum;
  }

  private static int now(Course course, String hiker) {
    return course.carries().stream()
        .filter(c -> c.hiker().equals(hiker))
        .mapToInt(Carry::units)
        .sum();
  }

  static Split split(Course[] courses) {
    List<Carry> carries = new ArrayList<>();
    List<Opened> opened = new ArrayList<>();
    List<CampHandover> handovers = new ArrayList<>();
    for (Course course : courses) {
      carries.addAll(course.carries());
      opened.addAll(course.opened());
      handovers.addAll(course.handovers());
    }
    return new Split(carries, opened, handovers);
  }
}
