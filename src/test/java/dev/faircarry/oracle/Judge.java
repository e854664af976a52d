package dev.faircarry.oracle;

import dev.faircarry.split.Demand;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.Stow;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;

/** Whether courses of all things together keep the rules, and how fair they are. */
final class Judge {
  private final PlainTrip plain;
  private final int days;

  Judge(PlainTrip plain) {
    this.plain = plain;
    days = plain.trip.days();
  }

  /** A demand that is broken by what a thing does alone. */
  boolean keepsAlone(Thing thing, Course course, Predicate<Demand> active) {
    for (Rule rule : plain.trip.rules()) {
      if (active.test(new Demand.OfRule(rule.id())) && !keepsAlone(rule, thing, course)) {
        return false;
      }
    }
    List<String> covers = thing.item().covers();
    boolean hot = covers.contains("flame") || covers.contains("fuel");
    for (int i = 0; i < plain.hikers(); i++) {
      Hiker hiker = plain.hiker(i);
      if (hot
          && hiker.minor()
          && !plain.trip.policy().minorsMayCarryFlameAndFuel()
          && active.test(new Demand.OfMinor(hiker.id()))
          && heldAnywhere(thing, course, i)) {
        return false;
      }
    }
    return true;
  }

  private boolean heldAnywhere(Thing thing, Course course, int hiker) {
    for (int day = 1; day <= days; day++) {
      if (needed(thing, course, day, hiker)) {
        return true;
      }
    }
    return false;
  }

  private boolean needed(Thing thing, Course course, int day, int hiker) {
    return course.unused()[day - 1][hiker] > 0 && thing.neededFrom(day, days);
  }

