package dev.faircarry.app;

import dev.faircarry.check.Completed;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;

/** Judges a split somebody made, whatever it breaks. */
public final class JudgeSplit {
  private final Judge judge;

  public JudgeSplit(Judge judge) {
    this.judge = judge;
  }

  /** Fills in what the split leaves open, says so, and judges the whole. */
  public JudgedSplit judge(Trip trip, Split split) {
    Completed completed = judge.completed(trip, split);
    Verdict verdict = judge.verdict(trip, completed.split());
    return new JudgedSplit(trip, completed.split(), verdict.with(completed.assumptions()));
  }
}
