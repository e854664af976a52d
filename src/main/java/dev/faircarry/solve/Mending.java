package dev.faircarry.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Makes a split keep all hard rules, and a number of handovers too, by random moves and exchanges
 * under late acceptance (Burke and Bykov 2017). What is over the rooms counts by how much, so that
 * a pack that is far too full gets emptier step by step.
 */
final class Mending {
  private static final int TRIES_PER_BLOCK = 2000;
  private static final int MEMORY = 50;

  /** What a broken rule, or a handover too many, weighs beside a pack that is too full. */
  private static final long MILLILITERS_PER_BROKEN = 500;

  private final State state;
  private final Model m;
  private final Dice dice;
  private final Effort effort;
  private Optional<Moves> limits = Optional.empty();
  private int[][] held = {};
  private int gained;
  private int mostGained;

  /** All blocks of the state must be put. */
  Mending(State state, Dice dice, Effort effort) {
    this.state = state;
    m = state.m;
    this.dice = dice;
    this.effort = effort;
  }

  /** No more than so many handovers may lead from the earlier split in the end. */
  Mending within(Moves moves, int handovers) {
    limits = Optional.of(moves);
    held = moves.held(state);
    gained = moves.count(state) + moves.fresh;
    mostGained = handovers + moves.fresh;
    return this;
  }

  /** True if everything is kept in the end. */
  boolean run() {
    long tries = (long) TRIES_PER_BLOCK * m.blocks.size();
    long[] late = new long[MEMORY];
    Arrays.fill(late, wrong());
    for (long t = 0; t < tries && wrong() > 0 && !effort.spend(2); t++) {
      int slot = (int) (t % MEMORY);
      long limit = Math.max(late[slot], wrong());
      int one = dice.below(m.blocks.size());
      int other = dice.below(m.blocks.size());
      if ((t & 1) == 0) {
        move(one, limit);
      } else if (one != other) {
        exchange(one, other, limit);
      }
      late[slot] = wrong();
    }
    return wrong() == 0;
  }

  private long wrong() {
    int tooMany = limits.isEmpty() ? 0 : Math.max(0, gained - mostGained);
    return state.overflow + MILLILITERS_PER_BROKEN * (state.broken() + tooMany);
  }

  private void take(int block) {
    limits.ifPresent(moves -> gained += moves.gain(held, block, state.holder[block][0], -1));
    state.take(block);
  }

  private void put(int block, int[] route) {
    state.put(block, route);
    limits.ifPresent(moves -> gained += moves.gain(held, block, route[0], 1));
  }

  private void move(int index, long limit) {
    Block block = m.blocks.get(index);
    int[] route = Routes.from(m, block, goal(block), (b, s, c) -> c.get(dice.below(c.size())));
    if (route.length == 0) {
      return;
    }
    int[] before = state.holder[index].clone();
    take(index);
    put(index, route);
    if (wrong() > limit) {
      take(index);
      put(index, before);
    }
  }

  /** Anybody who may hold it; where handovers count, often somebody who held it before. */
  private int goal(Block block) {
    List<Integer> who = Routes.holders(m, block, 0);
    int some = who.get(dice.below(who.size()));
    if (limits.isEmpty() || dice.below(2) == 0) {
      return some;
    }
    int[] before = limits.get().before[limits.get().refsOf[block.index()][0]];
    return who.stream().filter(i -> before[i] > 0).findFirst().orElse(some);
  }

  private void exchange(int one, int other, long limit) {
    int[] ones = state.holder[one].clone();
    int[] others = state.holder[other].clone();
    if (!Walk.valid(m, m.blocks.get(one), others) || !Walk.valid(m, m.blocks.get(other), ones)) {
      return;
    }
    take(one);
    take(other);
    put(one, others);
    put(other, ones);
    if (wrong() > limit) {
      take(one);
      take(other);
      put(one, ones);
      put(other, others);
    }
  }
}
