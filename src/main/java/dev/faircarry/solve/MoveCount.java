package dev.faircarry.solve;

import java.util.Arrays;

/** What a hiker of a group would gain and drop with a bundle, compared with an earlier split. */
final class MoveCount {
  private final Pool pool;
  private final Moves moves;
  private final int[] held;
  int gained;
  int dropped;

  MoveCount(Pool pool, Moves moves) {
    this.pool = pool;
    this.moves = moves;
    held = new int[moves.refs.size()];
  }

  void read(int position, long bits, long counts) {
    Arrays.fill(held, 0);
    for (int block : pool.fixed.get(position)) {
      add(block, 1);
    }
    for (int e = 0; e < pool.entries.size(); e++) {
      int units = pool.held(e, bits, counts);
      if (units > 0) {
        add(pool.entries.get(e).get(0), units);
      }
    }
    gained = 0;
    dropped = 0;
    int hiker = pool.group[position];
    for (int r = 0; r < held.length; r++) {
      gained += Math.max(0, held[r] - moves.before[r][hiker]);
      dropped += Math.max(0, moves.before[r][hiker] - held[r]);
    }
  }

  private void add(int block, int units) {
    for (int ref : moves.refsOf[block]) {
      held[ref] += units;
    }
  }
}
