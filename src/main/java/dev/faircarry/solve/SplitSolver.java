package dev.faircarry.solve;

import dev.faircarry.split.Outcome;
import dev.faircarry.split.Proof;
import dev.faircarry.trip.Trip;
import java.util.Arrays;
import java.util.OptionalLong;

/** Searches for the fairest split of a trip; the answer is a function of trip and effort. */
public final class SplitSolver {
  private static final long NODES = 500_000;
  private static final long TIE_STEPS = 500_000;

  private SplitSolver() {}

  /**
   * Searches for the fairest split.
   *
   * @param trip a trip without issues
   * @param effortSteps search steps it may spend
   * @param watch told of progress, and asked whether to stop
   */
  public static Outcome solve(Trip trip, long effortSteps, Watch watch) {
    Effort effort = new Effort(effortSteps, watch);
    Model m = ModelBuilder.of(trip);
    State state = new State(m);
    if (m.contradictory || !new Construction(state, effort, new Dice(1)).build()) {
      state = new State(m);
      RuleModel.Verdict verdict = RuleModel.find(state, NODES, effort);
      if (verdict == RuleModel.Verdict.UNKNOWN) {
        return new Outcome.Undecided(effort.spent(), effort.cutByClock());
      }
      if (verdict == RuleModel.Verdict.NONE) {
        Conflict.Found found =
            Conflict.of(Conflict.demands(trip), active -> ModelBuilder.of(trip, active), effort);
        return new Outcome.Impossible(found.demands(), found.irreducible(), effort.spent());
      }
    }
    Search search = new Search(state, effort);
    search.run();
    int[] none = new int[m.blocks.size()];
    Arrays.fill(none, State.NOBODY);
    new Ties(state, none, new Effort(TIE_STEPS, watch)).settle();
    return solved(m, state, search, effort);
  }

  private static Outcome solved(Model m, State state, Search search, Effort effort) {
    int levels = m.mornings();
    OptionalLong boundSteps =
        search.provedLevels() < levels
            ? OptionalLong.of(search.boundSteps())
            : OptionalLong.empty();
    Proof proof =
        new Proof(
            levels,
            search.provedLevels(),
            0,
            boundSteps,
            search.excessProved(),
            effort.spent(),
            effort.cutByClock());
    return new Outcome.Solved(SplitOf.write(m, state.holder), proof);
  }
}
