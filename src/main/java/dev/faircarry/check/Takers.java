package dev.faircarry.check;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Who could take one more piece, everything else staying where it is. Each hiker is tried through
 * {@link SplitCheck}; nothing is searched and nothing changed.
 */
public final class Takers {
  private Takers() {}

  /**
   * One hiker.
   *
   * @param rank from 1 for who should take it; 0 for those excluded
   * @param split the split with the piece taken
   * @param verdict what it comes to
   * @param reasons each by itself a reason why this hiker cannot take it; empty for who can
   */
  public record Taker(String hiker, int rank, Split split, Verdict verdict, List<Finding> reasons) {
    public Taker {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * Every hiker: first who can take the piece, the best first, then who cannot.
   *
   * @param trip a trip without issues that has the piece
   * @param split one that leaves the piece, or units of it, with nobody
   * @param units of a counted item; 1 for anything else
   */
  public static List<Taker> of(Trip trip, Split split, PieceRef piece, int units) {
    Set<Finding> before = new HashSet<>(SplitCheck.verdict(trip, split).findings());
    Itinerary itinerary = new Itinerary(trip);
    Goods goods = new Goods(itinerary);
    Goods.Good good = goods.find(piece).orElseThrow(() -> new IllegalArgumentException("unknown"));
    List<Taker> can = new ArrayList<>();
    List<Taker> cannot = new ArrayList<>();
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      Taker taker = best(trip, itinerary, with(itinerary, good, split, i, units), i, good, before);
      (taker.reasons().isEmpty() ? can : cannot).add(taker);
    }
    can.sort(Comparator.comparing(Taker::verdict, Takers::better));
    List<Taker> all = new ArrayList<>();
    for (Taker taker : can) {
      all.add(
          new Taker(
              taker.hiker(), all.size() + 1, taker.split(), taker.verdict(), taker.reasons()));
    }
    all.addAll(cannot);
    return all;
  }

  /** Less excess over caps first, then the lexicographically smaller list of steps. */
  static int better(Verdict a, Verdict b) {
    return a.compareFairness(b);
  }

  private static Taker best(
      Trip trip,
      Itinerary itinerary,
      List<Split> ways,
      int hiker,
      Goods.Good good,
      Set<Finding> before) {
    List<Taker> tried = new ArrayList<>();
    for (Split way : ways) {
      Verdict verdict = SplitCheck.verdict(trip, way);
      List<Finding> reasons =
          verdict.findings().stream()
              .filter(f -> f.severity() == Severity.STOP && !before.contains(f))
              .filter(f -> f.code() != FindingCode.NOT_CARRIED)
              .filter(f -> !partlyPlanned(f, good))
              .toList();
      tried.add(new Taker(itinerary.hikers.get(hiker).id(), 0, way, verdict, reasons));
    }
    return tried.stream()
        .min(
            Comparator.<Taker>comparingInt(t -> t.reasons().size())
                .thenComparing(Taker::verdict, Takers::better))
        .orElseThrow();
  }

  /** The rest of the units is with nobody yet, so nobody can open them. */
  private static boolean partlyPlanned(Finding finding, Goods.Good good) {
    return finding.code() == FindingCode.OPENING_PLAN_WRONG
        && finding.hikers().isEmpty()
        && finding.pieces().equals(List.of(good.ref()));
  }

  /** The ways a hiker can take it: one, or for who leaves early one for each who stays. */
  private static List<Split> with(
      Itinerary itinerary, Goods.Good good, Split split, int hiker, int units) {
    String id = itinerary.hikers.get(hiker).id();
    List<Carry> carries = new ArrayList<>();
    int has = units;
    for (Carry carry : split.carries()) {
      if (carry.hiker().equals(id) && carry.piece().equals(good.ref())) {
        has += carry.units();
      } else {
        carries.add(carry);
      }
    }
    carries.add(new Carry(id, good.ref(), has));
    int last = itinerary.lastDay(hiker);
    List<Opened> opened = new ArrayList<>(split.opened());
    int left = units;
    if (good.usedByUnits()) {
      for (int day = 1; day <= last && left > 0; day++) {
        int open = Math.min(left, good.usedOn().get(day - 1) - openedOn(split, good, day));
        if (open > 0) {
          add(opened, new Opened(day, good.item().id(), id, open));
          left -= open;
        }
      }
    }
    if (last == itinerary.days || left == 0 || !good.neededFrom(last + 1)) {
      return List.of(new Split(carries, opened, split.handoversAtCamp()));
    }
    List<Split> ways = new ArrayList<>();
    for (int to = 0; to < itinerary.hikers.size(); to++) {
      if (itinerary.lastDay(to) == itinerary.days) {
        ways.add(handedOn(itinerary, good, split, carries, opened, hiker, to, left));
      }
    }
    return ways;
  }

  private static Split handedOn(
      Itinerary itinerary,
      Goods.Good good,
      Split split,
      List<Carry> carries,
      List<Opened> opened,
      int from,
      int to,
      int units) {
    List<CampHandover> handovers = new ArrayList<>(split.handoversAtCamp());
    String receiver = itinerary.hikers.get(to).id();
    int last = itinerary.lastDay(from);
    handovers.add(
        new CampHandover(last, itinerary.hikers.get(from).id(), receiver, good.ref(), units));
    List<Opened> all = new ArrayList<>(opened);
    int left = units;
    for (int day = last + 1; day <= itinerary.days && good.usedByUnits() && left > 0; day++) {
      int open = Math.min(left, good.usedOn().get(day - 1) - openedOn(split, good, day));
      if (open > 0) {
        add(all, new Opened(day, good.item().id(), receiver, open));
        left -= open;
      }
    }
    return new Split(carries, all, handovers);
  }

  private static int openedOn(Split split, Goods.Good good, int day) {
    return split.opened().stream()
        .filter(o -> o.day() == day && o.item().equals(good.item().id()))
        .mapToInt(Opened::units)
        .sum();
  }

  private static void add(List<Opened> opened, Opened more) {
    for (int k = 0; k < opened.size(); k++) {
      Opened o = opened.get(k);
      if (o.day() == more.day() && o.item().equals(more.item()) && o.hiker().equals(more.hiker())) {
        opened.set(k, new Opened(o.day(), o.item(), o.hiker(), o.units() + more.units()));
        return;
      }
    }
    opened.add(more);
  }
}
