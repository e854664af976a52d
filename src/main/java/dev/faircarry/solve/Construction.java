package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A first split by hand's rule, the heaviest block to whoever stays lowest, then mended until the
 * hard rules hold.
 */
final class Construction {
  private static final int MENDING_TRIES_PER_BLOCK = 400;
  private static final int MENDING_MEMORY = 50;

  /** What a broken rule weighs beside a pack that is too full. */
  private static final long MILLILITERS_PER_BROKEN = 500;

  private final State state;
  private final Model m;
  private final Effort effort;
  private final Dice dice;

  Construction(State state, Effort effort, Dice dice) {
    this.state = state;
    this.m = state.m;
    this.effort = effort;
    this.dice = dice;
  }

  /** Puts every block; true if all hard rules hold in the end. */
  boolean build() {
    for (Block block : order(m)) {
      int[] best = new int[0];
      long[] bestCost = {Long.MAX_VALUE};
      for (int first : Routes.holders(m, block, 0)) {
        int[] route = Routes.from(m, block, first, this::lightest);
        if (route.length > 0) {
          long cost = costOf(block, route);
          if (cost < bestCost[0]) {
            bestCost[0] = cost;
            best = route;
          }
        }
      }
      if (best.length == 0) {
        return false;
      }
      state.put(block.index(), best);
    }
    return state.broken() == 0 || mend();
  }

  /** Containers first, then what party needs call for, then by falling mass. */
  static List<Block> order(Model m) {
    List<Block> order = new ArrayList<>(m.blocks);
    order.sort(
        (x, y) -> {
          int byContainer = Boolean.compare(container(y), container(x));
          if (byContainer != 0) {
            return byContainer;
          }
          int byMass = Long.compare(y.peakMass(), x.peakMass());
          if (byMass != 0) {
            return byMass;
          }
          int byClass = Integer.compare(x.symmetryClass(), y.symmetryClass());
          return byClass != 0 ? byClass : Integer.compare(x.index(), y.index());
        });
    return order;
  }

  static boolean container(Block block) {
    for (int[] counts : block.innerCount()) {
      for (int count : counts) {
        if (count > 0) {
          return true;
        }
      }
    }
    return false;
  }

  private int lightest(Block block, int stage, List<Integer> candidates) {
    int day = m.stageStart[stage];
    int best = candidates.get(0);
    for (int i : candidates) {
      if (state.step[i * m.days + day] < state.step[best * m.days + day]) {
        best = i;
      }
    }
    return best;
  }

  private long costOf(Block block, int[] route) {
    long excess = state.totalExcess;
    int broken = state.broken();
    state.put(block.index(), route);
    long worst = 0;
    for (int s = 0; s < m.stages && route[s] != State.NOBODY; s++) {
      for (int d = m.stageStart[s]; d <= m.stageEnd[s]; d++) {
        worst = Math.max(worst, state.step[route[s] * m.days + d]);
      }
    }
    long cost =
        (state.broken() - broken) * (1L << 52) + (state.totalExcess - excess) * (1L << 28) + worst;
    state.take(block.index());
    effort.spend(2);
    return cost;
  }

  /**
   * Random moves and exchanges, by late acceptance, until no rule is broken: what is over the rooms
   * counts by how much, so that a pack that is far too full gets emptier step by step.
   */
  private boolean mend() {
    long tries = (long) MENDING_TRIES_PER_BLOCK * m.blocks.size();
    long[] late = new long[MENDING_MEMORY];
    Arrays.fill(late, wrong());
    for (long t = 0; t < tries && state.broken() > 0 && !effort.spend(2); t++) {
      int slot = (int) (t % MENDING_MEMORY);
      long limit = Math.max(late[slot], wrong());
      int one = dice.below(m.blocks.size());
      int other = dice.below(m.blocks.size());
      if ((t & 1) == 0) {
        move(m.blocks.get(one), limit);
      } else if (one != other) {
        exchange(m.blocks.get(one), m.blocks.get(other), limit);
      }
      late[slot] = wrong();
    }
    return state.broken() == 0;
  }

  private long wrong() {
    return state.overflow + MILLILITERS_PER_BROKEN * state.broken();
  }

  private void move(Block block, long limit) {
    List<Integer> who = Routes.holders(m, block, 0);
    int[] route =
        Routes.from(
            m, block, who.get(dice.below(who.size())), (b, s, c) -> c.get(dice.below(c.size())));
    if (route.length == 0) {
      return;
    }
    int[] before = state.holder[block.index()].clone();
    state.take(block.index());
    state.put(block.index(), route);
    if (wrong() > limit) {
      state.take(block.index());
      state.put(block.index(), before);
    }
  }

  private void exchange(Block one, Block other, long limit) {
    int[] ones = state.holder[one.index()].clone();
    int[] others = state.holder[other.index()].clone();
    if (!mayGo(one, others) || !mayGo(other, ones)) {
      return;
    }
    state.take(one.index());
    state.take(other.index());
    state.put(one.index(), others);
    state.put(other.index(), ones);
    if (wrong() > limit) {
      state.take(one.index());
      state.take(other.index());
      state.put(one.index(), ones);
      state.put(other.index(), others);
    }
  }

  /**
   * Whether a route of another block is one this block may go: same need for handovers, and all
   * holders allowed.
   */
  private boolean mayGo(Block block, int[] route) {
    return Walk.valid(m, block, route);
  }
}
