package dev.faircarry.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Bundles that one search by prices found and that the next one may begin with, by hiker: how many
 * blocks of each lot. The oldest are forgotten when there are many.
 */
final class KnownBundles {
  private static final int MOST = 300;

  private final List<Deque<int[]>> ofHiker = new ArrayList<>();

  KnownBundles(Model m) {
    for (int i = 0; i < m.hikers; i++) {
      ofHiker.add(new ArrayDeque<>());
    }
  }

  void add(int hiker, int[] bundle) {
    Deque<int[]> bundles = ofHiker.get(hiker);
    if (bundles.size() == MOST) {
      bundles.removeFirst();
    }
    bundles.addLast(bundle);
  }

  List<int[]> of(int hiker) {
    return List.copyOf(ofHiker.get(hiker));
  }
}
