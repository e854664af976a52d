package dev.faircarry.oracle;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads a split of a small trip as one of all ways its things can go, or as none of them. */
public final class SplitReading {
  private static final int MOST_COURSES = 200_000;

  private SplitReading() {}

  /** What the split is worth; empty when it is no split or breaks a hard rule. */
  public static Optional<Value> value(Trip trip, Split split) {
    PlainTrip plain = new PlainTrip(trip);
    Judge judge = new Judge(plain);
    return courses(plain, split).filter(courses -> keeps(plain, judge, courses)).map(judge::value);
  }

  static boolean keeps(PlainTrip plain, Judge judge, Course[] courses) {
    for (int t = 0; t < courses.length; t++) {
      if (!judge.keepsAlone(plain.things.get(t), courses[t], demand -> true)) {
        return false;
      }
    }
    return judge.keepsTogether(courses, demand -> true);
  }

  static Optional<Course[]> courses(PlainTrip plain, Split split) {
    Course[] courses = new Course[plain.things.size()];
    int carries = 0;
    int opened = 0;
    int handovers = 0;
    for (int t = 0; t < courses.length; t++) {
      Thing thing = plain.things.get(t);
      List<Carry> carriesOf = new ArrayList<>(split.carries());
      carriesOf.removeIf(c -> !c.piece().equals(thing.ref()));
      List<Opened> openedOf = new ArrayList<>(split.opened());
      openedOf.removeIf(o -> thing.isPart() || !o.item().equals(thing.item().id()));
      List<CampHandover> handoversOf = new ArrayList<>(split.handoversAtCamp());
      handoversOf.removeIf(h -> !h.piece().equals(thing.ref()));
      Optional<Course> course =
          Courses.of(plain, thing, MOST_COURSES).stream()
              .filter(
                  c ->
                      same(c.carries(), carriesOf)
                          && same(c.opened(), openedOf)
                          && same(c.handovers(), handoversOf))
              .findFirst();
      if (course.isEmpty()) {
        return Optional.empty();
      }
      courses[t] = course.get();
      carries += carriesOf.size();
      opened += openedOf.size();
      handovers += handoversOf.size();
    }
    boolean nothingElse =
        carries == split.carries().size()
            && opened == split.opened().size()
            && handovers == split.handoversAtCamp().size();
    return nothingElse ? Optional.of(courses) : Optional.empty();
  }

  private static <T> boolean same(List<T> one, List<T> other) {
    Set<T> all = new HashSet<>(one);
    return one.size() == other.size() && all.equals(new HashSet<>(other));
  }
}
