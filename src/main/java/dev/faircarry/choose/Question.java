package dev.faircarry.choose;

import java.util.List;
import java.util.OptionalLong;

/**
 * What can be taken, what must be met, and what may be spent.
 *
 * @param candidates in a fixed order: shared items, kits, offers
 * @param needs those asked for, and those that only something taken asks for
 */
public record Question(
    List<Candidate> candidates, List<Required> needs, OptionalLong budgetHundredths) {
  public Question {
    candidates = List.copyOf(candidates);
    needs = List.copyOf(needs);
  }

  /** The choice that changes nothing: all that is there, nothing else. */
  public List<Integer> present() {
    return candidates.stream().map(Candidate::present).toList();
  }

  /** Mass of a choice, in milligrams. */
  public long massMilligrams(List<Integer> counts) {
    long sum = 0;
    for (int i = 0; i < candidates.size(); i++) {
      sum += counts.get(i) * candidates.get(i).massMilligrams();
    }
    return sum;
  }

  /** Money a choice costs, in hundredths. */
  public long priceHundredths(List<Integer> counts) {
    long sum = 0;
    for (int i = 0; i < candidates.size(); i++) {
      sum += counts.get(i) * candidates.get(i).priceHundredths();
    }
    return sum;
  }
}
