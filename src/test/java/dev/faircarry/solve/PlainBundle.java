package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * What a bundle of one hiker breaks and is worth, worked out block by block from the model alone.
 * For trips where nobody leaves early.
 */
record PlainBundle(Lots lots, int hiker) {
  List<Block> blocks(int[] counts) {
    List<Block> blocks = new ArrayList<>();
    for (int c = 0; c < counts.length; c++) {
      blocks.addAll(lots.lots.get(c).subList(0, counts[c]));
    }
    return blocks;
  }

  int step(List<Block> blocks, int day) {
    return lots.m.step(hiker, day, mass(blocks, day));
  }

  private static long mass(List<Block> blocks, int day) {
    return blocks.stream().mapToLong(block -> block.massSince()[0][day]).sum();
  }

  /** Whether it keeps everything that concerns one hiker alone, and no morning is above a step. */
  boolean keeps(int[] counts, int highest, boolean withinCap) {
    List<Block> blocks = blocks(counts);
    return keepsLimits(counts, highest, withinCap) && !clashes(blocks);
  }

  /** The same but for what rules keep apart. */
  boolean keepsLimits(int[] counts, int highest, boolean withinCap) {
    Model m = lots.m;
    List<Block> blocks = blocks(counts);
    boolean keeps =
        blocks.stream().allMatch(block -> block.allowed()[0][hiker])
            && blocks.stream().mapToInt(block -> block.contents().size()).sum()
                <= m.maxPieces[hiker];
    for (int day = 0; day < m.days; day++) {
      int d = day;
      keeps &= step(blocks, d) <= highest;
      keeps &= !withinCap || m.excess(hiker, d, mass(blocks, d)) == 0;
      keeps &= blocks.stream().mapToLong(block -> block.volume()[d]).sum() <= m.room[hiker];
      for (int kind = 0; kind < m.kinds; kind++) {
        keeps &= boxed(blocks, kind, d);
      }
    }
    return keeps;
  }

  /** Own containers take what goes into containers, unless the group has one to hand out. */
  private boolean boxed(List<Block> blocks, int kind, int day) {
    if (lots.m.blocks.stream().anyMatch(block -> block.innerCount()[kind][day] > 0)) {
      return true;
    }
    long volume = blocks.stream().mapToLong(block -> block.kindVolume()[kind][day]).sum();
    boolean any = blocks.stream().anyMatch(block -> block.kindCount()[kind][day] > 0);
    return volume <= lots.m.ownInnerVolume[hiker][kind]
        && (!any || lots.m.ownInnerCount[hiker][kind] > 0);
  }

  private static boolean clashes(List<Block> blocks) {
    List<Block.Tag> tags = blocks.stream().flatMap(block -> block.tags().stream()).toList();
    return tags.stream()
        .anyMatch(
            one ->
                tags.stream()
                    .anyMatch(other -> other.rule() == one.rule() && other.ref() != one.ref()));
  }

  /** Prices of its blocks, less a fine for each morning above each value. */
  long worth(int[] counts, long[] prices, long[] fines) {
    long worth = 0;
    for (int c = 0; c < counts.length; c++) {
      worth += counts[c] * prices[c];
    }
    int[] over = mornings(counts);
    for (int v = 1; v < over.length; v++) {
      worth -= over[v] * fines[v];
    }
    return worth;
  }

  /** Mornings above each value but the highest. */
  int[] mornings(int[] counts) {
    List<Block> blocks = blocks(counts);
    int[] over = new int[lots.values.length];
    for (int v = 1; v < over.length; v++) {
      for (int d = 0; d < lots.m.days; d++) {
        over[v] += step(blocks, d) > lots.values[v] ? 1 : 0;
      }
    }
    return over;
  }

  /** Goes through all bundles with as many blocks of each lot as bounds say. */
  static void each(int[] fewest, int[] most, Consumer<int[]> bundle) {
    each(fewest, most, new int[fewest.length], 0, bundle);
  }

  private static void each(int[] fewest, int[] most, int[] counts, int at, Consumer<int[]> bundle) {
    if (at == counts.length) {
      bundle.accept(counts);
      return;
    }
    for (int n = fewest[at]; n <= most[at]; n++) {
      counts[at] = n;
      each(fewest, most, counts, at + 1, bundle);
    }
  }
}
