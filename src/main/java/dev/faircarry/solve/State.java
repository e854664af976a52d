package dev.faircarry.solve;

import java.util.Arrays;

/**
 * Who holds what, stage by stage, with every sum the rules need kept up to date as blocks are put
 * and taken.
 *
 * <p>Broken hard rules are counted in three kinds: those that putting more blocks never mends,
 * contents without a fitting container, and what parties lack.
 */
final class State {
  static final int NOBODY = -1;

  final Model m;

  /**
   * Holder by block and stage; {@link #NOBODY} for a block not put, and in stages after its last
   * holder left.
   */
  final int[][] holder;

  /** Shared milligrams by morning. */
  final long[] shared;

  /** Step by morning; -1 where the hiker is not there. */
  final int[] step;

  /** Thousandths over cap by morning, and in all. */
  final long[] excess;

  long totalExcess;

  /** Room, apart and piece limits broken. */
  int strict;

  /** Mornings and kinds whose contents do not fit the containers held. */
  int unboxed;

  /** Milliliters over the rooms of packs and containers, summed over mornings. */
  long overflow;

  private final long[] volume;
  private final long[][] kindVolume;
  private final int[][] kindCount;
  private final long[][] innerVolume;
  private final int[][] innerCount;

  /** Blocks with a tag by stage, hiker, apart rule and reference. */
  private final int[][][][] tagged;

  private final int[] pieces;

  private final Coverage coverage;

  State(Model model) {
    m = model;
    int cells = m.hikers * m.days;
    holder = new int[m.blocks.size()][m.stages];
    for (int[] row : holder) {
      Arrays.fill(row, NOBODY);
    }
    shared = new long[cells];
    step = new int[cells];
    excess = new long[cells];
    volume = new long[cells];
    kindVolume = new long[m.kinds][cells];
    kindCount = new int[m.kinds][cells];
    innerVolume = new long[m.kinds][cells];
    innerCount = new int[m.kinds][cells];
    tagged = new int[m.stages][m.hikers][m.apartRules][];
    pieces = new int[m.hikers];
    coverage = new Coverage(m);
    start();
  }

  private void start() {
    for (int i = 0; i < m.hikers; i++) {
      for (int d = 0; d < m.days; d++) {
        int cell = i * m.days + d;
        if (m.present(i, d)) {
          step[cell] = m.step(i, d, 0);
          excess[cell] = m.excess(i, d, 0);
          totalExcess += excess[cell];
        } else {
          step[cell] = -1;
        }
        for (int k = 0; k < m.kinds; k++) {
          innerVolume[k][cell] = m.ownInnerVolume[i][k];
          innerCount[k][cell] = m.ownInnerCount[i][k];
        }
      }
    }
    int refs = 0;
    for (Block block : m.blocks) {
      for (Block.Tag tag : block.tags()) {
        refs = Math.max(refs, tag.ref() + 1);
      }
    }
    for (int[][][] stage : tagged) {
      for (int[][] hiker : stage) {
        for (int r = 0; r < hiker.length; r++) {
          hiker[r] = new int[refs];
        }
      }
    }
  }

  /**
   * Puts a block with one hiker, to hold as long as there; must not leave while the block is
   * needed.
   */
  void put(int block, int hiker) {
    int[] route = holder[block];
    for (int s = 0; s < m.stages; s++) {
      route[s] = m.presentInStage(hiker, s) ? hiker : NOBODY;
    }
    count(block, 1);
  }

  /** Puts a block on a route: a holder for each stage. */
  void put(int block, int[] route) {
    System.arraycopy(route, 0, holder[block], 0, m.stages);
    count(block, 1);
  }

  /** Takes a block from whoever holds it. */
  void take(int block) {
    count(block, -1);
    Arrays.fill(holder[block], NOBODY);
  }

  /** Broken hard rules in all; 0 for a split once every block is put. */
  int broken() {
    return strict + unboxed + coverage.lacking();
  }

  /** Whether a block has been put. */
  boolean held(int block) {
    return holder[block][0] != NOBODY;
  }

