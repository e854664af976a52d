package dev.faircarry.solve;

import java.util.Arrays;

/** Which blocks each hiker holds at departure, listed so that one can be drawn by chance. */
final class Packs {
  private final State state;
  private final Model m;
  private final Dice dice;
  private final int[][] blocksOf;
  private final int[] countOf;
  private final int[] placeOf;

  Packs(State state, Dice dice) {
    this.state = state;
    this.dice = dice;
    m = state.m;
    blocksOf = new int[m.hikers][m.blocks.size()];
    countOf = new int[m.hikers];
    placeOf = new int[m.blocks.size()];
  }

  /** Lists everything anew. */
  void index() {
    Arrays.fill(countOf, 0);
    for (int b = 0; b < placeOf.length; b++) {
      enlist(b, state.holder[b][0]);
    }
  }

  private void enlist(int block, int hiker) {
    placeOf[block] = countOf[hiker];
    blocksOf[hiker][countOf[hiker]++] = block;
  }

  private void delist(int block, int hiker) {
    int last = blocksOf[hiker][--countOf[hiker]];
    blocksOf[hiker][placeOf[block]] = last;
    placeOf[last] = placeOf[block];
  }

  int count(int hiker) {
    return countOf[hiker];
  }

  /** A block by chance. */
  int any() {
    return dice.below(placeOf.length);
  }

  /** One of the blocks of a hiker who has some, by chance. */
  int anyOf(int hiker) {
    return blocksOf[hiker][dice.below(countOf[hiker])];
  }

  /** Notes that a block has changed hands. */
  void moved(int block, int from, int to) {
    delist(block, from);
    enlist(block, to);
  }

  /** Gives a block, in the state too, and says who had it. */
  int give(int block, int to) {
    int from = state.holder[block][0];
    state.take(block);
    state.put(block, to);
    moved(block, from, to);
    return from;
  }

  /** The hiker with the highest step among those who hold something. */
  int worstHiker() {
    int worst = 0;
    int at = -1;
    for (int cell = 0; cell < state.step.length; cell++) {
      int hiker = cell / m.days;
      if (state.step[cell] > at && countOf[hiker] > 0) {
        at = state.step[cell];
        worst = hiker;
      }
    }
    return worst;
  }
}
