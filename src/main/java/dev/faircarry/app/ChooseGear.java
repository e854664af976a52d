package dev.faircarry.app;

import dev.faircarry.check.Verdict;
import dev.faircarry.choose.Answer;
import dev.faircarry.choose.Applied;
import dev.faircarry.choose.Asking;
import dev.faircarry.choose.Coverage;
import dev.faircarry.choose.Doubled;
import dev.faircarry.choose.Point;
import dev.faircarry.choose.Question;
import dev.faircarry.solve.Watch;
import dev.faircarry.solve.take.Chooser;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import dev.faircarry.trip.Trip;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** What to take, and what that does to the fairest split. */
public final class ChooseGear {
  private static final long NANOGRAMS_PER_MILLIGRAM = 1_000_000;

  private final Solver solver;
  private final Judge judge;

  public ChooseGear(Solver solver, Judge judge) {
    this.solver = solver;
    this.judge = judge;
  }

  /**
   * What was found.
   *
   * @param doubles needs that what is there meets more often than asked
   * @param applied the trip after the choice within the budget
   * @param effect what the choice does to the split, where that was asked for
   */
  public record Found(
      Question question,
      Answer answer,
      List<Doubled> doubles,
      Optional<Applied> applied,
      Optional<Effect> effect) {
    public Found {
      doubles = List.copyOf(doubles);
    }
  }

  /** The fairest split before and after the choice. */
  public record Effect(Side before, Side after) {}

  /**
   * One side of it.
   *
   * @param kind what came of asking for the split
   * @param worst the worst hiker-morning of a split
   * @param proved whether no split has a better worst one
   */
  public record Side(Kind kind, Optional<Worst> worst, boolean proved) {
    /** What came of asking for a split. */
    public enum Kind {
      SOLVED,
      IMPOSSIBLE,
      UNDECIDED
    }
  }

  /**
   * Chooses.
   *
   * @param trip one without issues
   * @param effortSteps search steps for the choice
   * @param splitSteps search steps for each of the two splits; 0 when they are not asked for
   * @param outOfTime asked often, whether to stop with what is proved by then
   */
  public Found choose(Trip trip, long effortSteps, long splitSteps, BooleanSupplier outOfTime) {
    Watch watch = new Clock(outOfTime);
    Question question = Asking.of(trip);
    Answer answer = Chooser.answer(question, effortSteps, watch);
    Optional<Applied> applied = Optional.empty();
    if (answer instanceof Answer.Choices choices) {
      choices.frontier().forEach(point -> recheck(question, point));
      applied = choices.chosen().map(point -> Applied.to(trip, question, point));
    }
    Optional<Effect> effect =
        splitSteps <= 0
            ? Optional.empty()
            : applied.map(
                after ->
                    new Effect(
                        side(trip, splitSteps, watch), side(after.trip(), splitSteps, watch)));
    return new Found(question, answer, Doubled.in(question), applied, effect);
  }

  private record Clock(BooleanSupplier outOfTime) implements Watch {
    @Override
    public Signal signal() {
      return outOfTime.getAsBoolean() ? Signal.STOP_BY_CLOCK : Signal.GO_ON;
    }

    @Override
    public void progress(Progress progress) {}
  }

  /** No choice leaves unchecked. */
  private static void recheck(Question question, Point point) {
    boolean good =
        Coverage.inBounds(question, point.counts())
            && Coverage.shortfalls(question, point.counts()).isEmpty()
            && Point.of(question, point.counts()).equals(point);
    if (!good) {
      throw new IllegalStateException("a choice does not meet the needs it was made for");
    }
  }

  private Side side(Trip trip, long steps, Watch watch) {
    Outcome outcome = solver.solve(trip, steps, watch);
    if (outcome instanceof Outcome.Impossible) {
      return new Side(Side.Kind.IMPOSSIBLE, Optional.empty(), true);
    }
    if (outcome instanceof Outcome.Solved solved) {
      Verdict verdict = judge.verdict(trip, solved.split());
      if (!verdict.keepsRules()) {
        throw new IllegalStateException("a split breaks the rules it was made for");
      }
      return new Side(
          Side.Kind.SOLVED,
          Worst.of(trip, verdict),
          solved.proof().excessProved() && solved.proof().provedLevels() > 0);
    }
    return new Side(Side.Kind.UNDECIDED, Optional.empty(), false);
  }

  /**
   * The ratio in thousandths of target, rounded up, so that what is above never looks on target.
   */
  public static long ratioThousandths(Worst worst) {
    BigInteger counted =
        BigInteger.valueOf(worst.countedMilligrams())
            .multiply(BigInteger.valueOf(NANOGRAMS_PER_MILLIGRAM * 1000));
    BigInteger target = BigInteger.valueOf(worst.targetNanograms());
    return counted.add(target).subtract(BigInteger.ONE).divide(target).longValueExact();
  }
}
