package dev.faircarry.solve;

/**
 * Makes a split fairer by giving out anew, piece by piece, what a few hikers hold: somebody at the
 * step to be lowered and others by chance. Finds changes of many pieces at once, which rules that
 * leave little room call for. For trips where nobody leaves early.
 */
final class Regroup {
  /** Groups and steps for each that suffice in most cases. */
  static final int TRIES = 40;

  static final long GROUP_STEPS = 4_000;
  private static final int FEWEST = 2;
  private static final int MOST = 5;

  private final State state;
  private final Model m;
  private final Dice dice;
  private final Effort effort;

  Regroup(State state, Dice dice, Effort effort) {
    this.state = state;
    this.m = state.m;
    this.dice = dice;
    this.effort = effort;
  }

  /**
   * Tries group after group.
   *
   * @param step a step that somebody is to get below
   * @param tries groups to try
   * @param stepsEach search steps for each
   * @return whether the state keeps the wish now
   */
  boolean find(Wish wish, int step, int tries, long stepsEach) {
    for (int t = 0; t < tries && !effort.over(); t++) {
      int[] group = group(step);
      State rest = new State(m);
      boolean[] in = new boolean[m.hikers];
      for (int i : group) {
        in[i] = true;
      }
      for (Block block : m.blocks) {
        int holder = state.holder[block.index()][0];
        if (!in[holder]) {
          rest.put(block.index(), holder);
        }
      }
      effort.spend(m.blocks.size());
      PieceSearch search = new PieceSearch(rest, group, wish, effort);
      if (search.search(state, stepsEach) == GroupSearch.Result.FOUND) {
        return true;
      }
    }
    return false;
  }

  private int[] group(int step) {
    int[] order = new int[m.hikers];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    dice.shuffle(order);
    int size = Math.min(m.hikers, FEWEST + dice.below(MOST - FEWEST + 1));
    int[] group = new int[size];
    group[0] = at(order, step);
    int filled = 1;
    for (int k = 0; k < order.length && filled < size; k++) {
      if (order[k] != group[0]) {
        group[filled++] = order[k];
      }
    }
    java.util.Arrays.sort(group);
    return group;
  }

  private int at(int[] order, int step) {
    for (int i : order) {
      for (int d = 0; d < m.days; d++) {
        if (state.step[i * m.days + d] == step) {
          return i;
        }
      }
    }
    return order[0];
  }
}
