package dev.faircarry.solve;

import dev.faircarry.split.Progress;
import java.util.Arrays;

/** From a first split to the best one the effort allows, and how far that is proved. */
final class Search {
  private static final int WHOLE_BUNDLES = 60_000;
  private static final int MOST_WHOLE = 16;

  private final Model m;
  private final State state;
  private final Effort effort;
  private final Dice dice = new Dice(0x5EED);
  private final Bound bound;
  private int provedLevels;
  private boolean excessProved;
  private int boundSteps;

  Search(State state, Effort effort) {
    this.m = state.m;
    this.state = state;
    this.effort = effort;
    bound = new Bound(m);
  }

  int provedLevels() {
    return provedLevels;
  }

  boolean excessProved() {
    return excessProved;
  }

  int boundSteps() {
    return boundSteps;
  }

  void run() {
    tell(Progress.Phase.IMPROVING);
    int aim = bound.atLevel(state.list(), 0, state.list()[0]);
    boundSteps = aim;
    improve(aim);
    long own = new State(m).totalExcess;
    excessProved = state.totalExcess == own;
    tell(Progress.Phase.PROVING);
    if (!excessProved) {
      exhaust(effort.left() / 4);
    }
    climb();
    if (provedLevels < state.list().length && worthExhausting()) {
      exhaust(effort.left());
    }
    settleBound();
    tell(Progress.Phase.PROVING);
  }

  private boolean worthExhausting() {
    return m.blocks.size() <= 40;
  }

  /**
   * Rounds of local search, from gentle to steep; ends early when masses alone show that nothing
   * can be better.
   */
  private void improve(int aim) {
    long each =
        Math.max(2_000, Math.min(effort.left() / 24, 4_000L * (m.blocks.size() + m.hikers)));
    Exchange exchange = new Exchange(state, dice, effort);
    for (int round = 0; round < 2 && !finished(); round++) {
      exchange.run(Weights.quadratic(aim), 200, each);
      exchange.run(Weights.growing(aim, 9, 8), 200, each);
      exchange.run(Weights.growing(aim, 3, 2), 100, each);
      exchange.run(Weights.growing(aim, 2, 1), 50, each);
    }
  }

  private boolean finished() {
    if (effort.over()) {
      return true;
    }
    int[] list = state.list();
    return state.totalExcess == 0 && bound.excludes(Steps.fairerAt(list, list.length - 1));
  }

  /**
   * Level by level from the highest: proved by a bound, lowered, proved by search, or left open.
   */
  private void climb() {
    int level = 0;
    boolean proving = excessProved;
    int[] list = state.list();
    while (level < list.length && !effort.over()) {
      int last = lastOfTie(list, level);
      int[] wanted = Steps.fairerAt(list, last);
      GroupSearch.Result result =
          bound.excludes(wanted) ? GroupSearch.Result.NONE : lower(list, last, wanted);
      if (result == GroupSearch.Result.FOUND) {
        list = state.list();
        tell(Progress.Phase.IMPROVING);
        continue;
      }
      proving &= result == GroupSearch.Result.NONE;
      level = last + 1;
      if (proving) {
        provedLevels = level;
      }
    }
    list = state.list();
    if (proving && level >= list.length) {
      provedLevels = list.length;
    }
  }

  private static int lastOfTie(int[] list, int level) {
    int last = level;
    while (last + 1 < list.length && list[last + 1] == list[level]) {
      last++;
    }
    return last;
  }

  private GroupSearch.Result lower(int[] list, int last, int[] wanted) {
    if (m.stages > 1) {
      return GroupSearch.Result.UNKNOWN;
    }
    int[] all = new int[m.hikers];
    Arrays.setAll(all, i -> i);
    boolean whole = m.hikers <= MOST_WHOLE;
    long share = Math.max(20_000, effort.left() / 8);
    if (whole) {
      GroupSearch search = new GroupSearch(state, all, WHOLE_BUNDLES, effort);
      whole = search.listable();
      if (whole) {
        GroupSearch.Result result = search.search(new Wish(wanted, state.totalExcess), share / 2);
        if (result != GroupSearch.Result.UNKNOWN) {
          return result;
        }
      }
    }
    Polish polish = new Polish(state, dice, effort);
    if (polish.lower(list[last], share)) {
      return GroupSearch.Result.FOUND;
    }
    if (whole) {
      GroupSearch search = new GroupSearch(state, all, 10 * WHOLE_BUNDLES, effort);
      return search.search(new Wish(wanted, state.totalExcess), effort.left() / 2);
    }
    return GroupSearch.Result.UNKNOWN;
  }

  private void exhaust(long steps) {
    Exhaustion exhaustion = new Exhaustion(m, Exchange.Value.of(state), false, effort);
    boolean ended = exhaustion.run(steps);
    if (exhaustion.improved()) {
      state.restore(exhaustion.routes());
      provedLevels = 0;
    }
    if (ended) {
      excessProved = true;
      provedLevels = state.list().length;
    }
  }

  /** The bound of the first level that is not proved. */
  private void settleBound() {
    int[] list = state.list();
    if (provedLevels < list.length) {
      boundSteps = bound.atLevel(list, provedLevels, list[provedLevels]);
    }
  }

  private void tell(Progress.Phase phase) {
    effort
        .watch()
        .progress(new Progress(phase, state.list()[0], boundSteps, provedLevels, effort.spent()));
  }
}
