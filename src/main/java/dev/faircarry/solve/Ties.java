package dev.faircarry.solve;

import java.util.Arrays;

/**
 * Chooses among splits with the same list: fewest handovers from an earlier split, then fewest
 * hikers per item, then owners carrying their own, then the lexicographically smallest list of
 * carriers. Single moves and exchanges only, so worked for, not proved; for trips where nobody
 * leaves early.
 */
final class Ties {
  private static final int PASSES = 4;

  private final State state;
  private final Model m;
  private final Effort effort;

  /** Holder in the earlier split by block; {@link State#NOBODY} for none. */
  private final int[] earlier;

  private final int[] owner;

  /** Contents of an item with a hiker, by item and hiker. */
  private final int[][] held;

  Ties(State state, int[] earlier, Effort effort) {
    this.state = state;
    this.m = state.m;
    this.earlier = earlier;
    this.effort = effort;
    owner = new int[m.trip.shared().size()];
    held = new int[owner.length][m.hikers];
    for (int k = 0; k < owner.length; k++) {
      owner[k] = State.NOBODY;
      String id = m.trip.shared().get(k).owner().orElse("");
      for (int i = 0; i < m.hikers; i++) {
        if (m.trip.hikers().get(i).id().equals(id)) {
          owner[k] = i;
        }
      }
    }
  }

  /** Moves and exchanges blocks while that makes the tie better and leaves the list as it is. */
  void settle() {
    if (m.stages > 1 || m.hikers < 2) {
      return;
    }
    for (Block block : m.blocks) {
      tally(block, state.holder[block.index()][0], 1);
    }
    boolean changed = true;
    for (int pass = 0; changed && pass < PASSES; pass++) {
      changed = false;
      for (int one = 0; one < m.blocks.size() && !effort.over(); one++) {
        for (int to = 0; to < m.hikers; to++) {
          changed |= attempt(one, -1, to);
        }
        for (int other = one + 1; other < m.blocks.size(); other++) {
          changed |= attempt(one, other, state.holder[other][0]);
        }
        effort.spend(1 + m.blocks.size() / 4);
      }
    }
  }

  private void tally(Block block, int hiker, int sign) {
    for (Block.Content content : block.contents()) {
      held[content.item()][hiker] += sign;
    }
  }

  private boolean attempt(int one, int other, int to) {
    int from = state.holder[one][0];
    if (from == to
        || !m.blocks.get(one).allowed()[0][to]
        || (other >= 0 && !m.blocks.get(other).allowed()[0][from])
        || !better(one, other, from, to)
        || !sameSteps(one, other, from, to)) {
      return false;
    }
    long excess = state.totalExcess;
    swap(one, other, from, to);
    if (state.broken() == 0 && state.totalExcess <= excess) {
      return true;
    }
    swap(one, other, to, from);
    return false;
  }

  private void swap(int one, int other, int from, int to) {
    state.take(one);
    tally(m.blocks.get(one), from, -1);
    if (other >= 0) {
      state.take(other);
      tally(m.blocks.get(other), to, -1);
      state.put(other, from);
      tally(m.blocks.get(other), from, 1);
    }
    state.put(one, to);
    tally(m.blocks.get(one), to, 1);
  }

  private boolean better(int one, int other, int from, int to) {
    int handovers = moved(one, to) - moved(one, from);
    if (other >= 0) {
      handovers += moved(other, from) - moved(other, to);
    }
    if (handovers != 0) {
      return handovers < 0;
    }
    int spread = spread(one, other, from, to);
    if (spread != 0) {
      return spread < 0;
    }
    int strange = strange(one, to) - strange(one, from);
    if (other >= 0) {
      strange += strange(other, from) - strange(other, to);
    }
    if (strange != 0) {
      return strange < 0;
    }
    return to < from;
  }

  private int moved(int block, int hiker) {
    return earlier[block] != State.NOBODY && earlier[block] != hiker
        ? m.blocks.get(block).contents().size()
        : 0;
  }

  private int strange(int block, int hiker) {
    int count = 0;
    for (Block.Content content : m.blocks.get(block).contents()) {
      int whose = owner[content.item()];
      count += whose != State.NOBODY && whose != hiker ? 1 : 0;
    }
    return count;
  }

  /** By how much the number of hikers per item, summed over items, would change. */
  private int spread(int one, int other, int from, int to) {
    int before = carriers(one, from, to) + (other >= 0 ? carriers(other, from, to) : 0);
    tally(m.blocks.get(one), from, -1);
    tally(m.blocks.get(one), to, 1);
    if (other >= 0) {
      tally(m.blocks.get(other), to, -1);
      tally(m.blocks.get(other), from, 1);
    }
    int after = carriers(one, from, to) + (other >= 0 ? carriers(other, from, to) : 0);
    tally(m.blocks.get(one), to, -1);
    tally(m.blocks.get(one), from, 1);
    if (other >= 0) {
      tally(m.blocks.get(other), from, -1);
      tally(m.blocks.get(other), to, 1);
    }
    return after - before;
  }

  private int carriers(int block, int from, int to) {
    int count = 0;
    for (Block.Content content : m.blocks.get(block).contents()) {
      int[] of = held[content.item()];
      count += (of[from] > 0 ? 1 : 0) + (of[to] > 0 ? 1 : 0);
    }
    return count;
  }

  /** Whether the mornings of both hikers would have the same steps as now, in whatever order. */
  private boolean sameSteps(int one, int other, int from, int to) {
    int[] before = new int[2 * m.days];
    int[] after = new int[2 * m.days];
    for (int d = 0; d < m.days; d++) {
      long moved = m.blocks.get(one).massSince()[0][d];
      moved -= other < 0 ? 0 : m.blocks.get(other).massSince()[0][d];
      int giving = from * m.days + d;
      int taking = to * m.days + d;
      before[2 * d] = state.step[giving];
      before[2 * d + 1] = state.step[taking];
      after[2 * d] = m.step(from, d, state.shared[giving] - moved);
      after[2 * d + 1] = m.step(to, d, state.shared[taking] + moved);
    }
    Arrays.sort(before);
    Arrays.sort(after);
    return Arrays.equals(before, after);
  }
}
