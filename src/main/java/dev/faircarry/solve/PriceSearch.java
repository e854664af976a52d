package dev.faircarry.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Decides a wish by prices: a price for each block so that the dearest bundles of all hikers
 * together are worth less than all blocks shows that there is no division (Lagrangian duality over
 * bundles; Dantzig and Wolfe 1960). Prices come from a linear program over the bundles found so
 * far, bundles from a search for the dearest ones at those prices, by turns (column generation;
 * Gilmore and Gomory 1961). Where bundles in parts could do it, a lot and a hiker are chosen who
 * holds no whole number of it, and both cases are searched (branch and price; Barnhart et al.
 * 1998).
 *
 * <p>Sees what masses do not: rooms, containers, limits on pieces, all days at once. For trips
 * where nobody leaves early.
 */
final class PriceSearch {
  /** More conditions make each turn too slow to be worth it. */
  private static final int MOST_ROWS = 120;

  private final Model m;
  private final Wish wish;
  private final Effort effort;
  private final State target;
  private final Lots lots;
  private final KnownBundles known;
  private int nodesLeft;

  /**
   * A search.
   *
   * @param target a state that holds some division
   * @param known bundles found before; those found are added
   */
  PriceSearch(State target, Wish wish, KnownBundles known, Effort effort) {
    m = target.m;
    this.target = target;
    this.wish = wish;
    this.known = known;
    this.effort = effort;
    lots = new Lots(m, wish);
  }

  /** Whether a trip is small enough, whatever the wish. */
  static boolean suits(Model m) {
    long lots = m.blocks.stream().mapToInt(Block::symmetryClass).distinct().count();
    return m.stages == 1
        && lots + m.hikers <= MOST_ROWS
        && new Lots(m, Wish.overall(m.days, new int[m.mornings()], 0)).rows() <= MOST_ROWS;
  }

  /**
   * Searches; on success the state holds the division.
   *
   * @param stepLimit search steps it may take
   * @param nodeLimit cases it may look into
   */
  GroupSearch.Result search(long stepLimit, int nodeLimit) {
    nodesLeft = nodeLimit;
    if (lots.rows() > MOST_ROWS) {
      return GroupSearch.Result.UNKNOWN;
    }
    Allowance allowance = new Allowance(effort, stepLimit);
    return node(new PriceProgram(lots, known, wish.excessLimit()), allowance);
  }

  private GroupSearch.Result node(PriceProgram program, Allowance allowance) {
    if (--nodesLeft < 0) {
      return GroupSearch.Result.UNKNOWN;
    }
    while (program.run(allowance)) {
      if (program.kept()) {
        return divided(program, allowance);
      }
      int before = program.bundles();
      if (program.unpayable(allowance)) {
        return GroupSearch.Result.NONE;
      }
      if (program.bundles() == before || allowance.cut()) {
        return GroupSearch.Result.UNKNOWN;
      }
    }
    return GroupSearch.Result.UNKNOWN;
  }

  /** A hiker holds more than so many blocks of a lot, or as many at most. */
  private record Fork(int hiker, int lot, int fewer) {}

  /** Bundles in parts keep every condition: done where they are whole, else two cases. */
  private GroupSearch.Result divided(PriceProgram program, Allowance allowance) {
    long[][] held = program.held();
    long whole = program.whole();
    Optional<Fork> fork = inParts(held, whole);
    if (fork.isEmpty()) {
      if (take(held, whole)) {
        return GroupSearch.Result.FOUND;
      }
      fork = mixed(program, held, whole).or(() -> surplus(program, held, whole));
    }
    return fork.map(f -> cases(program, f, allowance)).orElse(GroupSearch.Result.UNKNOWN);
  }

  /** Who holds no whole number of a lot. */
  private Optional<Fork> inParts(long[][] held, long whole) {
    Optional<Fork> fork = Optional.empty();
    long largest = 0;
    for (int c = 0; c < lots.lots.size() && fork.isEmpty(); c++) {
      for (int i = 0; i < m.hikers; i++) {
        long part = held[i][c] % whole;
        if (part > largest) {
          largest = part;
          fork = Optional.of(new Fork(i, c, (int) (held[i][c] / whole)));
        }
      }
    }
    return fork;
  }

