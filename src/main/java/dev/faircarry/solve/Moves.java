package dev.faircarry.solve;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Counts handovers from an earlier split. Pieces and units are counted by reference: what a hiker
 * has more of than before was taken over, less what is new on the trip. With n held now, e before,
 * N in all now and E before:
 *
 * <p>handovers = sum over references of (sum over hikers of max(0, n - e)) - max(0, N - E).
 */
final class Moves {
  /** Every reference of the trip, whole items, parts and counted items alike. */
  final List<PieceRef> refs = new ArrayList<>();

  /** Index of the reference of each content, by block. */
  final int[][] refsOf;

  /** Units before, by reference and hiker of the trip as it is now. */
  final int[][] before;

  /** Units now, by reference. */
  final int[] now;

  /** Units whose taking over is a first assignment, summed over references. */
  final int fresh;

  /** Sum over references of units that hikers still there had, less units there are now. */
  final int released;

  /** Fewest handovers that the pieces of those who are gone call for. */
  final int forced;

  Moves(Model m, Split earlier) {
    Map<PieceRef, Integer> index = new HashMap<>();
    refsOf = new int[m.blocks.size()][];
    for (Block block : m.blocks) {
      int[] of = new int[block.contents().size()];
      for (int c = 0; c < of.length; c++) {
        PieceRef ref = block.contents().get(c).ref();
        Integer known = index.get(ref);
        if (known == null) {
          known = refs.size();
          index.put(ref, known);
          refs.add(ref);
        }
        of[c] = known;
      }
      refsOf[block.index()] = of;
    }
    Map<String, Integer> hikers = new HashMap<>();
    for (int i = 0; i < m.hikers; i++) {
      hikers.put(m.trip.hikers().get(i).id(), i);
    }
    before = new int[refs.size()][m.hikers];
    now = new int[refs.size()];
    for (int[] of : refsOf) {
      for (int ref : of) {
        now[ref]++;
      }
    }
    int[] all = new int[refs.size()];
    for (Carry carry : earlier.carries()) {
      Integer ref = index.get(carry.piece());
      if (ref != null) {
        all[ref] += carry.units();
        Integer hiker = hikers.get(carry.hiker());
        if (hiker != null) {
          before[ref][hiker] += carry.units();
        }
      }
    }
    int freshUnits = 0;
    int releasedUnits = 0;
    int forcedUnits = 0;
    for (int r = 0; r < now.length; r++) {
      int there = 0;
      for (int units : before[r]) {
        there += units;
      }
      freshUnits += Math.max(0, now[r] - all[r]);
      releasedUnits += there - now[r];
      forcedUnits += Math.max(0, now[r] - there) - Math.max(0, now[r] - all[r]);
    }
    fresh = freshUnits;
    released = releasedUnits;
    forced = forcedUnits;
  }

  /** Units by reference and hiker as a state has them at departure. */
  int[][] held(State state) {
    int[][] held = new int[refs.size()][state.m.hikers];
    for (int b = 0; b < refsOf.length; b++) {
      int hiker = state.holder[b][0];
      if (hiker != State.NOBODY) {
        for (int ref : refsOf[b]) {
          held[ref][hiker]++;
        }
      }
    }
    return held;
  }

  /** How many handovers lead from the earlier split to a state. */
  int count(State state) {
    int[][] held = held(state);
    int gained = 0;
    for (int r = 0; r < held.length; r++) {
      for (int i = 0; i < held[r].length; i++) {
        gained += Math.max(0, held[r][i] - before[r][i]);
      }
    }
    return gained - fresh;
  }

  /**
   * How many units more or fewer than before go to a hiker with a block: the change of what that
   * hiker gained.
   */
  int gain(int[][] held, int block, int hiker, int sign) {
    int gain = 0;
    for (int ref : refsOf[block]) {
      gain -= Math.max(0, held[ref][hiker] - before[ref][hiker]);
      held[ref][hiker] += sign;
      gain += Math.max(0, held[ref][hiker] - before[ref][hiker]);
    }
    return gain;
  }
}
