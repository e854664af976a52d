package dev.faircarry.check;

import dev.faircarry.split.Carry;
import java.util.List;

/** Gives out at departure what a split says, and finds what is with nobody or with too many. */
final class Departing {
  private final Itinerary itinerary;
  private final Goods goods;
  private final FindingList findings;

  Departing(Itinerary itinerary, Goods goods, FindingList findings) {
    this.itinerary = itinerary;
    this.goods = goods;
    this.findings = findings;
  }

  /**
   * Gives out.
   *
   * @param held units by hiker and good, to be filled
   */
  void give(List<Carry> carries, int[][] held) {
    for (Carry carry : carries) {
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
        int[] of = held[hiker];
        int at = good.get().index();
        of[at] = (int) Math.min(Integer.MAX_VALUE / 4, (long) of[at] + carry.units());
      }
    }
    for (Goods.Good good : goods.all) {
      long carried = 0;
      for (int[] pack : held) {
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
            holders(good, held),
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

  private List<String> holders(Goods.Good good, int[][] held) {
    return itinerary.hikers.stream()
        .filter(h -> held[itinerary.index(h.id())][good.index()] > 0)
        .map(h -> h.id())
        .toList();
  }
}