  private void count(int index, int sign) {
    Block block = m.blocks.get(index);
    int[] route = holder[index];
    int since = 0;
    for (int s = 0; s < m.stages && route[s] != NOBODY; s++) {
      if (s > 0 && route[s] != route[s - 1]) {
        since = s;
      }
      int hiker = route[s];
      for (int d = m.stageStart[s]; d <= m.stageEnd[s]; d++) {
        countMorning(block, hiker, d, since, sign);
      }
      for (Block.Tag tag : block.tags()) {
        if (tag.neededUntil() >= m.stageStart[s]) {
          countTag(tagged[s][hiker][tag.rule()], tag.ref(), sign);
        }
      }
    }
    countPieces(route[0], sign * block.contents().size());
  }

  private void countMorning(Block block, int hiker, int d, int since, int sign) {
    int cell = hiker * m.days + d;
    shared[cell] += sign * block.massSince()[since][d];
    step[cell] = m.step(hiker, d, shared[cell]);
    totalExcess -= excess[cell];
    excess[cell] = m.excess(hiker, d, shared[cell]);
    totalExcess += excess[cell];
    if (block.volume()[d] != 0 && m.room[hiker] < Model.UNLIMITED) {
      long over = Math.max(0, volume[cell] - m.room[hiker]);
      volume[cell] += sign * block.volume()[d];
      long overNow = Math.max(0, volume[cell] - m.room[hiker]);
      strict += Long.signum(overNow) - Long.signum(over);
      overflow += overNow - over;
    }
    for (int k = 0; k < m.kinds; k++) {
      if (block.kindCount()[k][d] != 0 || block.innerCount()[k][d] != 0) {
        unboxed -= unboxed(k, cell);
        overflow -= spilt(k, cell);
        kindVolume[k][cell] += sign * block.kindVolume()[k][d];
        kindCount[k][cell] += sign * block.kindCount()[k][d];
        innerVolume[k][cell] += sign * block.innerVolume()[k][d];
        innerCount[k][cell] += sign * block.innerCount()[k][d];
        unboxed += unboxed(k, cell);
        overflow += spilt(k, cell);
      }
    }
    if (!m.needs.isEmpty()) {
      coverage.count(block, hiker, d, sign);
    }
  }

  private int unboxed(int kind, int cell) {
    boolean bare = kindCount[kind][cell] > 0 && innerCount[kind][cell] == 0;
    return bare || kindVolume[kind][cell] > innerVolume[kind][cell] ? 1 : 0;
  }

  private long spilt(int kind, int cell) {
    return Math.max(0, kindVolume[kind][cell] - innerVolume[kind][cell]);
  }

  private void countTag(int[] refs, int ref, int sign) {
    strict -= mixed(refs);
    refs[ref] += sign;
    strict += mixed(refs);
  }

  private static int mixed(int[] refs) {
    int kinds = 0;
    for (int count : refs) {
      kinds += count > 0 ? 1 : 0;
    }
    return Math.max(0, kinds - 1);
  }

  private void countPieces(int hiker, int change) {
    int most = m.maxPieces[hiker];
    strict -= Math.max(0, pieces[hiker] - most);
    pieces[hiker] += change;
    strict += Math.max(0, pieces[hiker] - most);
  }

  /** The steps of all hiker-mornings, from highest to lowest. */
  int[] list() {
    int[] list = new int[m.mornings()];
    int at = 0;
    for (int s : step) {
      if (s >= 0) {
        list[at++] = s;
      }
    }
    return Steps.sortDescending(list);
  }

  /** A copy of who holds what. */
  int[][] routes() {
    int[][] copy = new int[holder.length][];
    for (int k = 0; k < copy.length; k++) {
      copy[k] = holder[k].clone();
    }
    return copy;
  }

  /** Puts everything as a copy says. */
  void restore(int[][] routes) {
    for (int k = 0; k < routes.length; k++) {
      if (!Arrays.equals(holder[k], routes[k])) {
        if (held(k)) {
          take(k);
        }
        if (routes[k][0] != NOBODY) {
          put(k, routes[k]);
        }
      }
    }
  }
}