  /**
   * Who holds parts of bundles of which some have more of a lot and some fewer, though a whole
   * number together: mornings above a value and what is kept apart are then not what the whole has.
   */
  private Optional<Fork> mixed(PriceProgram program, long[][] held, long whole) {
    boolean[][] mixed = program.mixed(held);
    for (int c = 0; c < lots.lots.size(); c++) {
      for (int i = 0; i < m.hikers; i++) {
        if (mixed[i][c]) {
          return Optional.of(new Fork(i, c, (int) (held[i][c] / whole)));
        }
      }
    }
    return Optional.empty();
  }

  /** Who holds of a lot of which all together hold more than there is. */
  private Optional<Fork> surplus(PriceProgram program, long[][] held, long whole) {
    for (int c = 0; c < lots.lots.size(); c++) {
      long sum = 0;
      for (int i = 0; i < m.hikers; i++) {
        sum += held[i][c] / whole;
      }
      for (int i = 0; i < m.hikers && sum > lots.size(c); i++) {
        int holds = (int) (held[i][c] / whole);
        if (holds > program.fewest[i][c]) {
          return Optional.of(new Fork(i, c, holds - 1));
        }
      }
    }
    return Optional.empty();
  }

  private GroupSearch.Result cases(PriceProgram program, Fork fork, Allowance allowance) {
    int[] at = {fork.hiker(), fork.lot()};
    int fewest = program.fewest[fork.hiker()][fork.lot()];
    int most = program.most[fork.hiker()][fork.lot()];
    GroupSearch.Result one = branch(program, at, fork.fewer() + 1, most, allowance);
    if (one == GroupSearch.Result.FOUND || allowance.cut() || nodesLeft < 0) {
      return one;
    }
    GroupSearch.Result other = branch(program, at, fewest, fork.fewer(), allowance);
    return other == GroupSearch.Result.NONE ? one : other;
  }

  /** One case: what a hiker holds of a lot is within limits; the others get what is left. */
  private GroupSearch.Result branch(
      PriceProgram program, int[] at, int least, int largest, Allowance allowance) {
    int lot = at[1];
    int[] fewestBefore = column(program.fewest, lot);
    int[] mostBefore = column(program.most, lot);
    program.fewest[at[0]][lot] = least;
    program.most[at[0]][lot] = largest;
    int promised = Arrays.stream(column(program.fewest, lot)).sum();
    int possible = Arrays.stream(column(program.most, lot)).sum();
    int size = lots.size(lot);
    GroupSearch.Result result = GroupSearch.Result.NONE;
    if (promised <= size && possible >= size) {
      for (int i = 0; i < m.hikers; i++) {
        int must = program.fewest[i][lot];
        int may = program.most[i][lot];
        program.most[i][lot] = Math.min(may, must + size - promised);
        program.fewest[i][lot] = Math.max(must, may + size - possible);
      }
      program.admit();
      result = node(program, allowance);
    }
    for (int i = 0; i < m.hikers; i++) {
      program.fewest[i][lot] = fewestBefore[i];
      program.most[i][lot] = mostBefore[i];
    }
    program.admit();
    return result;
  }

  private static int[] column(int[][] rows, int lot) {
    return Arrays.stream(rows).mapToInt(row -> row[lot]).toArray();
  }

  /** Puts whole bundles into the state, if they are a division within the wish. */
  private boolean take(long[][] held, long whole) {
    State next = new State(m);
    for (int c = 0; c < lots.lots.size(); c++) {
      List<Block> blocks = lots.lots.get(c);
      int at = 0;
      for (int i = 0; i < m.hikers; i++) {
        // Bundles may hold more of a lot than there is; what is too much is left out.
        for (long u = held[i][c] / whole; u > 0 && at < blocks.size(); u--) {
          next.put(blocks.get(at++).index(), i);
        }
      }
    }
    boolean within =
        next.broken() == 0
            && next.totalExcess <= wish.excessLimit()
            && Steps.within(next.list(), wish.steps()[0]);
    if (within) {
      target.restore(next.routes());
    }
    return within;
  }
}
