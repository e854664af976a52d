package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What one hiker's bundles may use up: mass on each morning within a step, room, containers of
 * one's own, number of pieces; and what a rule keeps apart. Used amounts are arrays with an entry
 * for each limit; the mornings' masses come first, so that fines can be read off them.
 */
final class BundleLimits {
  private final Lots program;
  private final int hiker;
  private final int value;

  private final List<long[]> rows = new ArrayList<>();
  private final List<Long> limits = new ArrayList<>();
  private final int[] most;
  private final long[][] uses;
  private final long[] limit;
  private final long[][] parts;
  private int partsFor;

  private interface Uses {
    long of(int lot);
  }

  /**
   * Limits of a hiker.
   *
   * @param value which value of the wish no morning may be above
   * @param excessLimit whether caps may be passed at all: 0 where not
   */
  BundleLimits(Lots program, int hiker, int value, long excessLimit) {
    this.program = program;
    this.hiker = hiker;
    this.value = value;
    Model m = program.m;
    int lots = program.lots.size();
    most = new int[lots];
    for (int c = 0; c < lots; c++) {
      most[c] = program.sample(c).allowed()[0][hiker] ? program.size(c) : 0;
    }
    for (int d = 0; d < m.days; d++) {
      int day = d;
      long cap = excessLimit == 0 ? m.capMilligrams[hiker] - m.ownLoad[hiker][d] : Model.UNLIMITED;
      long room = Math.min(cap, m.capacity(hiker, d, program.values[value]));
      add(room, true, c -> program.sample(c).massSince()[0][day]);
    }
    for (int d = 0; d < m.days; d++) {
      int day = d;
      add(m.room[hiker], false, c -> program.sample(c).volume()[day]);
      for (int k = 0; k < m.kinds; k++) {
        addContainers(k, d);
      }
    }
    add(m.maxPieces[hiker], false, c -> program.sample(c).contents().size());
    limit = limits.stream().mapToLong(l -> l).toArray();
    uses = new long[lots][limit.length];
    parts = new long[lots][limit.length];
    for (int c = 0; c < lots; c++) {
      for (int r = 0; r < limit.length; r++) {
        uses[c][r] = rows.get(r)[c];
      }
    }
  }

  /** What is in containers must fit those of one's own; containers of the group are left open. */
  private void addContainers(int kind, int day) {
    Model m = program.m;
    for (int c = 0; c < most.length; c++) {
      if (program.sample(c).innerCount()[kind][day] > 0) {
        return;
      }
    }
    add(m.ownInnerVolume[hiker][kind], false, c -> program.sample(c).kindVolume()[kind][day]);
    if (m.ownInnerCount[hiker][kind] == 0) {
      add(0, false, c -> program.sample(c).kindCount()[kind][day]);
    }
  }

  /** Adds a limit; left out where it cannot be passed or is there already, unless it must stay. */
  private void add(long limit, boolean stays, Uses uses) {
    long[] each = new long[most.length];
    long all = 0;
    for (int c = 0; c < each.length; c++) {
      each[c] = uses.of(c);
      if (each[c] > 0) {
        most[c] = (int) Math.min(most[c], Math.max(0, limit) / each[c]);
      }
      all += each[c] * most[c];
    }
    boolean known = false;
    for (int r = 0; r < rows.size(); r++) {
      known |= limits.get(r) <= limit && Arrays.equals(rows.get(r), each);
    }
    if (stays || (all > limit && !known)) {
      rows.add(each);
      limits.add(limit);
    }
  }

  int size() {
    return limit.length;
  }

  /** Most blocks of a lot that anything here leaves room for. */
  int most(int lot) {
    return most[lot];
  }

  boolean isMass(int r) {
    return r < program.m.days;
  }

  /** What a block of a lot uses of a limit. */
  long uses(int lot, int r) {
    return uses[lot][r];
  }

  /** The same as a part of the limit, in so many parts, rounded down. */
  long part(int lot, int r, int full) {
    if (partsFor != full) {
      partsFor = full;
      for (int c = 0; c < parts.length; c++) {
        for (int k = 0; k < limit.length; k++) {
          parts[c][k] = most[c] == 0 || limit[k] <= 0 ? 0 : uses[c][k] * full / limit[k];
        }
      }
    }
    return parts[lot][r];
  }

  void use(long[] used, int lot, int blocks) {
    long[] each = uses[lot];
    for (int r = 0; r < used.length; r++) {
      used[r] += blocks * each[r];
    }
  }

  boolean keep(long[] used) {
    for (int r = 0; r < used.length; r++) {
      if (used[r] > limit[r]) {
        return false;
      }
    }
    return true;
  }

  /** Whether one more block of a lot keeps all limits. */
  boolean fits(long[] used, int lot) {
    long[] each = uses[lot];
    for (int r = 0; r < used.length; r++) {
      if (used[r] + each[r] > limit[r]) {
        return false;
      }
    }
    return true;
  }

  long left(int r, long[] used) {
    return limit[r] - used[r];
  }

  /** Whether a rule keeps a lot apart from something in a bundle. */
  boolean clash(int lot, int[] counts) {
    for (int c : program.apart[lot]) {
      if (counts[c] > 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether a rule keeps something in a bundle apart from something else in it. */
  boolean clash(int[] counts) {
    for (int c = 0; c < counts.length; c++) {
      if (counts[c] > 0 && clash(c, counts)) {
        return true;
      }
    }
    return false;
  }

  /** Fines for mornings above values of the wish. */
  Fines fines(long[] ofValue) {
    return new Fines(ofValue);
  }

  /** What mornings above values of the wish cost. */
  final class Fines {
    private final long[] ofValue;
    private final long[][] room;
    private final long least;

    private Fines(long[] ofValue) {
      this.ofValue = ofValue;
      Model m = program.m;
      room = new long[m.days][ofValue.length];
      long sum = 0;
      for (int v = value + 1; v < ofValue.length; v++) {
        sum += ofValue[v];
        for (int d = 0; d < m.days; d++) {
          room[d][v] = m.capacity(hiker, d, program.values[v]);
        }
      }
      least = sum;
    }

    /**
     * What bundles cost at least that have a morning above the value next below; all others are
     * within that value, and are searched there.
     */
    long least() {
      return least;
    }

    /** For mornings with so much mass; more mass never costs less. */
    long of(long[] used) {
      long sum = 0;
      for (int d = 0; d < room.length; d++) {
        for (int v = ofValue.length - 1; v > value && used[d] > room[d][v]; v--) {
          sum += ofValue[v];
        }
      }
      return sum;
    }
  }
}