  private boolean keepsAlone(Rule rule, Thing thing, Course course) {
    if (rule instanceof Rule.Pinned pinned) {
      return !names(pinned.pieces(), thing) || binds(List.of(pinned.hiker()), thing, course);
    }
    if (rule instanceof Rule.Only only) {
      return !names(only.pieces(), thing) || binds(only.hikers(), thing, course);
    }
    if (rule instanceof Rule.Barred barred && names(barred.pieces(), thing)) {
      for (int i = 0; i < plain.hikers(); i++) {
        if (barred.hikers().contains(plain.hiker(i).id()) && heldAnywhere(thing, course, i)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean names(List<PieceRef> references, Thing thing) {
    return references.stream().anyMatch(thing::namedBy);
  }

  private boolean binds(List<String> named, Thing thing, Course course) {
    for (int day = 1; day <= days; day++) {
      boolean somebody = false;
      boolean others = false;
      for (int i = 0; i < plain.hikers(); i++) {
        boolean isNamed = named.contains(plain.hiker(i).id());
        somebody |= isNamed && plain.present(i, day);
        others |= !isNamed && needed(thing, course, day, i);
      }
      if (somebody && others) {
        return false;
      }
    }
    return true;
  }

  /** Whether the demands that tie things to one another hold. */
  boolean keepsTogether(Course[] courses, Predicate<Demand> active) {
    for (Rule rule : plain.trip.rules()) {
      if (!active.test(new Demand.OfRule(rule.id()))) {
        continue;
      }
      if (rule instanceof Rule.Together together && !together(together, courses)) {
        return false;
      }
      if (rule instanceof Rule.Apart apart && !apart(apart, courses)) {
        return false;
      }
      if (rule instanceof Rule.PartyHas has && !partyHas(has, courses)) {
        return false;
      }
    }
    for (int i = 0; i < plain.hikers(); i++) {
      String id = plain.hiker(i).id();
      if ((active.test(new Demand.OfMaxPieces(id)) && !fewEnough(i, courses))
          || (active.test(new Demand.OfRoom(id)) && !fits(i, courses))
          || !contained(i, courses, kind -> active.test(new Demand.OfContainers(kind)))) {
        return false;
      }
    }
    return true;
  }

  private boolean together(Rule.Together rule, Course[] courses) {
    for (int day = 1; day <= days; day++) {
      Set<Integer> holders = new HashSet<>();
      for (int t = 0; plain.stageStarts(day) && t < courses.length; t++) {
        for (int i = 0; i < plain.hikers(); i++) {
          Thing thing = plain.things.get(t);
          if (names(rule.pieces(), thing) && needed(thing, courses[t], day, i)) {
            holders.add(i);
          }
        }
      }
      if (holders.size() > 1) {
        return false;
      }
    }
    return true;
  }

  private boolean apart(Rule.Apart rule, Course[] courses) {
    for (int day = 1; day <= days; day++) {
      for (int i = 0; i < plain.hikers(); i++) {
        int references = 0;
        for (PieceRef reference : rule.pieces()) {
          references += holdsSome(reference, courses, day, i) ? 1 : 0;
        }
        if (references > 1) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean holdsSome(PieceRef reference, Course[] courses, int day, int hiker) {
    for (int t = 0; t < courses.length; t++) {
      Thing thing = plain.things.get(t);
      if (thing.namedBy(reference) && needed(thing, courses[t], day, hiker)) {
        return true;
      }
    }
    return false;
  }

  private boolean partyHas(Rule.PartyHas rule, Course[] courses) {
    Set<String> parties = new LinkedHashSet<>(rule.parties());
    if (parties.isEmpty()) {
      plain.trip.hikers().forEach(h -> parties.add(h.party().orElse("")));
    }
    for (String party : parties) {
      for (int day = 1; day <= days; day++) {
        int d = day;
        IntPredicate in =
            i -> plain.present(i, d) && plain.hiker(i).party().orElse("").equals(party);
        if (!partyHas(rule, courses, day, in)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean partyHas(Rule.PartyHas rule, Course[] courses, int day, IntPredicate in) {
    boolean somebody = false;
    int has = 0;
    Set<String> partsItems = new LinkedHashSet<>();
    Set<String> scattered = new HashSet<>();
    for (int i = 0; i < plain.hikers(); i++) {
      if (in.test(i)) {
        somebody = true;
        for (KitItem item : plain.hiker(i).kit()) {
          has += item.covers().contains(rule.covers()) ? 1 : 0;
        }
      }
    }
    for (int t = 0; t < courses.length; t++) {
      Thing thing = plain.things.get(t);
      if (!thing.item().covers().contains(rule.covers()) || !thing.thereOn(day)) {
        continue;
      }
      int held = 0;
      for (int i = 0; i < plain.hikers(); i++) {
        held += in.test(i) ? courses[t].unused()[day - 1][i] : 0;
      }
      if (thing.isPart()) {
        partsItems.add(thing.item().id());
        if (held == 0) {
          scattered.add(thing.item().id());
        }
      } else {
        has += held;
      }
    }
    partsItems.removeAll(scattered);
    return !somebody || has + partsItems.size() >= rule.atLeast();
  }

  private boolean fewEnough(int hiker, Course[] courses) {
    int pieces = 0;
    for (Course course : courses) {
      pieces += units(course, hiker);
    }
    return pieces <= plain.hiker(hiker).maxPieces().orElse(Integer.MAX_VALUE);
  }

  private int units(Course course, int hiker) {
    String id = plain.hiker(hiker).id();
    return course.carries().stream()
        .filter(c -> c.hiker().equals(id))
        .mapToInt(c -> c.units())
        .sum();
  }

  private boolean fits(int hiker, Course[] courses) {
    long room = plain.room(hiker);
    for (int day = 1; room >= 0 && day <= plain.lastDay(hiker); day++) {
      long taken = 0;
      for (int t = 0; t < courses.length; t++) {
        Thing thing = plain.things.get(t);
        boolean inside = thing.stow() != Stow.OUTSIDE && thing.item().goesInto().isEmpty();
        if (inside && thing.thereOn(day)) {
          taken += courses[t].unused()[day - 1][hiker] * thing.milliliters();
        }
      }
      if (taken > room) {
        return false;
      }
    }
    return true;
  }

  private boolean contained(int hiker, Course[] courses, Predicate<String> asked) {
    Set<String> kinds = new LinkedHashSet<>();
    plain.things.forEach(t -> t.item().goesInto().filter(asked).ifPresent(kinds::add));
    for (String kind : kinds) {
      for (int day = 1; day <= plain.lastDay(hiker); day++) {
        if (!contained(hiker, courses, kind, day)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean contained(int hiker, Course[] courses, String kind, int day) {
    int pieces = 0;
    long volume = 0;
    int boxes = 0;
    long inner = 0;
    for (KitItem item : plain.hiker(hiker).kit()) {
      if (item.contains().filter(c -> c.kind().equals(kind)).isPresent()) {
        boxes++;
        inner += item.contains().get().volume().milliliters();
      }
    }
    for (int t = 0; t < courses.length; t++) {
      Thing thing = plain.things.get(t);
      int held = thing.thereOn(day) ? courses[t].unused()[day - 1][hiker] : 0;
      if (thing.item().goesInto().filter(kind::equals).isPresent()) {
        pieces += held;
        volume += held * thing.milliliters();
      }
      if (held > 0 && thing.contains().filter(c -> c.kind().equals(kind)).isPresent()) {
        boxes++;
        inner += thing.contains().orElseThrow().volume().milliliters();
      }
    }
    return pieces == 0 || (boxes > 0 && volume <= inner);
  }

  Value value(Course[] courses) {
    long excess = 0;
    List<Long> steps = new ArrayList<>();
    for (int i = 0; i < plain.hikers(); i++) {
      for (int day = 1; day <= plain.lastDay(i); day++) {
        long shared = 0;
        for (Course course : courses) {
          shared += course.milligrams()[day - 1][i];
        }
        steps.add(plain.step(i, day, shared));
        excess += plain.excess(i, day, shared);
      }
    }
    steps.sort(Collections.reverseOrder());
    return new Value(excess, steps);
  }

  /** The excess that own kit alone causes. */
  long ownExcess() {
    long sum = 0;
    for (int i = 0; i < plain.hikers(); i++) {
      for (int day = 1; day <= plain.lastDay(i); day++) {
        sum += plain.excess(i, day, 0);
      }
    }
    return sum;
  }
}
