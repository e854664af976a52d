package dev.faircarry.choose;

import java.util.List;

/**
 * A choice that meets every need.
 *
 * @param counts of each candidate, in the question's order
 * @param massMilligrams of all candidates taken
 * @param priceHundredths to be paid
 */
public record Point(List<Integer> counts, long massMilligrams, long priceHundredths) {
  public Point {
    counts = List.copyOf(counts);
  }

  /** A choice with its sums. */
  public static Point of(Question question, List<Integer> counts) {
    return new Point(counts, question.massMilligrams(counts), question.priceHundredths(counts));
  }
}
