package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A wish as conditions on bundles, one bundle for each hiker: all blocks of each lot are held, each
 * party's needs are met, and no more mornings are above a wanted value than the wish has there.
 *
 * <p>A lot is all blocks that differ in nothing but their names. Conditions are numbered: first the
 * lots, then the hikers, then needs, then values of the wish.
 */
final class Lots {
  final Model m;
  final List<List<Block>> lots;

  /** The distinct values of the wish, from highest to lowest. */
  final int[] values;

  /** For each lot, those that a rule keeps apart from it. */
  final int[][] apart;

  /** How many mornings may be above each value. */
  final int[] above;

  /** Needs on one morning, as far as they are met item by item: what is asked of shared pieces. */
  final List<Demand> demands = new ArrayList<>();

  /**
   * Some hikers hold at least so many of what covers a need.
   *
   * @param covers how many of them a block of each lot is
   */
  record Demand(boolean[] who, int[] covers, int atLeast) {}

  Lots(Model m, Wish wish) {
    this.m = m;
    Map<Integer, List<Block>> classes = new LinkedHashMap<>();
    for (Block block : Construction.order(m)) {
      classes.computeIfAbsent(block.symmetryClass(), k -> new ArrayList<>()).add(block);
    }
    lots = List.copyOf(classes.values());
    apart = new int[lots.size()][];
    for (int c = 0; c < apart.length; c++) {
      int lot = c;
      apart[c] = IntStream.range(0, apart.length).filter(other -> apart(lot, other)).toArray();
    }
    DistinctSteps distinct = DistinctSteps.of(wish.steps()[0]);
    values = distinct.values();
    above = distinct.above();
    m.needs.forEach(this::addDemands);
  }

  private boolean apart(int lot, int other) {
    return sample(lot).tags().stream()
        .anyMatch(
            one ->
                sample(other).tags().stream()
                    .anyMatch(tag -> tag.rule() == one.rule() && tag.ref() != one.ref()));
  }

  /** Adds a need of each morning, equal ones once; left out where parts meet it only together. */
  private void addDemands(Model.Need need) {
    for (int item = 0; item < m.partsOfItem.length; item++) {
      if (need.covering()[item] && m.partsOfItem[item] > 0) {
        return;
      }
    }
    for (int d = 0; d < m.days; d++) {
      int atLeast = need.wanted()[d] - need.own()[d];
      int[] covers = new int[lots.size()];
      for (int c = 0; c < covers.length; c++) {
        for (Block.Content content : sample(c).contents()) {
          covers[c] += content.there()[d] && need.covering()[content.item()] ? 1 : 0;
        }
      }
      boolean known =
          demands.stream()
              .anyMatch(
                  other ->
                      Arrays.equals(other.who(), need.who())
                          && Arrays.equals(other.covers(), covers)
                          && other.atLeast() >= atLeast);
      if (atLeast > 0 && !known) {
        demands.add(new Demand(need.who(), covers, atLeast));
      }
    }
  }

  Block sample(int lot) {
    return lots.get(lot).get(0);
  }

  int size(int lot) {
    return lots.get(lot).size();
  }

  int hikerRow(int hiker) {
    return lots.size() + hiker;
  }

  int demandRow(int demand) {
    return lots.size() + m.hikers + demand;
  }

  /**
   * The condition on mornings above a value; the highest value has none, nobody may be above it.
   */
  int valueRow(int value) {
    return lots.size() + m.hikers + demands.size() + value - 1;
  }

  int rows() {
    return lots.size() + m.hikers + demands.size() + values.length - 1;
  }
}
