package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The ways in which one block can go through the stages: a first holder, and a next one whenever a
 * holder leaves.
 */
final class Routes {
  private Routes() {}

  /** Chooses the next holder of a block at the start of a stage among those who may hold it. */
  interface Chooser {
    int choose(Block block, int stage, List<Integer> candidates);
  }

  /**
   * The route from a first holder, with the chooser asked at each handover; empty if nobody may
   * take over.
   */
  static int[] from(Model m, Block block, int first, Chooser chooser) {
    int[] route = new int[m.stages];
    Arrays.fill(route, State.NOBODY);
    route[0] = first;
    for (int s = 1; s < m.stages; s++) {
      if (m.presentInStage(route[s - 1], s)) {
        route[s] = route[s - 1];
      } else if (block.neededUntil() < m.stageStart[s]) {
        return route;
      } else {
        List<Integer> candidates = holders(m, block, s);
        if (candidates.isEmpty()) {
          return new int[0];
        }
        route[s] = chooser.choose(block, s, candidates);
      }
    }
    return route;
  }

  /** Who may hold the block in a stage. */
  static List<Integer> holders(Model m, Block block, int stage) {
    List<Integer> list = new ArrayList<>();
    for (int i = 0; i < m.hikers; i++) {
      if (block.allowed()[stage][i]) {
        list.add(i);
      }
    }
    return list;
  }

  /**
   * Every route of a block, in order of first holder and so on; no more than {@code limit} of them.
   */
  static List<int[]> all(Model m, Block block, int limit) {
    List<int[]> found = new ArrayList<>();
    for (int first : holders(m, block, 0)) {
      int[] route = new int[m.stages];
      Arrays.fill(route, State.NOBODY);
      route[0] = first;
      extend(m, block, route, 1, limit, found);
    }
    return found;
  }

  private static void extend(
      Model m, Block block, int[] route, int stage, int limit, List<int[]> found) {
    if (found.size() >= limit) {
      return;
    }
    if (stage == m.stages) {
      found.add(route.clone());
      return;
    }
    if (m.presentInStage(route[stage - 1], stage)) {
      route[stage] = route[stage - 1];
      extend(m, block, route, stage + 1, limit, found);
    } else if (block.neededUntil() < m.stageStart[stage]) {
      found.add(route.clone());
    } else {
      for (int next : holders(m, block, stage)) {
        route[stage] = next;
        extend(m, block, route, stage + 1, limit, found);
      }
    }
    Arrays.fill(route, stage, route.length, State.NOBODY);
  }
}
