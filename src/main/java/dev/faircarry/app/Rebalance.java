package dev.faircarry.app;

import dev.faircarry.check.Issue;
import dev.faircarry.check.TripIssues;
import dev.faircarry.check.Verdict;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Curve;
import dev.faircarry.split.CurveOutcome;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import dev.faircarry.trip.change.Changed;
import dev.faircarry.trip.change.TripChanging;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** After a change of plans: how much fairness each further handover buys. */
public final class Rebalance {
  private static final Logger LOG = LoggerFactory.getLogger(Rebalance.class);

  private final Rebalancer rebalancer;
  private final Judge judge;
  private final LongSupplier nanoTime;

  /**
   * @param nanoTime the safety clock, as {@code System.nanoTime} counts
   */
  public Rebalance(Rebalancer rebalancer, Judge judge, LongSupplier nanoTime) {
    this.rebalancer = rebalancer;
    this.judge = judge;
    this.nanoTime = nanoTime;
  }

  /**
   * A question.
   *
   * @param trip the trip the split was made for, without issues
   * @param earlier who carries what so far
   * @param frozen pieces that are packed already and stay where they are
   * @param maxHandovers picks the last point with at most so many
   */
  public record Asked(
      Trip trip,
      Split earlier,
      List<Change> changes,
      Set<PieceRef> frozen,
      OptionalInt maxHandovers) {
    public Asked {
      changes = List.copyOf(changes);
      frozen = Set.copyOf(frozen);
    }
  }

  /** Makes the changes and works out the trade-off. */
  public Rebalanced rebalance(Asked asked, long effortSteps) {
    Changed changed = TripChanging.apply(asked.trip(), asked.changes());
    if (changed instanceof Changed.Refused refused) {
      return new Rebalanced.Refused(refused.faults());
    }
    Changed.Made made = (Changed.Made) changed;
    List<Issue> issues = TripIssues.of(made.trip());
    if (!issues.isEmpty()) {
      return new Rebalanced.Unfit(issues);
    }
    Watch clock = new Deadline(nanoTime, ServiceLimits.CLOCK_SECONDS, Watch.NONE);
    CurveOutcome outcome =
        rebalancer.curve(
            made.trip(), asked.earlier(), asked.frozen(), Limits.PIECES, effortSteps, clock);
    if (outcome instanceof CurveOutcome.Impossible none) {
      return new Rebalanced.Impossible(
          made.trip(), made.notes(), none.conflict(), none.irreducible(), none.effortSteps());
    }
    if (outcome instanceof CurveOutcome.Undecided none) {
      return new Rebalanced.Undecided(
          made.trip(), made.notes(), none.effortSteps(), none.cutByClock());
    }
    return found(asked, made, (CurveOutcome.Found) outcome);
  }

  private Rebalanced found(Asked asked, Changed.Made made, CurveOutcome.Found outcome) {
    Curve curve = AsGiven.in(made.trip(), asked.earlier(), outcome.curve(), judge);
    List<Verdict> verdicts = new ArrayList<>();
    List<List<String>> sentences = new ArrayList<>();
    HandoverWords words = new HandoverWords(asked.trip(), made.trip());
    for (CurvePoint point : curve.points()) {
      Verdict verdict = judge.verdict(made.trip(), point.split());
      if (!verdict.keepsRules() || !verdict.steps().equals(point.steps())) {
        LOG.error("refused point: {}", verdict.findings().stream().map(f -> f.code()).toList());
        throw new RefusedSplit();
      }
      verdicts.add(verdict);
      sentences.add(point.list().stream().map(words::of).toList());
    }
    int chosen = chosen(curve, asked.maxHandovers());
    return new Rebalanced.Found(
        made.trip(),
        made.notes(),
        curve,
        verdicts,
        sentences,
        chosen,
        words.reason(curve, asked.maxHandovers(), chosen),
        outcome.effortSteps(),
        outcome.cutByClock());
  }

  /** The last point within the bound; the first if even that needs more. */
  private static int chosen(Curve curve, OptionalInt maxHandovers) {
    if (maxHandovers.isEmpty()) {
      return curve.recommended();
    }
    int chosen = 0;
    for (int p = 0; p < curve.points().size(); p++) {
      if (curve.points().get(p).handovers() <= maxHandovers.getAsInt()) {
        chosen = p;
      }
    }
    return chosen;
  }
}
