package dev.faircarry.check;

import dev.faircarry.split.CampHandover;
import java.util.List;

/** What changes hands at camps where somebody leaves. */
final class Camps {
  private final Itinerary itinerary;
  private final Goods goods;
  private final List<CampHandover> handovers;
  private final FindingList findings;

  Camps(Itinerary itinerary, Goods goods, List<CampHandover> handovers, FindingList findings) {
    this.itinerary = itinerary;
    this.goods = goods;
    this.handovers = handovers;
    this.findings = findings;
  }

  /**
   * Hands over at one camp, and sends home who leaves there.
   *
   * @param held unused units by hiker and good on the next morning
   * @param emptied used units of which the packaging is there, likewise
   */
  void after(int day, int[][] held, int[][] emptied) {
    for (CampHandover handover : handovers) {
      if (handover.afterDay() == day) {
        handOver(handover, held);
      }
    }
    for (int i = 0; i < itinerary.hikers.size(); i++) {
      if (itinerary.lastDay(i) != day || day == itinerary.days) {
        continue;
      }
      for (Goods.Good good : goods.all) {
        if (held[i][good.index()] > 0 && good.neededFrom(day + 1)) {
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
        held[i][good.index()] = 0;
        emptied[i][good.index()] = 0;
      }
    }
  }

  private void handOver(CampHandover handover, int[][] held) {
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
    } else if (handover.units() < 1 || held[from][good.get().index()] < handover.units()) {
      wrong = itinerary.name(from) + " has not so many";
    }
    if (wrong.isEmpty()) {
      int at = good.orElseThrow().index();
      held[from][at] -= handover.units();
      held[to][at] += handover.units();
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

  /** Finds handovers at camps that there are not. */
  void checkDays() {
    for (CampHandover handover : handovers) {
      if (handover.afterDay() < 1 || handover.afterDay() > itinerary.days) {
        wrongHandover(handover, "there is no camp after day " + handover.afterDay());
      }
    }
  }
}
