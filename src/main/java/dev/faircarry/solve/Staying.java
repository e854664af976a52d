package dev.faircarry.solve;

import java.util.List;

/**
 * A split in which everything stays where it was as far as rules let it, and the rest goes to
 * whoever stays lowest; then mended.
 */
final class Staying {
  private Staying() {}

  /** Builds it; false where a rule stays broken or more handovers than allowed are needed. */
  static boolean build(State state, Moves moves, int handovers, Effort effort) {
    Model m = state.m;
    int[][] held = new int[moves.refs.size()][m.hikers];
    boolean[] placed = new boolean[m.blocks.size()];
    for (Block block : m.blocks) {
      for (int i = 0; i < m.hikers && !placed[block.index()]; i++) {
        if (block.allowed()[0][i] && wasWith(moves, held, block.index(), i)) {
          int[] route = Routes.from(m, block, i, (b, s, c) -> lightest(state, s, c));
          if (route.length > 0) {
            state.put(block.index(), route);
            placed[block.index()] = true;
            for (int ref : moves.refsOf[block.index()]) {
              held[ref][i]++;
            }
          }
        }
      }
    }
    for (Block block : Construction.order(m)) {
      if (!placed[block.index()] && !place(state, block)) {
        return false;
      }
      effort.spend(m.hikers);
    }
    return (state.broken() == 0 && moves.count(state) <= handovers)
        || new Mending(state, new Dice(handovers), effort).within(moves, handovers).run();
  }

  private static boolean wasWith(Moves moves, int[][] held, int block, int hiker) {
    int ref = moves.refsOf[block][0];
    return held[ref][hiker] < moves.before[ref][hiker];
  }

  private static int lightest(State state, int stage, List<Integer> candidates) {
    int day = state.m.stageStart[stage];
    int best = candidates.get(0);
    for (int i : candidates) {
      if (state.step[i * state.m.days + day] < state.step[best * state.m.days + day]) {
        best = i;
      }
    }
    return best;
  }

  private static boolean place(State state, Block block) {
    Model m = state.m;
    long bestCost = Long.MAX_VALUE;
    int[] best = new int[0];
    for (int i : Routes.holders(m, block, 0)) {
      int[] route = Routes.from(m, block, i, (b, s, c) -> lightest(state, s, c));
      if (route.length == 0) {
        continue;
      }
      int broken = state.broken();
      long excess = state.totalExcess;
      state.put(block.index(), route);
      long cost =
          (state.broken() - broken) * (1L << 50)
              + (state.totalExcess - excess) * (1L << 24)
              + state.step[i * m.days];
      state.take(block.index());
      if (cost < bestCost) {
        bestCost = cost;
        best = route;
      }
    }
    if (best.length == 0) {
      return false;
    }
    state.put(block.index(), best);
    return true;
  }
}
