package dev.faircarry.solve;

/**
 * Longer changes, which rules that leave little room call for: a block goes to somebody, and others
 * leave that pack one by one until all rules hold again (an ejection chain).
 */
final class Chain {
  private static final int MOST_EJECTED = 7;

  private final State state;
  private final Model m;
  private final Packs packs;
  private final Dice dice;
  private final Effort effort;

  Chain(State state, Packs packs, Dice dice, Effort effort) {
    this.state = state;
    this.m = state.m;
    this.packs = packs;
    this.dice = dice;
    this.effort = effort;
  }

  /** Tries one; whether it was taken. Otherwise all is as before. */
  boolean tryOne(int worst, long limit, Acceptance acceptance) {
    int one = dice.below(2) == 0 && packs.count(worst) > 0 ? packs.anyOf(worst) : packs.any();
    int to = dice.below(m.hikers);
    if (to == state.holder[one][0] || !m.blocks.get(one).allowed()[0][to]) {
      return false;
    }
    int[] moved = new int[1 + MOST_EJECTED];
    int[] from = new int[1 + MOST_EJECTED];
    int size = 0;
    moved[size] = one;
    from[size++] = packs.give(one, to);
    while (size <= MOST_EJECTED
        && (state.broken() > 0 || dice.below(2) == 0)
        && packs.count(to) > 1) {
      int out = packs.anyOf(to);
      int next = dice.below(4) == 0 ? from[0] : dice.below(m.hikers);
      if (out != one && next != to && m.blocks.get(out).allowed()[0][next]) {
        moved[size] = out;
        from[size++] = packs.give(out, next);
      } else if (dice.below(4) == 0) {
        break;
      }
    }
    effort.spend(2L * size);
    if (acceptance.accept(limit)) {
      return true;
    }
    while (size > 0) {
      size--;
      packs.give(moved[size], from[size]);
    }
    return false;
  }
}
