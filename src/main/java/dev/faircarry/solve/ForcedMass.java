package dev.faircarry.solve;

/**
 * What a hiker must hold in every split, in milligrams: blocks that nobody else may hold, and units
 * for which the containers of all others are not enough. Known for trips that nobody leaves early;
 * 0 otherwise.
 *
 * <p>With N units of one volume that go into containers, and room for q_j of them with hiker j,
 * hiker i holds at least N - (sum of q_j over all others).
 */
final class ForcedMass {
  private final Model m;
  private final long[][] milligrams;

  private ForcedMass(Model model) {
    m = model;
    milligrams = new long[m.hikers][m.days];
  }

  /** By hiker and day. */
  static long[][] of(Model m) {
    ForcedMass forced = new ForcedMass(m);
    for (int d = 0; m.stages == 1 && d < m.days; d++) {
      forced.addPinned(d);
      for (int k = 0; k < m.kinds; k++) {
        forced.addContained(k, d);
      }
    }
    return forced.milligrams;
  }

  private void addPinned(int day) {
    for (Block block : m.blocks) {
      int hiker = onlyHolder(block);
      if (hiker >= 0 && kindsOf(block, day) == 0) {
        milligrams[hiker][day] += block.massSince()[0][day];
      }
    }
  }

  /** The only hiker who may hold a block; -1 where there are several. */
  private int onlyHolder(Block block) {
    int only = -1;
    for (int i = 0; i < m.hikers; i++) {
      if (block.allowed()[0][i]) {
        if (only >= 0) {
          return -1;
        }
        only = i;
      }
    }
    return only;
  }

  /** For how many kinds of container a block has contents on a day. */
  private int kindsOf(Block block, int day) {
    int kinds = 0;
    for (int[] counts : block.kindCount()) {
      kinds += counts[day] > 0 ? 1 : 0;
    }
    return kinds;
  }

  private void addContained(int kind, int day) {
    long volume = -1;
    long least = Long.MAX_VALUE;
    long units = 0;
    for (Block block : m.blocks) {
      boolean box = block.innerCount()[kind][day] > 0;
      boolean content = block.kindCount()[kind][day] > 0;
      long needs = block.kindVolume()[kind][day];
      if (box
          || (content
              && (needs <= 0 || kindsOf(block, day) > 1 || (volume >= 0 && needs != volume)))) {
        return;
      }
      if (content) {
        volume = needs;
        least = Math.min(least, block.massSince()[0][day]);
        units++;
      }
    }
    if (units == 0) {
      return;
    }
    long room = 0;
    for (int i = 0; i < m.hikers; i++) {
      room += m.ownInnerVolume[i][kind] / volume;
    }
    for (int i = 0; i < m.hikers; i++) {
      long others = room - m.ownInnerVolume[i][kind] / volume;
      milligrams[i][day] += Math.max(0, units - others) * least;
    }
  }
}
