package dev.faircarry.solve;

import dev.faircarry.split.Progress;
import java.util.Arrays;

/** From a first split to the best one the effort allows, and how far that is proved. */
final class Search {
  /** Lengths of bundle lists: short lists find, long lists prove. */
  private static final int SHORT_LISTS = 2_000;

  private static final int LONG_LISTS = 300_000;
  private static final long SHORT_STEPS = 100_000;
  private static final long PIECE_STEPS = 60_000;
  private static final long PRICE_STEPS = 1_500_000;
  private static final int PRICE_NODES = 60;

  /** With more hikers, prices take longer than what else there is. */
  private static final int MOST_PRICED_FIRST = 8;

  private static final int MOST_WHOLE = 16;

  /** So few hikers are searched to the end before chance has its turn. */
  private static final int FEW = 7;

  /** Tries of local search for each block and hiker, fewer where exact search follows at once. */
  private static final long TRIES = 200;

  private static final long TRIES_TO_EVEN = 400;
  private static final long TRIES_BEFORE_EXACT = 40;
  private static final int PASSES = 5;

  /** A drop in the list by more steps than this is one from a heavy day to a lighter one. */
  private static final int DAY_GAP = 12;

  private static final int EXHAUSTIBLE_BLOCKS = 40;
  private static final int MOST_PIECES_OVER_DAYS = 60;

  private final Model m;
  private final State state;
  private final Effort effort;
  private final Dice dice = new Dice(0x5EED);
  private final Bound bound;
  private final MassProof masses;
  private final boolean priced;

  /** Whether more than mass is limited, which prices see and masses do not. */
  private final boolean cramped;

  /** Whether prices lead over several days, and masses only help. */
  private final boolean pricesFirst;

  private final KnownBundles known;
  private final Improvement improvement;

  /** Whether all hikers together can be searched exactly. */
  private final boolean whole;

  private int provedLevels;
  private boolean excessProved;
  private int boundSteps;

  Search(State state, Effort effort) {
    this.m = state.m;
    this.state = state;
    this.effort = effort;
    boolean suits = PriceSearch.suits(m);
    priced = suits && m.days > 1;
    cramped = suits && cramped();
    pricesFirst = priced && cramped && m.hikers <= MOST_PRICED_FIRST;
    bound = new Bound(m, !pricesFirst);
    known = new KnownBundles(m);
    whole =
        m.stages == 1
            && m.hikers <= MOST_WHOLE
            && new GroupSearch(state, everybody(), 0, effort).listable();
    masses = new MassProof(bound);
    improvement = new Improvement(state, dice, bound, effort);
  }

  /** Whether anything but mass is limited. */
  private boolean cramped() {
    for (int i = 0; i < m.hikers; i++) {
      if (m.room[i] < Model.UNLIMITED || m.maxPieces[i] < m.blocks.size()) {
        return true;
      }
    }
    return m.kinds > 0 || m.apartRules > 0 || !m.needs.isEmpty();
  }

  int provedLevels() {
    return provedLevels;
  }

  boolean excessProved() {
    return excessProved;
  }

  /** For the first level not proved: the step below which no split can bring it. */
  int boundSteps() {
    return boundSteps;
  }

  void run() {
    tell(Progress.Phase.IMPROVING);
    boundSteps = bound.atLevel(state.list(), 0, state.list()[0]);
    improvement.run(
        (whole && m.days == 1) || pricesFirst ? TRIES_BEFORE_EXACT : TRIES, !pricesFirst);
    provedLevels = improvement.provedLevels();
    excessProved = state.totalExcess == new State(m).totalExcess;
    tell(Progress.Phase.PROVING);
    if (!excessProved) {
      exhaust(effort.left() / 4);
    }
    PriceClimb prices =
        new PriceClimb(state, new Bound(m, false), improvement, this::lower, effort);
    if (priced && provedLevels == 0) {
      provedLevels = prices.run(0, excessProved, 0, 1);
    }
    for (int pass = 0; pass < PASSES && !done(); pass++) {
      if (!pricesFirst) {
        climb(pass);
      }
      if (priced) {
        provedLevels = prices.run(provedLevels, excessProved, pass, m.mornings());
      }
    }
    if (!done() && m.blocks.size() <= EXHAUSTIBLE_BLOCKS) {
      exhaust(effort.left());
    }
    int[] list = state.list();
    if (provedLevels < list.length) {
      boundSteps = bound.atLevel(list, provedLevels, list[provedLevels]);
      if (provedLevels == prices.provedLevels()) {
        boundSteps = Math.max(boundSteps, prices.floor());
      }
    }
    tell(Progress.Phase.PROVING);
  }

  private boolean done() {
    return effort.over() || (excessProved && provedLevels == m.mornings());
  }

