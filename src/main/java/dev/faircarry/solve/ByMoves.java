package dev.faircarry.solve;

/**
 * All bundles of a hiker that stay within a budget of gains and drops, entry by entry: few when
 * little may change hands, where sums of masses would let almost everything through.
 */
final class ByMoves {
  private final Pool pool;
  private final Budget budget;
  private final int hiker;
  private final long least;
  private final long most;

  /** Milligrams of the entries from one on. */
  private final long[] massLeft;

  private final int day;
  private final Halves.Taker taker;

  /** Units held and units still to come, by reference. */
  private final int[] held;

  private final int[] left;
  private long steps;
  private long stepsLeft;

  private ByMoves(
      Pool pool,
      int position,
      int day,
      Budget budget,
      long least,
      long most,
      long stepLimit,
      Halves.Taker taker) {
    this.pool = pool;
    this.budget = budget;
    this.day = day;
    this.least = least;
    this.most = most;
    massLeft = new long[pool.entries.size() + 1];
    for (int e = pool.entries.size() - 1; e >= 0; e--) {
      Block block = pool.sample(e);
      long all = pool.entries.get(e).size() * block.massSince()[0][day];
      massLeft[e] = massLeft[e + 1] + (block.allowed()[0][pool.group[position]] ? all : 0);
    }
    this.taker = taker;
    hiker = pool.group[position];
    stepsLeft = stepLimit;
    held = new int[budget.moves().refs.size()];
    left = new int[held.length];
  }

  /**
   * Hands over every bundle within the budget whose mass is not below {@code least} and not above
   * {@code most}; returns the steps it took, or -1 if it met the step limit.
   */
  static long walk(
      Pool pool,
      int position,
      int day,
      Budget budget,
      long least,
      long most,
      long stepLimit,
      Halves.Taker taker) {
    ByMoves walk = new ByMoves(pool, position, day, budget, least, most, stepLimit, taker);
    for (int block : pool.fixed.get(position)) {
      walk.shift(walk.held, block, 1);
    }
    for (var entry : pool.entries) {
      if (walk.mayHold(pool.m.blocks.get(entry.get(0)))) {
        walk.shift(walk.left, entry.get(0), entry.size());
      }
    }
    int gained = 0;
    int dropped = 0;
    for (int r = 0; r < walk.held.length; r++) {
      gained += walk.gained(r);
      dropped += walk.dropped(r);
    }
    walk.descend(0, 0, 0, 0, gained, dropped);
    return walk.stepsLeft < 0 ? -1 : walk.steps;
  }

  private void shift(int[] counts, int block, int units) {
    for (int ref : budget.moves().refsOf[block]) {
      counts[ref] += units;
    }
  }

  private boolean mayHold(Block block) {
    return block.allowed()[0][hiker];
  }

  private int gained(int ref) {
    return Math.max(0, held[ref] - budget.moves().before[ref][hiker]);
  }

  /** Units of a reference that are dropped even if all still to come are taken. */
  private int dropped(int ref) {
    return Math.max(0, budget.moves().before[ref][hiker] - held[ref] - left[ref]);
  }

  private void descend(int e, long bits, long counts, long mass, int gained, int dropped) {
    steps++;
    if (--stepsLeft < 0
        || gained > budget.gains()
        || dropped > budget.drops()
        || mass > most
        || mass + massLeft[e] < least) {
      return;
    }
    if (e == pool.entries.size()) {
      if (!taker.take(bits, counts)) {
        stepsLeft = -1;
      }
      return;
    }
    int block = pool.entries.get(e).get(0);
    if (!mayHold(pool.sample(e))) {
      descend(e + 1, bits, counts, mass, gained, dropped);
      return;
    }
    int size = pool.entries.get(e).size();
    long unitMass = pool.sample(e).massSince()[0][day];
    for (int u = 0; u <= size && stepsLeft >= 0; u++) {
      int g = gained - of(block, true);
      int d = dropped - of(block, false);
      shift(held, block, u);
      shift(left, block, -size);
      descend(
          e + 1,
          bits | (pool.isBit[e] && u > 0 ? pool.unit[e] : 0),
          counts + (pool.isBit[e] ? 0 : u * pool.unit[e]),
          mass + u * unitMass,
          g + of(block, true),
          d + of(block, false));
      shift(held, block, -u);
      shift(left, block, size);
    }
  }

  /** Gains or drops of the references of a block, each reference once. */
  private int of(int block, boolean gains) {
    int sum = 0;
    int[] refs = budget.moves().refsOf[block];
    for (int k = 0; k < refs.length; k++) {
      boolean seen = false;
      for (int q = 0; q < k; q++) {
        seen |= refs[q] == refs[k];
      }
      sum += seen ? 0 : gains ? gained(refs[k]) : dropped(refs[k]);
    }
    return sum;
  }
}
