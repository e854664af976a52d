package dev.faircarry.check;

import dev.faircarry.trip.PieceRef;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Collects who breaks a rule with what on which mornings. */
final class Breach {
  private final Itinerary itinerary;
  private final Set<String> hikers = new LinkedHashSet<>();
  private final Set<PieceRef> pieces = new LinkedHashSet<>();
  private final Set<Integer> days = new TreeSet<>();
  private final Set<String> names = new LinkedHashSet<>();
  private final Set<String> things = new LinkedHashSet<>();

  Breach(Itinerary itinerary) {
    this.itinerary = itinerary;
  }

  /** Notes that a hiker has on a day what the rule forbids. */
  void add(int hiker, Goods.Good good, int day) {
    hikers.add(itinerary.hikers.get(hiker).id());
    names.add(itinerary.name(hiker));
    if (pieces.add(good.ref())) {
      things.add(Words.of(good));
    }
    days.add(day);
  }

  /** Tells of it, if there is anything to tell; whether there was. */
  boolean report(
      FindingList findings, FindingCode code, List<String> rules, String verb, String remedy) {
    if (days.isEmpty()) {
      return false;
    }
    List<Integer> list = List.copyOf(days);
    String message =
        String.join(", ", names)
            + " "
            + verb
            + " "
            + String.join(", ", things)
            + " "
            + Words.days(list)
            + ".";
    findings.add(
        new Finding(
            code,
            Severity.STOP,
            List.copyOf(hikers),
            List.copyOf(pieces),
            rules,
            list,
            message,
            remedy));
    return true;
  }
}
