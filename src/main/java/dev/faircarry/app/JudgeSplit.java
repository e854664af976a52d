package dev.faircarry.app;

import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;

/** Judges a split somebody made, whatever it breaks. */
public final class JudgeSplit {
  private final Judge judge;

  public JudgeSplit(Judge judge) {
    this.judge = judge;
  }

  public JudgedSplit judge(Trip trip, Split split) {
    return new JudgedSplit(trip, split, judge.verdict(trip, split));
  }
}
