package dev.faircarry.check;

import dev.faircarry.trip.PieceRef;
import java.util.List;

/**
 * Something found in a split.
 *
 * @param hikers ids of those concerned, possibly none
 * @param pieces what is concerned, possibly nothing
 * @param rules ids of the rules concerned, possibly none
 * @param days days on whose mornings it holds, in order; empty when it does not depend on the day
 * @param message one sentence with names and numbers
 * @param remedy one sentence that says what to do
 */
public record Finding(
    FindingCode code,
    Severity severity,
    List<String> hikers,
    List<PieceRef> pieces,
    List<String> rules,
    List<Integer> days,
    String message,
    String remedy) {
  public Finding {
    hikers = List.copyOf(hikers);
    pieces = List.copyOf(pieces);
    rules = List.copyOf(rules);
    days = List.copyOf(days);
  }
}
