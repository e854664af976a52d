package dev.faircarry.solve;

import java.util.Arrays;

/** Makes a split better by local search, in rounds from gentle to steep; proves nothing. */
final class Improvement {
  private static final int STRIDES = 64;

  private final Model m;
  private final State state;
  private final Dice dice;
  private final Bound bound;
  private final Effort effort;

  Improvement(State state, Dice dice, Bound bound, Effort effort) {
    this.m = state.m;
    this.state = state;
    this.dice = dice;
    this.bound = bound;
    this.effort = effort;
  }

  /**
   * Two times all rounds; ends early when masses alone show that nothing can be better.
   *
   * @param triesPerBlock tries in each round for every block and hiker
   */
  void run(long triesPerBlock) {
    int[] aims = bound.aims();
    long each =
        Math.max(500, Math.min(effort.left() / 24, triesPerBlock * (m.blocks.size() + m.hikers)));
    Exchange exchange = new Exchange(state, dice, effort);
    exchange.withChains();
    for (int round = 0; round < 2 && !finished(); round++) {
      rounds(exchange, aims, each);
    }
    exchange.finish();
    plunge();
  }

  private static void rounds(Exchange exchange, int[] aims, long each) {
    exchange.run(Weights.quadratic(aims, 20), 200, each);
    exchange.run(Weights.quadratic(aims, 2), 100, each);
    exchange.run(Weights.growing(aims, 9, 8), 50, each);
    exchange.run(Weights.growing(aims, 3, 2), 20, each);
  }

  private boolean finished() {
    if (effort.over()) {
      return true;
    }
    int[] list = state.list();
    return state.totalExcess == 0 && bound.excludes(Steps.fairerAt(list, list.length - 1));
  }

  /**
   * Over several days, and with rules that leave little room, single changes do not get far: the
   * highest step is lowered by giving out anew what groups hold, in large strides first.
   */
  private void plunge() {
    if (m.days == 1 || m.stages > 1 || state.totalExcess > 0) {
      return;
    }
    Regroup regroup = new Regroup(state, dice, effort);
    int[] list = state.list();
    int low = bound.atLevel(list, 0, list[0]) - 1;
    boolean lowered = true;
    while (lowered && !effort.over()) {
      lowered = false;
      for (int stride = 2; stride <= STRIDES && !lowered; stride *= 2) {
        int step = list[0];
        int aim = step - Math.max(1, (step - low) / stride);
        int[] wanted = list.clone();
        Arrays.fill(wanted, aim);
        if (aim > low) {
          Wish wish = Wish.overall(m.days, wanted, 0);
          lowered = regroup.find(wish, step, Regroup.TRIES, Regroup.GROUP_STEPS);
          list = state.list();
        }
      }
    }
  }

  /**
   * Evens out the mornings below the highest ones anew, as exact search for those above has
   * disturbed them.
   *
   * @param highest the steps that must not change, from the highest
   */
  void even(int[] highest) {
    if (m.days == 1 || m.stages > 1) {
      return;
    }
    Exchange exchange = new Exchange(state, dice, effort);
    exchange.keep(highest);
    rounds(exchange, bound.aims(), Math.min(effort.left() / 40, 400L * m.blocks.size()));
    exchange.finish();
  }
}
