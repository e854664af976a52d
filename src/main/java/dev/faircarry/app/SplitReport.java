package dev.faircarry.app;

import dev.faircarry.check.Finding;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A split with names in place of ids, as people read it.
 *
 * @param openings one line for each day and thing
 * @param handovers one line for each camp, giver and taker
 * @param worst the heaviest hiker-morning
 * @param findings everything the check found
 */
public record SplitReport(
    String tripName,
    int days,
    List<Person> people,
    List<String> openings,
    List<String> handovers,
    Optional<Worst> worst,
    List<OverCap> overCap,
    List<Finding> findings) {
  public SplitReport {
    people = List.copyOf(people);
    openings = List.copyOf(openings);
    handovers = List.copyOf(handovers);
    overCap = List.copyOf(overCap);
    findings = List.copyOf(findings);
  }

  /** The report of a split that was found. */
  public static SplitReport of(SplitResult.Found found) {
    return of(found.trip(), found.split(), found.verdict());
  }

  /** The report of a split that somebody made. */
  public static SplitReport of(JudgedSplit judged) {
    return of(judged.trip(), judged.split(), judged.verdict());
  }

  private static SplitReport of(Trip trip, Split split, Verdict verdict) {
    return new SplitReport(
        trip.name(),
        trip.days(),
        people(trip, split, verdict.hikers()),
        openings(trip, split),
        handovers(trip, split),
        Worst.of(trip, verdict),
        OverCap.of(trip, verdict),
        verdict.findings());
  }

  /** A hiker and the names of what they carry, the number before counted units. */
  public record Person(String name, HikerLoads loads, List<String> pieces) {
    public Person {
      pieces = List.copyOf(pieces);
    }
  }

  private static List<Person> people(Trip trip, Split split, List<HikerLoads> loads) {
    TripNames names = new TripNames(trip);
    List<Person> people = new ArrayList<>();
    for (HikerLoads each : loads) {
      List<String> pieces = new ArrayList<>();
      for (Carry carry : split.carries()) {
        if (carry.hiker().equals(each.hiker())) {
          pieces.add(piece(names, carry.piece(), carry.units()));
        }
      }
      people.add(new Person(names.hiker(each.hiker()), each, pieces));
    }
    return people;
  }

  /** By day and thing: from whose packs the units of that day come. */
  private static List<String> openings(Trip trip, Split split) {
    TripNames names = new TripNames(trip);
    Map<String, List<String>> from = new LinkedHashMap<>();
    for (Opened o : split.opened()) {
      from.computeIfAbsent(
              "day " + o.day() + ", " + names.piece(PieceRef.item(o.item())) + ": ",
              key -> new ArrayList<>())
          .add(o.units() + " from " + names.hiker(o.hiker()));
    }
    return from.entrySet().stream()
        .map(entry -> entry.getKey() + String.join(", ", entry.getValue()))
        .toList();
  }

  /** By camp and pair of hikers. */
  private static List<String> handovers(Trip trip, Split split) {
    TripNames names = new TripNames(trip);
    Map<String, List<String>> handed = new LinkedHashMap<>();
    for (CampHandover h : split.handoversAtCamp()) {
      handed
          .computeIfAbsent(
              "camp of day "
                  + h.afterDay()
                  + ", "
                  + names.hiker(h.from())
                  + " to "
                  + names.hiker(h.to())
                  + ": ",
              key -> new ArrayList<>())
          .add(piece(names, h.piece(), h.units()));
    }
    return handed.entrySet().stream()
        .map(entry -> entry.getKey() + String.join("; ", entry.getValue()))
        .toList();
  }

  private static String piece(TripNames names, PieceRef piece, int units) {
    return units == 1 ? names.piece(piece) : units + " × " + names.piece(piece);
  }
}
