package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.search.strategy.selectors.values.IntValueSelector;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * A budget of handovers in a constraint model of the rules. Blocks are tried with those who had
 * them before, which finds a split within a tight budget at once where there is one.
 */
final class StayingFirst implements IntValueSelector {
  private final dev.faircarry.solve.Model m;
  private final Model cp;

  /** Who had some of a block before, by the variable of its holder. */
  private final Map<IntVar, int[]> earlier = new HashMap<>();

  StayingFirst(dev.faircarry.solve.Model m, Model cp) {
    this.m = m;
    this.cp = cp;
  }

  /** The variable says who holds the block at departure. */
  void tell(IntVar holder, Block block, Budget budget) {
    int[] before = budget.moves().before[budget.moves().refsOf[block.index()][0]];
    earlier.put(holder, IntStream.range(0, m.hikers).filter(i -> before[i] > 0).toArray());
  }

  @Override
  public int selectValue(IntVar holder) {
    for (int i : earlier.getOrDefault(holder, new int[0])) {
      if (holder.contains(i)) {
        return i;
      }
    }
    return holder.getLB();
  }

  /**
   * What hikers have more of than before, in units, stays within the budget.
   *
   * @param holds 1 where the hiker holds the block in the stage; by block, stage and hiker
   */
  void post(Budget budget, BoolVar[][][] holds) {
    List<IntVar> gains = new ArrayList<>();
    for (int r = 0; r < budget.moves().refs.size(); r++) {
      for (int i = 0; i < m.hikers; i++) {
        List<BoolVar> held = held(budget, holds, r, i);
        int before = budget.moves().before[r][i];
        if (before == 0) {
          gains.addAll(held);
        } else if (held.size() > before) {
          // One number and not a sum of switches: only then do fixed holders fix its least value,
          // and nothing but holders is branched on.
          IntVar more = cp.intVar(0, held.size() - before);
          gains.add(more);
          List<IntVar> both = new ArrayList<>(held);
          both.add(more);
          int[] signs = new int[both.size()];
          Arrays.fill(signs, 1);
          signs[held.size()] = -1;
          cp.scalar(both.toArray(IntVar[]::new), signs, "<=", before).post();
        }
      }
    }
    if (!gains.isEmpty()) {
      cp.sum(gains.toArray(IntVar[]::new), "<=", budget.gains()).post();
    }
  }

  /** One entry for each unit of a reference in a block; a block may have several. */
  private List<BoolVar> held(Budget budget, BoolVar[][][] holds, int ref, int hiker) {
    List<BoolVar> held = new ArrayList<>();
    for (Block block : m.blocks) {
      for (int of : budget.moves().refsOf[block.index()]) {
        BoolVar holding = holds[block.index()][0][hiker];
        if (of == ref && holding != null) {
          held.add(holding);
        }
      }
    }
    return held;
  }
}
