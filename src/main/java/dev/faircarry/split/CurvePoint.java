package dev.faircarry.split;

import java.util.List;

/**
 * The best split that so few handovers can reach.
 *
 * @param handovers how many pieces and units change hands
 * @param split the split, with {@code proof} saying how well it is known to be the best for that
 *     number
 * @param list who gives what to whom
 * @param steps the steps of all hiker-mornings, from highest to lowest
 * @param movedMilligrams mass that changes hands, as it is at departure
 * @param people how many hikers give or take
 */
public record CurvePoint(
    int handovers,
    Split split,
    Proof proof,
    List<Handover> list,
    List<Long> steps,
    long excessThousandths,
    long movedMilligrams,
    int people) {
  public CurvePoint {
    list = List.copyOf(list);
    steps = List.copyOf(steps);
  }
}
