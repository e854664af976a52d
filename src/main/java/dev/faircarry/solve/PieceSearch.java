package dev.faircarry.solve;

import java.util.Arrays;
import java.util.List;

/**
 * Decides a wish piece by piece, the heaviest first: strong where a few heavy pieces leave much
 * room unused, which makes lists of bundles long and their masses tell little. For one day and
 * trips where nobody leaves early.
 *
 * <p>A hiker with some load can at best end at a sum that the pieces still to come can make; what
 * that leaves of the hiker's room is wasted. All wastes together must fit the slack of the wish
 * (see {@link Windows}), otherwise the branch is dead.
 */
final class PieceSearch {
  private static final int MOST_UNITS = 1 << 17;

  private final Model m;
  private final State state;
  private final Effort effort;
  private final Wish wish;
  private final List<Block> order;
  private final Windows windows;

  /**
   * Sums that the pieces from one on can make, as bits of grid units; empty where the grid is too
   * fine.
   */
  private final long[][] reach;

  private final long grid;
  private final int[] chosen;
  private final int[] twinOf;

  /** Blocks held by hiker. */
  private final int[] pieces;

  private final int containers;
  private long stepsLeft;
  private boolean cut;

  PieceSearch(Model m, Wish wish, Effort effort) {
    this.m = m;
    this.wish = wish;
    this.effort = effort;
    state = new State(m);
    order = Construction.order(m);
    chosen = new int[order.size()];
    pieces = new int[m.hikers];
    int[] all = new int[m.hikers];
    Arrays.setAll(all, i -> i);
    windows = Windows.of(m, all, new long[m.hikers], m.leastTotal[0], wish, 0);
    long gcd = 0;
    int boxes = 0;
    for (Block block : order) {
      gcd = gcd(gcd, block.departureMass());
      boxes += Construction.container(block) ? 1 : 0;
    }
    grid = Math.max(1, gcd);
    containers = boxes;
    twinOf = twins();
    reach = sums();
    sharpen();
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** For each hiker an earlier one who differs in nothing, or -1. */
  private int[] twins() {
    int[] twin = new int[m.hikers];
    for (int j = 0; j < m.hikers; j++) {
      twin[j] = -1;
      for (int i = 0; i < j && twin[j] < 0; i++) {
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

  private long[][] sums() {
    long most = 0;
    for (long[] row : windows.most) {
      for (long room : row) {
        most = Math.max(most, room);
      }
    }
    long units = most / grid + 1;
    if (units > MOST_UNITS || (units / 64 + 1) * (order.size() + 1) > 1 << 22) {
      return new long[0][];
    }
    int words = (int) (units / 64) + 1;
    long[][] sums = new long[order.size() + 1][words];
    sums[order.size()][0] = 1;
    for (int k = order.size() - 1; k >= 0; k--) {
      System.arraycopy(sums[k + 1], 0, sums[k], 0, words);
      join(sums[k], sums[k + 1], order.get(k).departureMass() / grid);
    }
    effort.spend((long) words * order.size() / 32);
    return sums;
  }

  /** Rooms that no sum of pieces fills are worth only the sum below them. */
  private void sharpen() {
    for (long[] row : windows.most) {
      for (int t = 0; t < row.length; t++) {
        row[t] = row[t] < 0 ? row[t] : below(0, row[t]);
      }
    }
    windows.weigh();
  }

  private static void join(long[] bits, long[] so, long shift) {
    int words = (int) Math.min(bits.length, shift >>> 6);
    int rest = (int) (shift & 63);
    for (int w = bits.length - 1; w >= words; w--) {
      long moved = so[w - words] << rest;
      if (rest != 0 && w > words) {
        moved |= so[w - words - 1] >>> (64 - rest);
      }
      bits[w] |= moved;
    }
  }

  /** Searches; on success the target state holds the division. */
  GroupSearch.Result search(State target, long stepLimit) {
    if (windows.slack < 0) {
      return GroupSearch.Result.NONE;
    }
    stepsLeft = stepLimit;
    if (descend(0)) {
      target.restore(state.routes());
      return GroupSearch.Result.FOUND;
    }
    return cut ? GroupSearch.Result.UNKNOWN : GroupSearch.Result.NONE;
  }

  private boolean descend(int k) {
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
      stepsLeft -= 3;
      boolean over = effort.spend(3);
      cut = cut || over || stepsLeft < 0;
      if (cut) {
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
      if (alive && descend(k + 1)) {
        return true;
      }
      state.take(block.index());
      pieces[i]--;
      if (cut) {
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
    int lowest = windows.values.length - 1;
    long[] keys = new long[m.hikers - from];
    for (int i = from; i < m.hikers; i++) {
      long room = windows.most[i][lowest] - state.shared[i];
      keys[i - from] = (Math.max(-1, Math.min(room, 1L << 50)) << 8) | (255 - i);
    }
    Arrays.sort(keys);
    int[] who = new int[keys.length];
    for (int k = 0; k < who.length; k++) {
      who[k] = 255 - (int) (keys[who.length - 1 - k] & 255);
    }
    return who;
  }

  /** Whether all hikers together waste no more than the slack with what is still to come. */
  private boolean fits(int k) {
    long wasted = 0;
    for (int i = 0; i < m.hikers; i++) {
      long least = Long.MAX_VALUE;
      for (int t = 0; t < windows.values.length; t++) {
        long room = windows.most[i][t] - state.shared[i];
        if (room >= 0) {
          least = Math.min(least, windows.waste(i, t, state.shared[i] + below(k, room)));
        }
      }
      if (least == Long.MAX_VALUE) {
        return false;
      }
      wasted += least;
      if (wasted > windows.slack) {
        return false;
      }
    }
    return true;
  }

  /** The greatest sum of the pieces from {@code k} on that is not above a room. */
  private long below(int k, long room) {
    if (reach.length == 0) {
      return room;
    }
    long[] bits = reach[k];
    int units = (int) Math.min(room / grid, bits.length * 64L - 1);
    int word = units >>> 6;
    long masked = bits[word] & (-1L >>> (63 - (units & 63)));
    while (masked == 0) {
      masked = bits[--word];
    }
    return ((long) word * 64 + 63 - Long.numberOfLeadingZeros(masked)) * grid;
  }
}
