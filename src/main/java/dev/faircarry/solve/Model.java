package dev.faircarry.solve;

import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Rounding;
import java.util.List;

/**
 * A trip as the search sees it: plain arrays, milligrams, days counted from 0.
 *
 * <p>A morning is a hiker and a day on which that hiker is there; its index is {@code hiker * days
 * + day}.
 */
final class Model {
  /** Stands for "no limit". */
  static final long UNLIMITED = Long.MAX_VALUE / 4;

  final Trip trip;
  final int hikers;
  final int days;
  final int stages;

  /** First and last day of each stage, from 0. */
  final int[] stageStart;

  final int[] stageEnd;
  final int[] stageOfDay;

  /** Last day of each hiker, from 0. */
  final int[] lastDay;

  /** Own mass the policy counts, and own mass carried, by hiker and day. */
  final long[][] ownCounted;

  final long[][] ownLoad;
  final long[] targetNanograms;

  /** Largest load within the cap, in milligrams. */
  final long[] capMilligrams;

  final long[] capNanograms;
  final long[] room;
  final int[] maxPieces;

  /** Room and number of own containers by hiker and kind. */
  final long[][] ownInnerVolume;

  final int[][] ownInnerCount;
  final int kinds;
  final int apartRules;
  final List<Block> blocks;
  final List<Need> needs;

  /** Number of parts of each shared item; 0 where it is not in parts. */
  final int[] partsOfItem;

  final int grain;

  /** Party index of each hiker. */
  final int[] partyOf;

  /** True where rules contradict each other before any search. */
  final boolean contradictory;

  /**
   * Shared milligrams in the group on each morning, whoever holds them; trash of leavers left out.
   */
  final long[] leastTotal;

  Model(ModelBuilder b) {
    trip = b.trip;
    hikers = b.hikers;
    days = b.days;
    stages = b.stageStart.length;
    stageStart = b.stageStart;
    stageEnd = b.stageEnd;
    stageOfDay = b.stageOfDay;
    lastDay = b.lastDay;
    ownCounted = b.ownCounted;
    ownLoad = b.ownLoad;
    targetNanograms = b.targetNanograms;
    capNanograms = b.capNanograms;
    capMilligrams = b.capMilligrams;
    room = b.room;
    maxPieces = b.maxPieces;
    ownInnerVolume = b.ownInnerVolume;
    ownInnerCount = b.ownInnerCount;
    kinds = b.kinds.size();
    apartRules = b.apartRules;
    blocks = List.copyOf(b.blocks);
    needs = List.copyOf(b.needs);
    partsOfItem = b.partsOfItem;
    grain = b.trip.policy().grainThousandths();
    partyOf = b.partyOf;
    contradictory = b.contradictory;
    leastTotal = new long[days];
    for (int d = 0; d < days; d++) {
      for (Block block : blocks) {
        leastTotal[d] += block.massSince()[stageOfDay[d]][d];
      }
    }
  }

  /**
   * Some hikers, a party or one alone, must hold so much that covers a need.
   *
   * @param who whether a hiker is one of them
   * @param own how many own kit items of those present cover it, by day
   * @param wanted how many there must be, by day; 0 where none of them is there
   * @param covering whether an item covers it, by shared item
   */
  record Need(boolean[] who, int[] own, int[] wanted, boolean[] covering) {}

  boolean present(int hiker, int day) {
    return day <= lastDay[hiker];
  }

  boolean presentInStage(int hiker, int stage) {
    return stageStart[stage] <= lastDay[hiker];
  }

  /** ceil(1000 F / (grain T)) for shared milligrams held, F counting own kit. */
  int step(int hiker, int day, long shared) {
    long counted = shared + ownCounted[hiker][day];
    long step =
        Rounding.up(
            Math.multiplyExact(counted, 1_000_000_000L),
            Math.multiplyExact((long) grain, targetNanograms[hiker]));
    return Math.toIntExact(step);
  }

  /**
   * Most shared milligrams a hiker can hold on a morning without passing a step; below 0 where own
   * kit alone passes it.
   */
  long capacity(int hiker, int day, long step) {
    return Rounding.down(Math.multiplyExact(step * grain, targetNanograms[hiker]), 1_000_000_000L)
        - ownCounted[hiker][day];
  }

  /** ceil(1000 (L - cap) / T) where the cap is passed, else 0. */
  long excess(int hiker, int day, long shared) {
    long load = shared + ownLoad[hiker][day];
    if (load <= capMilligrams[hiker]) {
      return 0;
    }
    return Rounding.up(
        Math.multiplyExact(load * 1_000_000L - capNanograms[hiker], 1000L), targetNanograms[hiker]);
  }

  /** Number of hiker-mornings. */
  int mornings() {
    int sum = 0;
    for (int last : lastDay) {
      sum += last + 1;
    }
    return sum;
  }
}
