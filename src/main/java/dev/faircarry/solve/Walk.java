package dev.faircarry.solve;

/** Whether a route is one a block can go. */
final class Walk {
  private Walk() {}

  /**
   * True where every holder may hold the block, is there, passes it on only when leaving, and the
   * route ends no earlier than the block is needed and is not passed on after that.
   */
  static boolean valid(Model m, Block block, int[] route) {
    for (int s = 0; s < m.stages; s++) {
      int who = route[s];
      boolean needed = block.neededUntil() >= m.stageStart[s];
      if (who == State.NOBODY) {
        if (needed) {
          return false;
        }
        continue;
      }
      boolean stays = s > 0 && route[s - 1] == who;
      if (needed && !block.allowed()[s][who]) {
        return false;
      }
      if (!needed && !stays) {
        return false;
      }
      if (s > 0 && !stays && route[s - 1] != State.NOBODY && m.presentInStage(route[s - 1], s)) {
        return false;
      }
    }
    return true;
  }
}
