package dev.faircarry.check;

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
    this.findings = findings;
    int n = itinerary.hikers.size();
    held = new int[itinerary.days + 2][n][goods.all.size()];
    emptied = new int[itinerary.days + 2][n][goods.all.size()];
    holders = new int[goods.all.size()][itinerary.days + 2][0];
    opened = new ArrayList<>(split.opened());
    opened.forEach(this::enter);
    new Departing(itinerary, goods, findings).give(split.carries(), held[1]);
    Camps camps = new Camps(itinerary, goods, split.handoversAtCamp(), findings);
    for (int day = 1; day <= itinerary.days; day++) {
      List<Opened> assumed = missing.isPresent() ? missing.get().on(day, this) : List.<Opened>of();
      opened.addAll(assumed);
      assumed.forEach(this::enter);
      openOn(day);
      camps.after(day, held[day + 1], emptied[day + 1]);
    }
    checkNames();
    camps.checkDays();
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

  /** Entries of the opening plan that no day of the trip took up. */
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
  }
}
