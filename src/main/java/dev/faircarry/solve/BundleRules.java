package dev.faircarry.solve;

import java.util.Arrays;

/**
 * Whether one hiker may hold a bundle: the hard rules that concern a single pack, on trips where
 * nobody leaves early.
 */
final class BundleRules {
  private final Pool pool;
  private final Model m;
  private final boolean plain;
  private final long[] volume;
  private final long[][] kindVolume;
  private final int[][] kindCount;
  private final long[][] innerVolume;
  private final int[][] innerCount;
  private final int[] refOfRule;

  /** What the bundle weighs on each morning, fixed blocks included; filled by {@link #read}. */
  final long[] mass;

  BundleRules(Pool pool) {
    this.pool = pool;
    m = pool.m;
    volume = new long[m.days];
    kindVolume = new long[m.kinds][m.days];
    kindCount = new int[m.kinds][m.days];
    innerVolume = new long[m.kinds][m.days];
    innerCount = new int[m.kinds][m.days];
    refOfRule = new int[m.apartRules];
    mass = new long[m.days];
    boolean anyRoom = false;
    for (int i : pool.group) {
      anyRoom |= m.room[i] < Model.UNLIMITED || m.maxPieces[i] < Integer.MAX_VALUE;
    }
    plain = !anyRoom && m.kinds == 0 && m.apartRules == 0;
  }

  /** Sums up a bundle with the fixed blocks of a hiker; false where a rule forbids it. */
  boolean read(int position, long bits, long counts) {
    Arrays.fill(mass, 0);
    if (!plain) {
      clear(position);
    }
    int pieces = 0;
    for (int block : pool.fixed.get(position)) {
      pieces += m.blocks.get(block).contents().size();
      if (!add(m.blocks.get(block), 1)) {
        return false;
      }
    }
    for (int e = 0; e < pool.entries.size(); e++) {
      int units = pool.held(e, bits, counts);
      if (units > 0) {
        pieces += units * pool.sample(e).contents().size();
        if (!add(pool.sample(e), units)) {
          return false;
        }
      }
    }
    return plain || keeps(pool.group[position], pieces);
  }

  private void clear(int position) {
    Arrays.fill(volume, 0);
    Arrays.fill(refOfRule, -1);
    for (int k = 0; k < m.kinds; k++) {
      Arrays.fill(kindVolume[k], 0);
      Arrays.fill(kindCount[k], 0);
      Arrays.fill(innerVolume[k], m.ownInnerVolume[pool.group[position]][k]);
      Arrays.fill(innerCount[k], m.ownInnerCount[pool.group[position]][k]);
    }
  }

  private boolean add(Block block, int units) {
    long[] masses = block.massSince()[0];
    for (int d = 0; d < m.days; d++) {
      mass[d] += units * masses[d];
    }
    if (plain) {
      return true;
    }
    for (Block.Tag tag : block.tags()) {
      if (refOfRule[tag.rule()] >= 0 && refOfRule[tag.rule()] != tag.ref()) {
        return false;
      }
      refOfRule[tag.rule()] = tag.ref();
    }
    for (int d = 0; d < m.days; d++) {
      volume[d] += units * block.volume()[d];
      for (int k = 0; k < m.kinds; k++) {
        kindVolume[k][d] += units * block.kindVolume()[k][d];
        kindCount[k][d] += units * block.kindCount()[k][d];
        innerVolume[k][d] += units * block.innerVolume()[k][d];
        innerCount[k][d] += units * block.innerCount()[k][d];
      }
    }
    return true;
  }

  private boolean keeps(int hiker, int pieces) {
    if (pieces > m.maxPieces[hiker]) {
      return false;
    }
    for (int d = 0; d < m.days; d++) {
      if (volume[d] > m.room[hiker]) {
        return false;
      }
      for (int k = 0; k < m.kinds; k++) {
        boolean bare = kindCount[k][d] > 0 && innerCount[k][d] == 0;
        if (bare || kindVolume[k][d] > innerVolume[k][d]) {
          return false;
        }
      }
    }
    return true;
  }
}
