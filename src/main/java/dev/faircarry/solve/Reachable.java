package dev.faircarry.solve;

import java.util.HashMap;
import java.util.Map;

/**
 * What each hiker can hold exactly on a morning: sums of masses of blocks that hiker may hold
 * (subset sums, as bits of a long number moved and joined). Capacities that no sum reaches are
 * worth only the sum below them.
 */
final class Reachable {
  /** Sums above this many units of the grid are taken as reachable: they lie densely there. */
  private static final int MOST_UNITS = 1 << 18;

  private final Model m;
  private final long[] grid;
  private final long[][][] bitsOf;
  private final Map<String, long[]> known = new HashMap<>();

  Reachable(Model model) {
    m = model;
    grid = new long[m.days];
    bitsOf = new long[m.hikers][m.days][];
    for (int d = 0; d < m.days; d++) {
      for (Block block : m.blocks) {
        for (int s = 0; s <= m.stageOfDay[d]; s++) {
          grid[d] = gcd(grid[d], block.massSince()[s][d]);
        }
      }
    }
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /**
   * The greatest sum a hiker can hold on a day that is not above {@code room}; below 0 for a room
   * below 0.
   */
  long below(int hiker, int day, long room) {
    if (room < 0 || grid[day] == 0) {
      return Math.min(room, 0);
    }
    long units = room / grid[day];
    if (units >= MOST_UNITS) {
      return units * grid[day];
    }
    long[] bits = bits(hiker, day);
    int word = (int) (units >>> 6);
    long masked = bits[word] & (-1L >>> (63 - (units & 63)));
    while (masked == 0) {
      masked = bits[--word];
    }
    return ((long) word * 64 + 63 - Long.numberOfLeadingZeros(masked)) * grid[day];
  }

  private long[] bits(int hiker, int day) {
    if (bitsOf[hiker][day] == null) {
      StringBuilder key = new StringBuilder().append(day);
      for (Block block : m.blocks) {
        if (mayHold(block, hiker, day)) {
          key.append(',').append(block.index());
        }
      }
      bitsOf[hiker][day] = known.computeIfAbsent(key.toString(), k -> sums(hiker, day));
    }
    return bitsOf[hiker][day];
  }

  /**
   * Used-up packaging stays with whoever held the block before, so every stage up to now counts.
   */
  private boolean mayHold(Block block, int hiker, int day) {
    for (int s = 0; s <= m.stageOfDay[day]; s++) {
      if (block.allowed()[s][hiker]) {
        return true;
      }
    }
    return false;
  }

  private long[] sums(int hiker, int day) {
    long[] bits = new long[MOST_UNITS / 64];
    bits[0] = 1;
    for (Block block : m.blocks) {
      if (!mayHold(block, hiker, day)) {
        continue;
      }
      // A block handed over in different stages can weigh differently; each weight is offered.
      long before = -1;
      long[] so = m.stages == 1 ? bits : bits.clone();
      for (int s = 0; s <= m.stageOfDay[day]; s++) {
        long mass = block.massSince()[s][day];
        if (mass != before && mass > 0) {
          join(bits, so, mass / grid[day]);
        }
        before = mass;
      }
    }
    return bits;
  }

  /** bits |= so moved up by a shift; walks downwards so that both may be the same array. */
  private static void join(long[] bits, long[] so, long shift) {
    if (shift >= MOST_UNITS) {
      return;
    }
    int words = (int) (shift >>> 6);
    int rest = (int) (shift & 63);
    for (int w = bits.length - 1; w >= words; w--) {
      long moved = so[w - words] << rest;
      if (rest != 0 && w > words) {
        moved |= so[w - words - 1] >>> (64 - rest);
      }
      bits[w] |= moved;
    }
  }
}
