package dev.faircarry.check;

import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Follows a split from morning to morning: who holds how many unused units of what, and whose pack
 * has used-up packaging.
 */
final class Holdings {
  private final Itinerary itinerary;
  private final Goods goods;
  private final Split split;
  private final FindingList findings;

  /** Unused units by day (from 1), hiker and good: whoever sums up a pack reads one row. */
  private final int[][][] held;

  /** Used units whose packaging is with a hiker, likewise. */
  private final int[][][] emptied;

  /** Looked up by every rule, so found once. */
  private final int[][][] holders;

  /** Every entry of the opening plan, with what was assumed. */
  private final List<Opened> opened;

  private final Map<DayAndItem, List<Opened>> openedOn = new HashMap<>();

  private record DayAndItem(int day, String item) {}

  Holdings(Itinerary itinerary, Goods goods, Split split, FindingList findings) {
    this(itinerary, goods, split, findings, Optional.empty());
  }

  /**
   * @param missing fills in the opening plan of items that the split says nothing about
   */
  Holdings(
      Itinerary itinerary,
      Goods goods,
      Split split,
      FindingList findings,
      Optional<DefaultOpening> missing) {
    this.itinerary = itinerary;
    this.goods = goods;
    this.split = split;
    this.findings = findings;
    int n = itinerary.hikers.size();
    held = new int[itinerary.days + 2][n][goods.all.size()];
    emptied = new int[itinerary.days + 2][n][goods.all.size()];
    holders = new int[goods.all.size()][itinerary.days + 2][0];
    opened = new ArrayList<>(split.opened());
    opened.forEach(this::enter);
    depart();
    for (int day = 1; day <= itinerary.days; day++) {
      List<Opened> assumed = missing.isPresent() ? missing.get().on(day, this) : List.<Opened>of();
      opened.addAll(assumed);
      assumed.forEach(this::enter);
      openOn(day);
      campAfter(day);
    }
    checkNames();
  }

  private void enter(Opened entry) {
    openedOn
        .computeIfAbsent(new DayAndItem(entry.day(), entry.item()), key -> new ArrayList<>())
        .add(entry);
  }

  List<Opened> opened() {
    return opened;
  }

  int held(Goods.Good good, int day, int hiker) {
    return held[day][hiker][good.index()];
  }

  int emptied(Goods.Good good, int day, int hiker) {
    return emptied[day][hiker][good.index()];
  }

  /** Hikers with unused units of a good that still matter on a morning, in the trip's order. */
  int[] holding(Goods.Good good, int day) {
    int[] known = holders[good.index()][day];
    if (known.length == 0 && good.neededFrom(day)) {
      known =
          IntStream.range(0, itinerary.hikers.size()).filter(i -> held(good, day, i) > 0).toArray();
      holders[good.index()][day] = known;
    }
    return known;
  }

  private void depart() {
    for (Carry carry : split.carries()) {
      int hiker = itinerary.index(carry.hiker());
      var good = goods.find(carry.piece());
      if (hiker < 0) {
        findings.stop(
            FindingCode.UNKNOWN_HIKER,
            List.of(),
            List.of(carry.piece()),
            "The split gives "
                + carry.piece()
                + " to “"
                + carry.hiker()
                + "”, who is not on the trip.",
            "Give it to somebody on the trip.");
      } else if (good.isEmpty()) {
        findings.stop(
            FindingCode.UNKNOWN_PIECE,
            List.of(carry.hiker()),
            List.of(carry.piece()),
            itinerary.name(hiker)
                + " is to carry “"
                + carry.piece()
                + "”, which the trip does not have.",
            "Name a shared item, one of its parts, or a counted item.");
      } else if (carry.units() < 1) {
        findings.stop(
            FindingCode.UNKNOWN_PIECE,
            List.of(carry.hiker()),
            List.of(carry.piece()),
            itinerary.name(hiker) + " is to carry " + carry.units() + " of " + carry.piece() + ".",
            "Give at least one unit, or leave the entry out.");
      } else {
        int[] of = held[1][hiker];
        int at = good.get().index();
        of[at] = (int) Math.min(Integer.MAX_VALUE / 4, (long) of[at] + carry.units());
      }
    }
    for (Goods.Good good : goods.all) {
      long carried = 0;
      for (int[] pack : held[1]) {
        carried += pack[good.index()];
      }
      if (carried < good.count()) {
        findings.stop(
            FindingCode.NOT_CARRIED,
            List.of(),
            List.of(good.ref()),
            good.count() == 1
                ? "Nobody carries " + Words.of(good) + "."
                : (good.count() - carried)
                    + " of "
                    + good.count()
                    + " units of "
                    + Words.of(good)
                    + " are with nobody.",
            "Give it to somebody.");
      } else if (carried > good.count()) {
        findings.stop(
            FindingCode.CARRIED_TWICE,
            holders(good, 1),
            List.of(good.ref()),
            Words.of(good)
                + ": "
                + carried
                + " are given out, but there "
                + (good.count() == 1 ? "is 1." : "are " + good.count() + "."),
            "Leave it with one hiker only, or correct the units.");
      }
    }
  }

  private List<String> holders(Goods.Good good, int day) {
    return itinerary.hikers.stream()
        .filter(h -> held(good, day, itinerary.index(h.id())) > 0)
        .map(h -> h.id())
        .toList();
  }

