package dev.faircarry.split;

import java.util.OptionalLong;

/**
 * How well a split is known to be the best.
 *
 * @param levels how many levels the list has: the hiker-mornings
 * @param provedLevels how many of them, from the highest, no split can improve
 * @param provedByBound how many of those, from the highest, follow from a bound that can be
 *     recomputed from the trip; the rest come from an exhausted search
 * @param boundSteps for the first unproved level: the step below which no split can bring it, the
 *     earlier levels being as reported; empty when all are proved
 * @param excessProved whether no split can exceed the caps by less
 * @param effortSteps search steps spent
 * @param cutByClock whether the safety clock, not the effort, ended the search; such an answer may
 *     differ between runs
 */
public record Proof(
    int levels,
    int provedLevels,
    int provedByBound,
    OptionalLong boundSteps,
    boolean excessProved,
    long effortSteps,
    boolean cutByClock) {
  public Proof {
    if (provedByBound < 0 || provedLevels < provedByBound || levels < provedLevels) {
      throw new IllegalArgumentException("0 <= provedByBound <= provedLevels <= levels");
    }
    if (boundSteps.isPresent() != (provedLevels < levels)) {
      throw new IllegalArgumentException(
          "a bound goes with the first unproved level and with nothing else");
    }
  }

  /** Whether nothing about this split can be better. */
  public boolean proved() {
    return provedLevels == levels && excessProved;
  }

  /** The same proof, with so many of its levels known to follow from bounds. */
  public Proof byBound(int levelsByBound) {
    return new Proof(
        levels,
        provedLevels,
        Math.min(levelsByBound, provedLevels),
        boundSteps,
        excessProved,
        effortSteps,
        cutByClock);
  }
}
