package dev.faircarry.solve;

import java.util.List;

/**
 * One morning of a {@link PieceSearch}: how much of the room that a wish gives would be wasted.
 *
 * <p>A hiker with some load can at best end at a sum that the pieces still to come can make; what
 * that leaves of the hiker's room is wasted. All wastes together must fit the slack of the wish
 * (see {@link Windows}), otherwise nothing comes of it.
 */
final class PieceMorning {
  private static final int MOST_UNITS = 1 << 17;

  private final Model m;
  private final int day;
  private final Windows windows;
  private final long grid;

  /** Sums that the pieces from one on can make, in grid units; none where the grid is too fine. */
  private final SubsetSums[] reach;

  /**
   * A morning.
   *
   * @param order blocks in the order in which they are given out
   */
  PieceMorning(Model m, List<Block> order, Windows windows, Effort effort) {
    this.m = m;
    this.windows = windows;
    day = windows.day;
    long gcd = 0;
    for (Block block : order) {
      gcd = SubsetSums.commonMeasure(gcd, block.massSince()[0][day]);
    }
    grid = Math.max(1, gcd);
    reach = sums(order, effort);
    if (order.size() == m.blocks.size()) {
      sharpen();
    }
  }

  /** What the wanted steps could hold beyond what there is. */
  long slack() {
    return windows.slack;
  }

  /** Milligrams a hiker could still take at the lowest wanted step. */
  long room(int hiker, State state) {
    return windows.most[hiker][windows.values.length - 1] - shared(hiker, state);
  }

  private long shared(int hiker, State state) {
    return state.shared[hiker * m.days + day];
  }

  private SubsetSums[] sums(List<Block> order, Effort effort) {
    long most = 0;
    for (long[] row : windows.most) {
      for (long room : row) {
        most = Math.max(most, room);
      }
    }
    long units = most / grid + 1;
    if (units > MOST_UNITS || (units / 64 + 1) * (order.size() + 1) > 1 << 22) {
      return new SubsetSums[0];
    }
    SubsetSums[] sums = new SubsetSums[order.size() + 1];
    sums[order.size()] = new SubsetSums(units);
    for (int k = order.size() - 1; k >= 0; k--) {
      sums[k] = sums[k + 1].copy();
      sums[k].join(sums[k + 1], order.get(k).massSince()[0][day] / grid);
    }
    effort.spend((long) sums[order.size()].words() * order.size() / 32);
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

  /** Whether all hikers together waste no more than the slack with the pieces from one on. */
  boolean fits(int k, State state) {
    long wasted = 0;
    for (int i = 0; i < m.hikers; i++) {
      long shared = shared(i, state);
      long least = Long.MAX_VALUE;
      for (int t = 0; t < windows.values.length; t++) {
        long room = windows.most[i][t] - shared;
        if (room >= 0) {
          least = Math.min(least, windows.waste(i, t, shared + below(k, room)));
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
    return reach[k].atMost(Math.min(room / grid, reach[k].most())) * grid;
  }
}
