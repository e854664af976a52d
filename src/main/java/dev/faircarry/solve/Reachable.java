package dev.faircarry.solve;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

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
  private final @Nullable SubsetSums[][] sumsOf;
  private final Map<String, SubsetSums> known = new HashMap<>();

  Reachable(Model model) {
    m = model;
    grid = new long[m.days];
    sumsOf = new SubsetSums[m.hikers][m.days];
    for (int d = 0; d < m.days; d++) {
      for (Block block : m.blocks) {
        for (int s = 0; s <= m.stageOfDay[d]; s++) {
          grid[d] = SubsetSums.commonMeasure(grid[d], block.massSince()[s][d]);
        }
      }
    }
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
    return sums(hiker, day).atMost(units) * grid[day];
  }

  private SubsetSums sums(int hiker, int day) {
    SubsetSums sums = sumsOf[hiker][day];
    if (sums == null) {
      StringBuilder key = new StringBuilder().append(day);
      for (Block block : m.blocks) {
        if (mayHold(block, hiker, day)) {
          key.append(',').append(block.index());
        }
      }
      sums = known.computeIfAbsent(key.toString(), k -> added(hiker, day));
      sumsOf[hiker][day] = sums;
    }
    return sums;
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

  private SubsetSums added(int hiker, int day) {
    SubsetSums sums = new SubsetSums(MOST_UNITS - 1);
    for (Block block : m.blocks) {
      if (!mayHold(block, hiker, day)) {
        continue;
      }
      // A block handed over in different stages can weigh differently; each weight is offered.
      long before = -1;
      SubsetSums so = m.stages == 1 ? sums : sums.copy();
      for (int s = 0; s <= m.stageOfDay[day]; s++) {
        long mass = block.massSince()[s][day];
        if (mass != before && mass > 0) {
          sums.join(so, mass / grid[day]);
        }
        before = mass;
      }
    }
    return sums;
  }
}
