package dev.faircarry.app;

import dev.faircarry.check.Finding;
import dev.faircarry.check.Verdict;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Proof;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Finds the fairest split of a trip, and lets none out that the independent check refuses. */
public final class SplitTrip {
  private static final Logger LOG = LoggerFactory.getLogger(SplitTrip.class);

  private final Solver solver;
  private final Judge judge;
  private final LongSupplier nanoTime;
  private final SolveCounts counts = new SolveCounts();

  /**
   * @param nanoTime the safety clock, as {@code System.nanoTime} counts
   */
  public SplitTrip(Solver solver, Judge judge, LongSupplier nanoTime) {
    this.solver = solver;
    this.judge = judge;
    this.nanoTime = nanoTime;
  }

  /** Splits a trip that has no issues, within the effort and the safety clock. */
  public SplitResult split(Trip trip, long effortSteps) {
    return split(trip, effortSteps, Watch.NONE);
  }

  /** The same, with somebody watching who may end it. */
  public SplitResult split(Trip trip, long effortSteps, Watch watch) {
    long begun = nanoTime.getAsLong();
    try {
      SplitResult result = searched(trip, effortSteps, watch);
      counts.count(result, nanoTime.getAsLong() - begun);
      return result;
    } catch (RuntimeException | Error e) {
      counts.failed(nanoTime.getAsLong() - begun);
      throw e;
    }
  }

  /** How searches have ended so far. */
  public SolveCounts counts() {
    return counts;
  }

  private SplitResult searched(Trip trip, long effortSteps, Watch watch) {
    Watch clocked = new Deadline(nanoTime, ServiceLimits.CLOCK_SECONDS, watch);
    Outcome outcome = solver.solve(trip, effortSteps, clocked);
    if (outcome instanceof Outcome.Solved solved) {
      return checked(trip, solved);
    }
    if (outcome instanceof Outcome.Impossible impossible) {
      return new SplitResult.Impossible(
          trip, impossible.conflict(), impossible.irreducible(), impossible.effortSteps());
    }
    Outcome.Undecided undecided = (Outcome.Undecided) outcome;
    return new SplitResult.Undecided(trip, undecided.effortSteps(), undecided.cutByClock());
  }

  private SplitResult checked(Trip trip, Outcome.Solved solved) {
    Verdict verdict = judge.verdict(trip, solved.split());
    if (!verdict.keepsRules()) {
      throw refused("split", verdict.findings());
    }
    Proof proof = solved.proof().byBound(judge.levelsByBound(trip, verdict));
    List<Finding> claims = judge.claims(trip, solved.split(), verdict, proof);
    if (!claims.isEmpty()) {
      throw refused("claim", claims);
    }
    return new SplitResult.Found(trip, solved.split(), proof, verdict);
  }

  /** Only codes are logged: messages hold names and loads. */
  private static RefusedSplit refused(String what, List<Finding> findings) {
    LOG.error("refused {}: {}", what, findings.stream().map(f -> f.code().text()).toList());
    return new RefusedSplit();
  }
}
