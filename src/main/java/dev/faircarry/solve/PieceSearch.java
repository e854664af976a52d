package dev.faircarry.solve;

import java.util.Arrays;
import java.util.List;

/**
 * Decides a wish piece by piece, the heaviest first: strong where a few heavy pieces leave much
 * room unused, which makes lists of bundles long and their masses tell little. For trips where
 * nobody leaves early. A branch is dead when on some morning too much room would be wasted, see
 * {@link PieceMorning}.
 */
final class PieceSearch {
  private final Model m;
  private final State state;
  private final Effort effort;
  private final Wish wish;
  private final int[] group;
  private final List<Block> order;
  private final PieceMorning[] mornings;
  private final int[] chosen;
  private final int[] twinOf;

  /** Blocks held by hiker. */
  private final int[] pieces;

  private final int containers;

  /** Steps for one piece tried. */
  private final int pay;

  /** Everything is given out anew. */
  PieceSearch(Model m, Wish wish, Effort effort) {
    this(new State(m), everybody(m), wish, effort);
  }

  /**
   * What some hikers hold is given out anew among them; all others keep what they hold.
   *
   * @param fixed a state that has what the others hold
   */
  PieceSearch(State fixed, int[] group, Wish wish, Effort effort) {
    this.m = fixed.m;
    this.wish = wish;
    this.effort = effort;
    this.group = group;
    state = fixed;
    order = Construction.order(m).stream().filter(b -> !state.held(b.index())).toList();
    pay = 1 + 2 * m.days;
    chosen = new int[order.size()];
    pieces = new int[m.hikers];
    int[] all = everybody(m);
    mornings = new PieceMorning[m.days];
    for (int d = 0; d < m.days; d++) {
      Windows windows = Windows.of(m, all, new long[m.hikers], m.leastTotal[d], wish, d);
      mornings[d] = new PieceMorning(m, order, windows, effort);
    }
    containers = (int) order.stream().filter(Construction::container).count();
    twinOf = twins();
  }

  private static int[] everybody(Model m) {
    int[] all = new int[m.hikers];
    Arrays.setAll(all, i -> i);
    return all;
  }

  /** For each hiker an earlier one who differs in nothing, or -1. */
  private int[] twins() {
    int[] twin = new int[m.hikers];
    for (int j = 0; j < m.hikers; j++) {
      twin[j] = -1;
      for (int i = 0; i < j && twin[j] < 0 && group.length == m.hikers; i++) {
        if (alike(i, j)) {
          twin[j] = i;
        }
      }
    }
    return twin;
  }

  private boolean alike(int i, int j) {
    return m.targetNanograms[i] == m.targetNanograms[j]
        && m.capNanograms[i] == m.capNanograms[j]
        && m.room[i] == m.room[j]
        && m.maxPieces[i] == m.maxPieces[j]
        && m.needs.stream().allMatch(need -> need.who()[i] == need.who()[j])
        && Arrays.equals(m.ownCounted[i], m.ownCounted[j])
        && Arrays.equals(m.ownLoad[i], m.ownLoad[j])
        && Arrays.equals(m.ownInnerVolume[i], m.ownInnerVolume[j])
        && Arrays.equals(m.ownInnerCount[i], m.ownInnerCount[j])
        && m.blocks.stream().allMatch(b -> b.allowed()[0][i] == b.allowed()[0][j]);
  }

  /** Searches; on success the target state holds the division. */
  GroupSearch.Result search(State target, long stepLimit) {
    for (PieceMorning morning : mornings) {
      if (morning.slack() < 0) {
        return GroupSearch.Result.NONE;
      }
    }
    Allowance allowance = new Allowance(effort, stepLimit);
    if (descend(0, allowance)) {
      target.restore(state.routes());
      return GroupSearch.Result.FOUND;
    }
    return allowance.cut() ? GroupSearch.Result.UNKNOWN : GroupSearch.Result.NONE;
  }

  private boolean descend(int k, Allowance allowance) {
    if (k == order.size()) {
      return state.broken() == 0 && Steps.within(state.list(), wish.steps()[0]);
    }
    Block block = order.get(k);
    boolean twin = k > 0 && order.get(k - 1).symmetryClass() == block.symmetryClass();
    int from = twin ? chosen[k - 1] : 0;
    for (int i : byRoom(from)) {
      if (!block.allowed()[0][i] || (twinOf[i] >= 0 && bare(i) && bare(twinOf[i]))) {
        continue;
      }
      if (allowance.pay(pay)) {
        return false;
      }
      chosen[k] = i;
      state.put(block.index(), i);
      pieces[i]++;
      boolean alive =
          state.strict == 0
              && (k + 1 < containers || state.unboxed == 0)
              && state.totalExcess <= wish.excessLimit()
              && fits(k + 1);
      if (alive && descend(k + 1, allowance)) {
        return true;
      }
      state.take(block.index());
      pieces[i]--;
      if (allowance.cut()) {
        return false;
      }
    }
    return false;
  }

  private boolean bare(int hiker) {
    return pieces[hiker] == 0;
  }

  /** Hikers from one on, those with most room at the lowest wanted step first. */
  private int[] byRoom(int from) {
    long[] keys = new long[group.length];
    int size = 0;
    for (int i : group) {
      if (i < from) {
        continue;
      }
      long room = Long.MAX_VALUE;
      for (PieceMorning morning : mornings) {
        room = Math.min(room, morning.room(i, state));
      }
      keys[size++] = (Math.max(-1, Math.min(room, 1L << 50)) << 8) | (255 - i);
    }
    Arrays.sort(keys, 0, size);
    int[] who = new int[size];
    for (int k = 0; k < size; k++) {
      who[k] = 255 - (int) (keys[size - 1 - k] & 255);
    }
    return who;
  }

  /** Whether hikers waste no more than the slack of any day with what is still to come. */
  private boolean fits(int k) {
    for (PieceMorning morning : mornings) {
      if (!morning.fits(k, state)) {
        return false;
      }
    }
    return true;
  }
}
