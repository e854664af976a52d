package dev.faircarry.check;

import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What there is to hand out, and what a unit of each weighs on each morning.
 *
 * @param lines in the trip's order
 */
public record PieceSheet(List<Line> lines) {
  public PieceSheet {
    lines = List.copyOf(lines);
  }

  /**
   * One kind of thing that is handed out.
   *
   * @param units how many there are; 1 for a whole item or a part
   * @param unitMilligrams of an unused unit on each morning, day 1 first; 0 where it is not there
   * @param usedOn units used on each day, day 1 first; empty for what is not used by units
   * @param leavesMilligrams what a used unit leaves; 0 for what is not used by units
   */
  public record Line(
      PieceRef piece,
      int units,
      List<Long> unitMilligrams,
      List<Integer> usedOn,
      long leavesMilligrams) {
    public Line {
      unitMilligrams = List.copyOf(unitMilligrams);
      usedOn = List.copyOf(usedOn);
    }
  }

  /** The sheet of a trip without issues. */
  public static PieceSheet of(Trip trip) {
    return new PieceSheet(
        new Goods(new Itinerary(trip)).all.stream().map(good -> line(good, trip.days())).toList());
  }

  private static Line line(Goods.Good good, int days) {
    return new Line(
        good.ref(),
        good.count(),
        IntStream.rangeClosed(1, days).mapToObj(good::massOn).toList(),
        good.usedOn(),
        good.usedByUnits() ? good.leavesMilligrams() : 0);
  }
}
