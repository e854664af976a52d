package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The blocks that a group of hikers holds, grouped into classes of equal ones and packed into
 * words.
 */
final class Pool {
  private static final int WORD = 64;

  final Model m;
  final int[] group;

  /**
   * Blocks of each entry; entries with more than one block are counted in a field of the second
   * word.
   */
  final List<List<Integer>> entries = new ArrayList<>();

  /** Blocks that only one of the group may hold, by position in the group. */
  final List<List<Integer>> fixed = new ArrayList<>();

  /** Unit of each entry in its word, and whether the word is the bits. */
  final long[] unit;

  final boolean[] isBit;
  final int[] shift;
  long allBits;
  long allCounts;
  long guards;

  /** Whether everything fits into the two words. */
  final boolean fitsWords;

  Pool(Model model, State state, int[] group) {
    m = model;
    this.group = group;
    for (int ignored : group) {
      fixed.add(new ArrayList<>());
    }
    Map<Integer, List<Integer>> classes = new LinkedHashMap<>();
    for (Block block : m.blocks) {
      int at = position(state.holder[block.index()][0]);
      if (at < 0) {
        continue;
      }
      int only = onlyPosition(block);
      if (only >= 0) {
        fixed.get(only).add(block.index());
      } else {
        classes.computeIfAbsent(block.symmetryClass(), c -> new ArrayList<>()).add(block.index());
      }
    }
    entries.addAll(classes.values());
    entries.sort(
        (x, y) -> {
          int byMass =
              Long.compare(
                  m.blocks.get(y.get(0)).departureMass(), m.blocks.get(x.get(0)).departureMass());
          return byMass != 0 ? byMass : Integer.compare(x.get(0), y.get(0));
        });
    unit = new long[entries.size()];
    isBit = new boolean[entries.size()];
    shift = new int[entries.size()];
    fitsWords = pack();
  }

  private int position(int hiker) {
    for (int g = 0; g < group.length; g++) {
      if (group[g] == hiker) {
        return g;
      }
    }
    return -1;
  }

  private int onlyPosition(Block block) {
    int only = -1;
    for (int g = 0; g < group.length; g++) {
      if (block.allowed()[0][group[g]]) {
        if (only >= 0) {
          return -1;
        }
        only = g;
      }
    }
    return only;
  }

  private boolean pack() {
    int bits = 0;
    int counts = 0;
    for (int e = 0; e < entries.size(); e++) {
      int size = entries.get(e).size();
      isBit[e] = size == 1;
      if (isBit[e]) {
        if (bits == WORD) {
          return false;
        }
        shift[e] = bits;
        unit[e] = 1L << bits++;
        allBits |= unit[e];
      } else {
        int width = WORD - Long.numberOfLeadingZeros(size);
        if (counts + width + 1 > WORD) {
          return false;
        }
        shift[e] = counts;
        unit[e] = 1L << counts;
        allCounts += (long) size << counts;
        guards |= 1L << (counts + width);
        counts += width + 1;
      }
    }
    return true;
  }

  /** How many blocks of an entry a bundle holds. */
  int held(int entry, long bits, long counts) {
    if (isBit[entry]) {
      return (bits & unit[entry]) != 0 ? 1 : 0;
    }
    int width = WORD - Long.numberOfLeadingZeros(entries.get(entry).size());
    return (int) ((counts >>> shift[entry]) & ((1L << width) - 1));
  }

  Block sample(int entry) {
    return m.blocks.get(entries.get(entry).get(0));
  }
}
