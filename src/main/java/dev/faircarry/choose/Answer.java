package dev.faircarry.choose;

import java.util.List;
import java.util.Optional;

/** What came of asking what to take. */
public sealed interface Answer {

  /** Search steps spent; the answer is a function of the question and the steps allowed. */
  long effortSteps();

  /**
   * Every choice that no other beats in both mass and money.
   *
   * @param frontier from the lightest to the cheapest; of equal choices the one that changes least
   * @param complete whether it is proved that nothing is missing; otherwise the effort ended, and
   *     what is named is proved
   * @param massStepMilligrams masses are compared in whole steps of this, each mass rounded half up
   *     to it; 1 is exact
   * @param chosen the lightest within the budget; empty when the budget lies below the cheapest
   * @param start what the swaps are measured against: the lightest for the least money
   * @param swaps what single purchases would save, most grams for the money first
   * @param cutByClock whether the safety clock ended the search; such an answer may differ between
   *     runs
   */
  record Choices(
      List<Point> frontier,
      boolean complete,
      long massStepMilligrams,
      Optional<Point> chosen,
      Point start,
      List<Swap> swaps,
      long effortSteps,
      boolean cutByClock)
      implements Answer {
    public Choices {
      frontier = List.copyOf(frontier);
      swaps = List.copyOf(swaps);
    }
  }

  /**
   * No choice meets the needs.
   *
   * @param needs needs that cannot be met together
   * @param shortfalls those that cannot be met even when everything is taken
   * @param irreducible whether it is proved that leaving out any one of the needs would help
   */
  record Unmeetable(
      List<String> needs, List<Shortfall> shortfalls, boolean irreducible, long effortSteps)
      implements Answer {
    public Unmeetable {
      needs = List.copyOf(needs);
      shortfalls = List.copyOf(shortfalls);
    }
  }

  /**
   * There are more things to choose among than are chosen among here.
   *
   * @param most how many there may be
   */
  record TooLarge(int candidates, int most) implements Answer {
    @Override
    public long effortSteps() {
      return 0;
    }
  }

  /** The effort ended before a choice was found or excluded. */
  record Undecided(long effortSteps, boolean cutByClock) implements Answer {}
}