  /**
   * Level by level from the first that is not proved: proved by a bound, lowered, proved by search,
   * or left open. Levels below an open one are lowered, not proved.
   */
  private void climb(int pass) {
    int[] list = state.list();
    int level = firstOpen(list);
    boolean proving = excessProved;
    int evened = 0;
    while (level < list.length && !effort.over()) {
      if (level > evened && list[level - 1] - list[level] > DAY_GAP) {
        evened = level;
        improvement.even(Arrays.copyOf(list, level), TRIES_TO_EVEN);
        list = state.list();
      }
      int last = Steps.lastOfTie(list, level);
      int[] wanted = Steps.fairerAt(list, last);
      GroupSearch.Result result =
          bound.excludes(wanted) ? GroupSearch.Result.NONE : lower(list, last, wanted, pass);
      if (result == GroupSearch.Result.FOUND) {
        int[] fairer = state.list();
        level = Math.min(level, Arrays.mismatch(list, fairer));
        proving = excessProved && provedLevels >= level;
        list = fairer;
        tell(Progress.Phase.IMPROVING);
        continue;
      }
      if (proving) {
        provedLevels =
            result == GroupSearch.Result.NONE ? last + 1 : masses.ofTie(list, level, last);
      }
      proving &= result == GroupSearch.Result.NONE;
      level = last + 1;
    }
  }

  /** Where to go on: the start of the tie that the first level not proved belongs to. */
  private int firstOpen(int[] list) {
    int level = Math.min(provedLevels, list.length - 1);
    while (level > 0 && list[level - 1] == list[level]) {
      level--;
    }
    return provedLevels == list.length ? list.length : level;
  }

  /**
   * Exact search among all hikers with short lists, among few of them, and among all again with
   * long ones.
   */
  private GroupSearch.Result lower(int[] list, int last, int[] wanted, int pass) {
    if (m.stages > 1) {
      return GroupSearch.Result.UNKNOWN;
    }
    Wish wish = Wish.overall(m.days, wanted, state.totalExcess);
    if (whole && m.days == 1) {
      GroupSearch search = new GroupSearch(state, everybody(), SHORT_LISTS, effort);
      GroupSearch.Result result = search.search(wish, SHORT_STEPS << pass);
      if (result != GroupSearch.Result.UNKNOWN) {
        return result;
      }
    }
    GroupSearch.Result result = GroupSearch.Result.UNKNOWN;
    if (m.days == 1 || m.blocks.size() <= MOST_PIECES_OVER_DAYS) {
      result = new PieceSearch(m, wish, effort).search(state, PIECE_STEPS << (2 * pass));
    }
    if (result == GroupSearch.Result.UNKNOWN
        && cramped
        && m.days == 1
        && m.hikers <= MOST_PRICED_FIRST) {
      result = byPrices(wish, pass);
    }
    if (result == GroupSearch.Result.UNKNOWN && whole && m.days == 1 && m.hikers <= FEW) {
      result = everything(wish, pass);
    }
    if (result != GroupSearch.Result.UNKNOWN) {
      return result;
    }
    if (m.days > 1
        && new Regroup(state, dice, effort)
            .find(wish, list[last], Regroup.TRIES << pass, Regroup.GROUP_STEPS)) {
      return GroupSearch.Result.FOUND;
    }
    if (new Polish(state, dice, effort).lower(list[last], 40 << pass, effort.left() / 8)) {
      return GroupSearch.Result.FOUND;
    }
    if (whole && (m.hikers > FEW || m.days > 1)) {
      result = everything(wish, pass);
    }
    if (result == GroupSearch.Result.UNKNOWN
        && cramped
        && m.days == 1
        && m.hikers > MOST_PRICED_FIRST
        && pass > 0) {
      result = byPrices(wish, pass);
    }
    return result;
  }

  private GroupSearch.Result byPrices(Wish wish, int pass) {
    long steps = Math.min(effort.left() / 4, PRICE_STEPS << (2 * pass));
    return new PriceSearch(state, wish, known, effort).search(steps, PRICE_NODES << (2 * pass));
  }

  private GroupSearch.Result everything(Wish wish, int pass) {
    GroupSearch search = new GroupSearch(state, everybody(), LONG_LISTS, effort);
    return search.search(wish, (SHORT_STEPS * 8) << pass);
  }

  private int[] everybody() {
    int[] all = new int[m.hikers];
    Arrays.setAll(all, i -> i);
    return all;
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
      provedLevels = m.mornings();
    }
  }

  private void tell(Progress.Phase phase) {
    effort
        .watch()
        .progress(new Progress(phase, state.list()[0], boundSteps, provedLevels, effort.spent()));
  }
}
