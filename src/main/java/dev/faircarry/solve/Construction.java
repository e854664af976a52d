package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * A first split by hand's rule, the heaviest block to whoever stays lowest, then mended until the
 * hard rules hold ({@link Mending}).
 */
final class Construction {
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
    return state.broken() == 0 || new Mending(state, dice, effort).run();
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
}
