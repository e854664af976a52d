package dev.faircarry.solve;

import dev.faircarry.split.Progress;
import java.util.Arrays;
import java.util.List;

/**
 * Makes a split better by local search, in rounds from gentle to steep, and sees on the way which
 * levels masses prove already.
 */
final class Improvement {
  private static final int STRIDES = 64;

  /** The first turn is so many times shorter than the others. */
  private static final int OPENING = 8;

  private final Model m;
  private final State state;
  private final Dice dice;
  private final Bound bound;
  private final Effort effort;
  private final MassProof masses;

  /** Thousandths over caps that own kit alone causes. */
  private final long ownExcess;

  private int provedLevels;

  Improvement(State state, Dice dice, Bound bound, Effort effort) {
    this.m = state.m;
    this.state = state;
    this.dice = dice;
    this.bound = bound;
    this.effort = effort;
    masses = new MassProof(bound);
    ownExcess = new State(m).totalExcess;
  }

  /** Levels that nothing can lower, of the best list there is. */
  int provedLevels() {
    return provedLevels;
  }

  /**
   * All rounds, a short turn first for an early answer; ends early when masses alone show that no
   * level can be lowered.
   *
   * @param triesPerBlock tries in each round for every block and hiker
   * @param regroup whether to lower the highest step by giving out anew what groups hold, too
   */
  void run(long triesPerBlock, boolean regroup) {
    List<Round> rounds = rounds();
    long each =
        Math.max(500, Math.min(effort.left() / 24, triesPerBlock * (m.blocks.size() + m.hikers)));
    Exchange exchange = new Exchange(state, dice, effort);
    exchange.withChains();
    for (long tries : new long[] {each / OPENING, each, each}) {
      for (Round round : rounds) {
        if (!finished(exchange.best())) {
          exchange.run(round.weights(), round.memory(), tries);
        }
      }
    }
    exchange.finish();
    if (regroup) {
      plunge();
    }
  }

  /** Weights, and how many tries late acceptance looks back. */
  private record Round(Weights weights, int memory) {}

  private List<Round> rounds() {
    int[] aims = bound.aims();
    return List.of(
        new Round(Weights.quadratic(aims, 20), 200),
        new Round(Weights.quadratic(aims, 2), 100),
        new Round(Weights.growing(aims, 9, 8), 50),
        new Round(Weights.growing(aims, 3, 2), 20));
  }

  /** Whatever is better than the best keeps the levels proved of it. */
  private boolean finished(Exchange.Value best) {
    if (effort.over() || best.excess() > ownExcess) {
      return effort.over();
    }
    int[] list = best.list();
    int proved = masses.levels(list, provedLevels);
    if (proved > provedLevels) {
      provedLevels = proved;
      effort
          .watch()
          .progress(new Progress(Progress.Phase.PROVING, list[0], list[0], proved, effort.spent()));
    }
    return proved == list.length;
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
   * @param triesPerBlock tries in each round for every block
   */
  void even(int[] highest, long triesPerBlock) {
    if (m.days == 1 || m.stages > 1) {
      return;
    }
    Exchange exchange = new Exchange(state, dice, effort);
    exchange.keep(highest);
    long each = Math.min(effort.left() / 40, triesPerBlock * m.blocks.size());
    rounds().forEach(round -> exchange.run(round.weights(), round.memory(), each));
    exchange.finish();
  }
}
