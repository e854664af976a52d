package dev.faircarry.solve;

import java.util.Arrays;
import java.util.Optional;

/**
 * The best split within a number of handovers, and how far it is proved; asked for one number after
 * the other.
 */
final class BudgetSearch {
  private static final int LISTS = 200_000;
  private static final long STEPS = 1_500_000;
  private static final int MOST_EXHAUSTIBLE = 30;
  private static final long NODES = 100_000;

  /**
   * With more blocks times hikers no exact search comes to its end on whether so few handovers are
   * enough; the next number is tried instead.
   */
  private static final int MOST_CELLS = 250;

  private final Model m;
  private final Moves moves;
  private final Effort effort;
  private final Bound bound;
  private final Exchange.Value goal;
  private final boolean goalProved;
  private final int goalLevels;
  private final int[][] goalRoutes;
  private final int goalMoves;
  private final boolean whole;
  private final int[] everybody;
  private State state;
  private boolean started;
  private boolean excluded;
  private int provedLevels;
  private boolean excessProved;

  /**
   * @param free the best split that any number of handovers reaches, and {@code best} how far it is
   *     proved
   */
  BudgetSearch(Model m, Moves moves, State free, Search best, Effort effort) {
    this.m = m;
    this.moves = moves;
    this.effort = effort;
    bound = new Bound(m);
    goal = Exchange.Value.of(free);
    goalLevels = best.excessProved() ? best.provedLevels() : 0;
    goalProved = goalLevels == m.mornings();
    goalRoutes = free.routes();
    goalMoves = moves.count(free);
    everybody = new int[m.hikers];
    Arrays.setAll(everybody, i -> i);
    whole =
        m.stages == 1 && m.hikers <= 16 && new GroupSearch(free, everybody, 0, effort).listable();
    state = free;
  }

  State state() {
    return state;
  }

  int provedLevels() {
    return provedLevels;
  }

  boolean excessProved() {
    return excessProved;
  }

  boolean provedAll() {
    return excessProved && provedLevels == m.mornings();
  }

  /** Whether it is proved that the number asked for last is not enough for any split. */
  boolean excluded() {
    return excluded;
  }

  /** Whether more handovers cannot make the split fairer. */
  boolean reachedBest() {
    return goalProved && started && !Exchange.Value.of(state).betterThan(goal) && atGoal();
  }

  private boolean atGoal() {
    Exchange.Value now = Exchange.Value.of(state);
    return now.excess() == goal.excess() && Arrays.equals(now.list(), goal.list());
  }

  int boundSteps() {
    int[] list = state.list();
    return bound.atLevel(list, provedLevels, list[provedLevels]);
  }

  /** Searches; false where no split within so many handovers was found. */
  boolean solve(int handovers) {
    provedLevels = 0;
    excessProved = false;
    excluded = false;
    if (goalMoves <= handovers && (!started || Exchange.Value.of(state).compareTo(goal) > 0)) {
      state.restore(goalRoutes);
      started = true;
    }
    if (!started && !start(handovers)) {
      return false;
    }
    improve(handovers);
    if (m.stages > 1 || !whole) {
      exhaust(handovers);
      return true;
    }
    lowerExcess(handovers);
    climb(handovers);
    if (!provedAll() && m.blocks.size() <= MOST_EXHAUSTIBLE && m.hikers <= 5) {
      exhaust(handovers);
    }
    return true;
  }

  private int[] anything() {
    long total = 0;
    for (Block block : m.blocks) {
      total += block.peakMass();
    }
    int top = 0;
    for (int i = 0; i < m.hikers; i++) {
      for (int d = 0; d <= m.lastDay[i]; d++) {
        top = Math.max(top, m.step(i, d, total));
      }
    }
    int[] list = new int[m.mornings()];
    Arrays.fill(list, top);
    return list;
  }

