package dev.faircarry.oracle;

import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** Plain bounds on the first level, and what splitting by hand would give. */
public final class FirstLevel {
  private final PlainTrip plain;

  public FirstLevel(Trip trip) {
    plain = new PlainTrip(trip);
  }

  /** The highest step that somebody's own kit alone causes. */
  public long ownKit() {
    long highest = 0;
    for (int i = 0; i < plain.hikers(); i++) {
      for (int day = 1; day <= plain.lastDay(i); day++) {
        highest = Math.max(highest, plain.step(i, day, 0));
      }
    }
    return highest;
  }

  /** The least step at which all loads together could take everything, if it were sand. */
  public long sheerTotal() {
    long highest = 0;
    for (int day = 1; day <= plain.trip.days(); day++) {
      long step = 0;
      while (roomAt(step, day) < sharedOn(day)) {
        step++;
      }
      highest = Math.max(highest, step);
    }
    return highest;
  }

  private long roomAt(long step, int day) {
    long room = 0;
    for (int i = 0; i < plain.hikers(); i++) {
      if (plain.present(i, day)) {
        room += Math.max(0, capacity(i, day, step));
      }
    }
    return room;
  }

  /** Most shared milligrams within a step; negative where own kit alone passes it. */
  private long capacity(int i, int day, long step) {
    if (plain.step(i, day, 0) > step) {
      return -1;
    }
    long low = 0;
    long high = 1_000_000_000L;
    while (low < high) {
      long middle = (low + high + 1) / 2;
      if (plain.step(i, day, middle) <= step) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  private long sharedOn(int day) {
    long sum = 0;
    for (Thing thing : plain.things) {
      int used = 0;
      for (int d = 1; d < day; d++) {
        used += thing.usedOnDay(d);
      }
      sum += used * thing.leavesMilligrams();
      sum += thing.thereOn(day) ? (thing.units() - used) * thing.milligrams(day) : 0;
    }
    return sum;
  }

  /**
   * Heaviest piece first, each to whoever is then least loaded by ratio on the first morning; rules
   * are not looked at. The first level of the first morning.
   */
  public long byHand() {
    List<Long> masses = new ArrayList<>();
    for (Thing thing : plain.things) {
      for (int u = 0; u < thing.units(); u++) {
        masses.add(thing.thereOn(1) ? thing.milligrams(1) : 0);
      }
    }
    masses.sort((x, y) -> Long.compare(y, x));
    long[] held = new long[plain.hikers()];
    for (long mass : masses) {
      int least = 0;
      for (int i = 1; i < held.length; i++) {
        if (ratioBelow(i, held[i], least, held[least])) {
          least = i;
        }
      }
      held[least] += mass;
    }
    long highest = 0;
    for (int i = 0; i < held.length; i++) {
      highest = Math.max(highest, plain.step(i, 1, held[i]));
    }
    return highest;
  }

  private boolean ratioBelow(int i, long heldI, int j, long heldJ) {
    var loadI = PlainTrip.nanograms(heldI + plain.own(i, 1, false));
    var loadJ = PlainTrip.nanograms(heldJ + plain.own(j, 1, false));
    return loadI.multiply(plain.target(j)).compareTo(loadJ.multiply(plain.target(i))) < 0;
  }
}
