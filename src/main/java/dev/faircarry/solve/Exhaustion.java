package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Goes through all splits, block by block, leaving out those that cannot beat the best one: the
 * only part of the search that needs no special shape of trip, and the last resort of proof.
 */
final class Exhaustion {
  private static final int MOST_ROUTES = 5000;

  private final Model m;
  private final Effort effort;
  private final State state;
  private final List<Block> order;
  private final List<List<int[]>> routes = new ArrayList<>();
  private final int[] chosen;
  private final long[][] restMass;
  private final int containersUntil;
  private Exchange.Value best;
  private int[][] bestRoutes;
  private boolean any;
  private long stepsLeft;
  private boolean cut;
  private long found;
  private final boolean counting;
  private Optional<Moves> limits = Optional.empty();
  private int[][] held = {};
  private int gained;
  private int mostGained;

  /**
   * @param best the value to beat
   * @param counting whether to count splits that keep the hard rules instead of looking for a
   *     better one
   */
  Exhaustion(Model model, Exchange.Value best, boolean counting, Effort effort) {
    m = model;
    this.effort = effort;
    this.best = best;
    this.counting = counting;
    state = new State(m);
    bestRoutes = state.routes();
    order = Construction.order(m);
    chosen = new int[order.size()];
    int containers = 0;
    for (Block block : order) {
      List<int[]> all = Routes.all(m, block, MOST_ROUTES);
      cut |= all.size() == MOST_ROUTES;
      routes.add(all);
      containers += Construction.container(block) ? 1 : 0;
    }
    containersUntil = containers;
    restMass = new long[order.size() + 1][m.days];
    for (int k = order.size() - 1; k >= 0; k--) {
      for (int d = 0; d < m.days; d++) {
        restMass[k][d] = restMass[k + 1][d] + order.get(k).massSince()[m.stageOfDay[d]][d];
      }
    }
  }

  /** Leaves out splits with more than so many handovers. */
  void within(Moves moves, int handovers) {
    limits = Optional.of(moves);
    held = new int[moves.refs.size()][m.hikers];
    mostGained = handovers + moves.fresh;
  }

  /** Searches; true when it came to its end, so that the value is proved. */
  boolean run(long stepLimit) {
    stepsLeft = stepLimit;
    if (!cut) {
      descend(0);
    }
    return !cut;
  }

  /** Whether a better split was found; {@link #routes()} has it. */
  boolean improved() {
    return any;
  }

  int[][] routes() {
    return bestRoutes;
  }

  /** Splits counted, equal blocks told apart by nothing but their number. */
  long found() {
    return found;
  }

  private void descend(int k) {
    if (k == order.size()) {
      finish();
      return;
    }
    Block block = order.get(k);
    boolean twin = k > 0 && order.get(k - 1).symmetryClass() == block.symmetryClass();
    List<int[]> options = routes.get(k);
    for (int r = twin ? chosen[k - 1] : 0; r < options.size(); r++) {
      stepsLeft -= 4;
      boolean over = effort.spend(4);
      cut = cut || over || stepsLeft < 0;
      if (cut) {
        return;
      }
      chosen[k] = r;
      state.put(block.index(), options.get(r));
      int first = options.get(r)[0];
      gained += limits.isEmpty() ? 0 : limits.get().gain(held, block.index(), first, 1);
      boolean rules = state.strict == 0 && (k + 1 < containersUntil || state.unboxed == 0);
      boolean few = limits.isEmpty() || gained <= mostGained;
      if (rules && few && (counting || promising(k + 1))) {
        descend(k + 1);
      }
      state.take(block.index());
      gained += limits.isEmpty() ? 0 : limits.get().gain(held, block.index(), first, -1);
      if (cut) {
        return;
      }
    }
  }

  private void finish() {
    if (state.broken() > 0) {
      return;
    }
    found++;
    if (!counting) {
      Exchange.Value now = Exchange.Value.of(state);
      if (now.betterThan(best)) {
        best = now;
        bestRoutes = state.routes();
        any = true;
      }
    }
  }

  /**
   * Whether some completion may still beat the best: lists only grow, and what is left must fit
   * below the best's highest step.
   */
  private boolean promising(int k) {
    if (state.totalExcess != best.excess()) {
      if (state.totalExcess > best.excess()) {
        return false;
      }
      if (best.excess() > 0) {
        return true;
      }
    }
    if (Steps.compare(state.list(), best.list()) >= 0) {
      return false;
    }
    int top = best.list()[0];
    for (int d = 0; d < m.days; d++) {
      long room = 0;
      for (int i = 0; i < m.hikers; i++) {
        if (m.present(i, d)) {
          room += Math.max(0, m.capacity(i, d, top) - state.shared[i * m.days + d]);
        }
      }
      if (room < restMass[k][d]) {
        return false;
      }
    }
    return true;
  }
}