  /** Uses up what the opening plan says and carries everything over to the next morning. */
  private void openOn(int day) {
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      System.arraycopy(held[day][i], 0, held[day + 1][i], 0, goods.all.size());
      System.arraycopy(emptied[day][i], 0, emptied[day + 1][i], 0, goods.all.size());
    }
    for (Goods.Good good : goods.all) {
      if (good.usedByUnits()) {
        open(good, day);
      }
    }
  }

  private void open(Goods.Good good, int day) {
    int[][] next = held[day + 1];
    int at = good.index();
    long units = 0;
    for (Opened entry : openedOn.getOrDefault(new DayAndItem(day, good.item().id()), List.of())) {
      int hiker = itinerary.index(entry.hiker());
      if (hiker < 0) {
        continue;
      }
      units += entry.units();
      if (!itinerary.present(hiker, day) || entry.units() < 1 || entry.units() > next[hiker][at]) {
        wrongOpening(
            good,
            day,
            itinerary.name(hiker)
                + " is to open "
                + entry.units()
                + " on day "
                + day
                + " but has "
                + (itinerary.present(hiker, day) ? next[hiker][at] : "left by then")
                + ".",
            List.of(entry.hiker()));
        continue;
      }
      next[hiker][at] -= entry.units();
      emptied[day + 1][hiker][at] += entry.units();
    }
    int wanted = good.usedOn().get(day - 1);
    if (units != wanted) {
      wrongOpening(
          good,
          day,
          wanted + " are used on day " + day + ", but the opening plan opens " + units + ".",
          List.of());
    }
  }

  private void wrongOpening(Goods.Good good, int day, String what, List<String> hikers) {
    findings.stop(
        FindingCode.OPENING_PLAN_WRONG,
        hikers,
        List.of(good.ref()),
        List.of(day),
        Words.of(good) + ": " + what,
        "Open exactly what the day uses, from hikers present who have it.");
  }

  private void campAfter(int day) {
    for (CampHandover handover : split.handoversAtCamp()) {
      if (handover.afterDay() == day) {
        handOver(handover);
      }
    }
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      if (itinerary.lastDay(i) != day || day == itinerary.days) {
        continue;
      }
      for (Goods.Good good : goods.all) {
        if (held[day + 1][i][good.index()] > 0 && good.neededFrom(day + 1)) {
          findings.stop(
              FindingCode.CAMP_HANDOVER_WRONG,
              List.of(itinerary.hikers.get(i).id()),
              List.of(good.ref()),
              List.of(day),
              itinerary.name(i)
                  + " leaves after day "
                  + day
                  + " with "
                  + Words.of(good)
                  + ", which is still needed.",
              "Hand it at that camp to somebody who stays.");
        }
        held[day + 1][i][good.index()] = 0;
        emptied[day + 1][i][good.index()] = 0;
      }
    }
  }

  private void handOver(CampHandover handover) {
    int from = itinerary.index(handover.from());
    int to = itinerary.index(handover.to());
    var good = goods.find(handover.piece());
    int day = handover.afterDay();
    String wrong = "";
    if (from < 0 || to < 0 || good.isEmpty()) {
      wrong = "names somebody or something that is not on the trip";
    } else if (itinerary.lastDay(from) != day) {
      wrong = itinerary.name(from) + " does not leave after day " + day;
    } else if (!itinerary.present(to, day + 1)) {
      wrong = itinerary.name(to) + " is not there on the next morning";
    } else if (!good.get().neededFrom(day + 1)) {
      wrong = "nobody needs it any more";
    } else if (handover.units() < 1 || held[day + 1][from][good.get().index()] < handover.units()) {
      wrong = itinerary.name(from) + " has not so many";
    }
    if (wrong.isEmpty()) {
      int at = good.orElseThrow().index();
      held[day + 1][from][at] -= handover.units();
      held[day + 1][to][at] += handover.units();
    } else {
      wrongHandover(handover, wrong);
    }
  }

  private void wrongHandover(CampHandover handover, String why) {
    findings.stop(
        FindingCode.CAMP_HANDOVER_WRONG,
        List.of(handover.from(), handover.to()),
        List.of(handover.piece()),
        List.of(handover.afterDay()),
        "The handover of "
            + handover.piece()
            + " after day "
            + handover.afterDay()
            + " cannot be: "
            + why
            + ".",
        "Hand over, at the camp where somebody leaves, what that hiker holds and others still need.");
  }

  /** Entries of the opening plan and handovers that no day of the trip took up. */
  private void checkNames() {
    for (Opened entry : opened) {
      var good = goods.find(PieceRef.item(entry.item()));
      boolean known = good.isPresent() && good.get().usedByUnits();
      if (!known
          || itinerary.index(entry.hiker()) < 0
          || entry.day() < 1
          || entry.day() > itinerary.days) {
        findings.stop(
            FindingCode.OPENING_PLAN_WRONG,
            List.of(),
            List.of(PieceRef.item(entry.item())),
            "The opening plan opens "
                + entry.units()
                + " of “"
                + entry.item()
                + "” on day "
                + entry.day()
                + " from “"
                + entry.hiker()
                + "”: no such day, hiker or item used by the day.",
            "Name a counted item used by the day, a day of the trip and somebody on it.");
      }
    }
    for (CampHandover handover : split.handoversAtCamp()) {
      if (handover.afterDay() < 1 || handover.afterDay() > itinerary.days) {
        wrongHandover(handover, "there is no camp after day " + handover.afterDay());
      }
    }
  }
}
