package dev.faircarry.app;

import dev.faircarry.check.Bounds;
import dev.faircarry.check.ClaimCheck;
import dev.faircarry.check.Completed;
import dev.faircarry.check.Finding;
import dev.faircarry.check.SplitCheck;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Trip;
import java.util.List;

/** The judge of the service: the independent check. */
public final class Checked implements Judge {
  @Override
  public Verdict verdict(Trip trip, Split split) {
    return SplitCheck.verdict(trip, split);
  }

  @Override
  public Completed completed(Trip trip, Split split) {
    return SplitCheck.completed(trip, split);
  }

  @Override
  public List<Finding> claims(Trip trip, Split split, Verdict verdict, Proof proof) {
    return ClaimCheck.of(trip, verdict, proof);
  }

  @Override
  public int levelsByBound(Trip trip, Verdict verdict) {
    return Bounds.provedLevels(trip, verdict.steps());
  }
}
