package dev.faircarry.solve;

import java.util.List;

/** Changes of one block's route, and exchanges of two, for trips with leavers. */
final class RouteChange {
  private final State state;
  private final Model m;
  private final Dice dice;
  private final Effort effort;

  RouteChange(State state, Dice dice, Effort effort) {
    this.state = state;
    this.m = state.m;
    this.dice = dice;
    this.effort = effort;
  }

  /** Tries one; whether it was taken. Otherwise all is as before. */
  boolean tryOne(long limit, Acceptance acceptance) {
    int one = dice.below(m.blocks.size());
    int[] before = state.holder[one].clone();
    int other = -1;
    int[] othersBefore = before;
    int[] route;
    if (dice.below(2) == 0) {
      other = dice.below(m.blocks.size());
      othersBefore = state.holder[other].clone();
      if (other == one
          || !Walk.valid(m, m.blocks.get(one), othersBefore)
          || !Walk.valid(m, m.blocks.get(other), before)) {
        return false;
      }
      route = othersBefore;
    } else {
      route = freshRoute(one, before);
      if (route.length == 0) {
        return false;
      }
    }
    put(one, route, other, before);
    effort.spend(2);
    if (acceptance.accept(limit)) {
      return true;
    }
    put(one, before, other, othersBefore);
    return false;
  }

  private void put(int one, int[] route, int other, int[] othersRoute) {
    state.take(one);
    if (other >= 0) {
      state.take(other);
      state.put(other, othersRoute);
    }
    state.put(one, route);
  }

  private int[] freshRoute(int index, int[] before) {
    Block block = m.blocks.get(index);
    int first = before[0];
    if (dice.below(3) != 0) {
      List<Integer> who = Routes.holders(m, block, 0);
      first = who.get(dice.below(who.size()));
    }
    return Routes.from(m, block, first, (b, s, c) -> c.get(dice.below(c.size())));
  }
}
