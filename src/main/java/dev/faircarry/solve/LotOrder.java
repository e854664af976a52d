package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Lots in the order of what they are worth for their size, size being all limits in one, each
 * weighed by how much it presses; and what lots from one on are worth at most in what is left.
 */
final class LotOrder {
  private final long[] prices;
  private final int[] number;
  private final int[] order;
  private final long[] size;
  private final long[] sizeBefore;
  private final long[] priceBefore;

  /**
   * Orders the lots that are worth anything.
   *
   * @param prices of a block of each lot
   * @param number how many blocks of each lot there are to take
   * @param pressure weight of each limit
   * @param full what each limit is in all, for {@link BundleLimits#part}
   */
  LotOrder(BundleLimits limits, long[] prices, int[] number, int[] pressure, int full) {
    this.prices = prices;
    this.number = number;
    size = new long[number.length];
    List<Integer> some = new ArrayList<>();
    for (int c = 0; c < size.length; c++) {
      for (int r = 0; r < pressure.length; r++) {
        size[c] += pressure[r] * limits.part(c, r, full);
      }
      if (prices[c] > 0 && number[c] > 0) {
        some.add(c);
      }
    }
    some.sort(
        (x, y) -> {
          int byWorth = Long.compare(prices[y] * size[x], prices[x] * size[y]);
          return byWorth != 0 ? byWorth : Integer.compare(x, y);
        });
    order = some.stream().mapToInt(c -> c).toArray();
    sizeBefore = new long[order.length + 1];
    priceBefore = new long[order.length + 1];
    for (int k = 0; k < order.length; k++) {
      sizeBefore[k + 1] = sizeBefore[k] + number[order[k]] * size[order[k]];
      priceBefore[k + 1] = priceBefore[k] + number[order[k]] * prices[order[k]];
    }
  }

  int length() {
    return order.length;
  }

  /** The lot at a place. */
  int lot(int at) {
    return order[at];
  }

  long size(int lot) {
    return size[lot];
  }

  /** The place of the lot that fits only in part, or of the last one. */
  int critical(long left) {
    return Math.min(order.length - 1, lastWithin(0, left));
  }

  private int lastWithin(int at, long left) {
    int low = at;
    int high = order.length;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (sizeBefore[middle] - sizeBefore[at] <= left) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** What lots from a place on are worth at most where so much is left, the last one in part. */
  long atMost(int at, long left) {
    int end = lastWithin(at, left);
    long sum = priceBefore[end] - priceBefore[at];
    if (end < order.length) {
      int c = order[end];
      sum += prices[c] * (left - sizeBefore[end] + sizeBefore[at]) / size[c];
    }
    return sum;
  }

  /** How many blocks of each lot fill what is left, in 256ths of a block. */
  long[] filling(long left) {
    long[] filling = new long[number.length];
    long free = left;
    for (int c : order) {
      long all = number[c] * size[c];
      filling[c] = all <= free ? (long) number[c] << 8 : (free << 8) / size[c];
      free -= Math.min(free, all);
    }
    return filling;
  }
}