  /** Any split within so many handovers. */
  private boolean start(int handovers) {
    State kept = new State(m);
    boolean done = Staying.build(kept, moves, handovers, effort);
    if (done) {
      state = kept;
      started = true;
      return true;
    }
    if (m.blocks.size() * m.hikers > MOST_CELLS) {
      return false;
    }
    State ruled = new State(m);
    Optional<Budget> budget = Optional.of(Budget.of(moves, handovers));
    long nodes = Math.min(NODES, effort.left() / 8 / RuleModel.stepsWithinBudget(m));
    RuleModel.Verdict verdict = RuleModel.find(ruled, budget, nodes, effort);
    excluded = verdict == RuleModel.Verdict.NONE;
    if (verdict == RuleModel.Verdict.FOUND) {
      state = ruled;
      started = true;
    }
    if (verdict != RuleModel.Verdict.UNKNOWN) {
      return started;
    }
    if (!whole) {
      Exhaustion exhaustion =
          new Exhaustion(m, new Exchange.Value(Long.MAX_VALUE, anything()), false, effort);
      exhaustion.within(moves, handovers);
      excluded = exhaustion.run(effort.left() / 8) && !exhaustion.improved();
      if (exhaustion.improved()) {
        state.restore(exhaustion.routes());
        started = true;
      }
      return started;
    }
    GroupSearch.Result result = decide(anything(), Long.MAX_VALUE / 4, handovers);
    excluded = result == GroupSearch.Result.NONE;
    started = result == GroupSearch.Result.FOUND;
    return started;
  }

  private GroupSearch.Result decide(int[] wanted, long excess, int handovers) {
    GroupSearch search = new GroupSearch(state, everybody, LISTS, effort);
    Wish wish = Wish.overall(m.days, wanted, excess).within(Budget.of(moves, handovers));
    return search.search(wish, STEPS);
  }

  private void improve(int handovers) {
    if (m.stages > 1) {
      return;
    }
    Exchange exchange = new Exchange(state, new Dice(handovers), effort);
    exchange.within(moves, handovers);
    int[] aims = bound.aims();
    long each = Math.min(effort.left() / 100, (whole ? 100L : 600L) * (m.blocks.size() + m.hikers));
    exchange.run(Weights.quadratic(aims, 20), 100, each);
    exchange.run(Weights.quadratic(aims, 2), 50, each);
    exchange.run(Weights.growing(aims, 9, 8), 30, each);
    exchange.run(Weights.growing(aims, 3, 2), 20, each);
    exchange.finish();
  }

  private void lowerExcess(int handovers) {
    long own = new State(m).totalExcess;
    excessProved =
        state.totalExcess <= own || (goalLevels > 0 && state.totalExcess <= goal.excess());
    while (!excessProved && !effort.over()) {
      GroupSearch.Result result = decide(anything(), state.totalExcess - 1, handovers);
      if (result != GroupSearch.Result.FOUND) {
        excessProved = result == GroupSearch.Result.NONE;
        return;
      }
      excessProved = state.totalExcess <= own;
    }
  }

  private void climb(int handovers) {
    int[] list = state.list();
    int level = 0;
    boolean proving = excessProved;
    while (level < list.length && !effort.over()) {
      int last = Steps.lastOfTie(list, level);
      int[] wanted = Steps.fairerAt(list, last);
      GroupSearch.Result result =
          known(list, last) || bound.excludes(wanted)
              ? GroupSearch.Result.NONE
              : decide(wanted, state.totalExcess, handovers);
      if (result == GroupSearch.Result.FOUND) {
        int[] fairer = state.list();
        level = Math.max(0, Math.min(level, Arrays.mismatch(list, fairer)));
        list = fairer;
        continue;
      }
      proving &= result == GroupSearch.Result.NONE;
      level = last + 1;
      if (proving) {
        provedLevels = level;
      }
    }
  }

  /**
   * Whether the list agrees so far with the best there is without a limit, which is proved so far.
   */
  private boolean known(int[] list, int last) {
    return state.totalExcess == goal.excess()
        && goalLevels > last
        && Arrays.equals(list, 0, last + 1, goal.list(), 0, last + 1);
  }

  private void exhaust(int handovers) {
    if (m.blocks.size() > MOST_EXHAUSTIBLE) {
      return;
    }
    Exhaustion exhaustion = new Exhaustion(m, Exchange.Value.of(state), false, effort);
    exhaustion.within(moves, handovers);
    boolean ended = exhaustion.run(effort.left() / 8);
    if (exhaustion.improved()) {
      state.restore(exhaustion.routes());
    }
    if (ended) {
      excessProved = true;
      provedLevels = m.mornings();
    }
  }
}
