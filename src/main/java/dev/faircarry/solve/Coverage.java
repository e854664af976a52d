package dev.faircarry.solve;

/** What the parties hold of what they need, morning by morning, kept up to date for a state. */
final class Coverage {
  private final Model m;

  /** Items and units that cover, by need and day. */
  private final int[][] covering;

  /**
   * Parts of an item held inside a party, by item, party and day; only for items in parts that
   * cover a need.
   */
  private final int[][][] partsHeld;

  private int lacking;

  Coverage(Model model) {
    m = model;
    int parties = 0;
    for (int party : m.partyOf) {
      parties = Math.max(parties, party + 1);
    }
    covering = new int[m.needs.size()][m.days];
    partsHeld = new int[m.partsOfItem.length][][];
    for (int n = 0; n < m.needs.size(); n++) {
      Model.Need need = m.needs.get(n);
      for (int d = 0; d < m.days; d++) {
        covering[n][d] = need.own()[d];
        lacking += lacking(n, d);
      }
      for (int k = 0; k < m.partsOfItem.length; k++) {
        if (need.covering()[k] && m.partsOfItem[k] > 0 && partsHeld[k] == null) {
          partsHeld[k] = new int[parties][m.days];
        }
      }
    }
  }

  /** What is missing, summed over needs and mornings. */
  int lacking() {
    return lacking;
  }

  private int lacking(int need, int day) {
    return Math.max(0, m.needs.get(need).wanted()[day] - covering[need][day]);
  }

  /** Counts a block that a hiker gets (1) or gives away (-1) for a morning. */
  void count(Block block, int hiker, int d, int sign) {
    for (Block.Content content : block.contents()) {
      if (!content.there()[d]) {
        continue;
      }
      int change = sign;
      if (content.isPart()) {
        int[][] held = partsHeld[content.item()];
        if (held == null) {
          continue;
        }
        int all = m.partsOfItem[content.item()];
        int[] ofParty = held[m.partyOf[hiker]];
        boolean before = ofParty[d] == all;
        ofParty[d] += sign;
        boolean after = ofParty[d] == all;
        change = (after ? 1 : 0) - (before ? 1 : 0);
      }
      if (change == 0) {
        continue;
      }
      for (int n = 0; n < covering.length; n++) {
        Model.Need need = m.needs.get(n);
        if (need.who()[hiker] && need.covering()[content.item()]) {
          lacking -= lacking(n, d);
          covering[n][d] += change;
          lacking += lacking(n, d);
        }
      }
    }
  }
}
