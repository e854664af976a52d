package dev.faircarry.solve;

import java.util.Arrays;
import java.util.Optional;

/**
 * Local search by moves and exchanges of blocks: late acceptance (Burke and Bykov 2017), which
 * takes a change that is no worse than the state some tries ago. Only integers, only changes that
 * keep all hard rules.
 */
final class Exchange {
  /** A thousandth over a cap costs more than any step. */
  private static final long PER_EXCESS = 1L << 46;

  private static final int CHAIN_ONE_IN = 2;

  private final State state;
  private final Model m;
  private final Dice dice;
  private final Effort effort;
  private final Packs packs;
  private final Chain chain;
  private final RouteChange routeChange;

  /**
   * Blocks of the same mass at departure that differ otherwise: exchanging them changes later
   * mornings only.
   */
  private final int[][] alike;

  private boolean chains;
  private int[] kept = {};
  private Optional<Moves> limits = Optional.empty();
  private int[][] held = {};
  private int gained;
  private int mostGained;
  private Weights weights = Weights.quadratic(new int[0], 0);
  private long cost;
  private int[][] bestRoutes;
  private Value best;

  /** How good a split is: excess first, then its list. */
  record Value(long excess, int[] list) implements Comparable<Value> {
    static Value of(State state) {
      return new Value(state.totalExcess, state.list());
    }

    boolean betterThan(Value other) {
      return compareTo(other) < 0;
    }

    @Override
    public int compareTo(Value other) {
      int byExcess = Long.compare(excess, other.excess);
      return byExcess != 0 ? byExcess : Steps.compare(list, other.list);
    }
  }

  Exchange(State state, Dice dice, Effort effort) {
    this.state = state;
    this.m = state.m;
    this.dice = dice;
    this.effort = effort;
    packs = new Packs(state, dice);
    chain = new Chain(state, packs, dice, effort);
    routeChange = new RouteChange(state, dice, effort);
    alike = new int[m.blocks.size()][];
    for (Block block : m.blocks) {
      alike[block.index()] =
          m.blocks.stream()
              .filter(other -> other.departureMass() == block.departureMass())
              .filter(other -> other.symmetryClass() != block.symmetryClass())
              .mapToInt(Block::index)
              .toArray();
    }
    best = Value.of(state);
    bestRoutes = state.routes();
  }

  /**
   * Searches with these weights for so many tries, then goes back to the best split seen by
   * anybody's count.
   */
  void run(Weights weights, int memory, long tries) {
    if (m.blocks.isEmpty() || m.hikers < 2) {
      return;
    }
    this.weights = weights;
    packs.index();
    cost = total();
    long[] late = new long[memory];
    Arrays.fill(late, cost);
    long bestCost = cost;
    int[][] bestHere = state.routes();
    int worst = packs.worstHiker();
    for (long t = 0; t < tries; t++) {
      if ((t & 15) == 0) {
        if (effort.spend(16)) {
          break;
        }
        worst = packs.worstHiker();
      }
      int slot = (int) (t % memory);
      long limit = Math.max(late[slot], cost);
      boolean changed =
          m.stages == 1 ? tryOne(worst, limit) : routeChange.tryOne(limit, this::accept);
      if (changed && cost < bestCost) {
        bestCost = cost;
        bestHere = state.routes();
        remember();
      }
      late[slot] = cost;
    }
    state.restore(bestHere);
    recount();
    remember();
  }

  /** From now on takes no change that alters these highest steps of the list. */
  void keep(int[] highest) {
    kept = highest.clone();
  }

  /**
   * From now on takes no change after which more than so many handovers lead from the earlier
   * split.
   */
  void within(Moves moves, int handovers) {
    limits = Optional.of(moves);
    held = moves.held(state);
    gained = moves.count(state) + moves.fresh;
    mostGained = handovers + moves.fresh;
  }

  private int gainOf(Moves moves, int one, int from, int other, int to) {
    int gain = moves.gain(held, one, from, -1) + moves.gain(held, one, to, 1);
    return other < 0
        ? gain
        : gain + moves.gain(held, other, to, -1) + moves.gain(held, other, from, 1);
  }

  private boolean keeps() {
    if (kept.length == 0) {
      return true;
    }
    int[] list = state.list();
    return Arrays.equals(list, 0, kept.length, kept, 0, kept.length);
  }

  /** Goes back to the best split that any run met. */
  void finish() {
    state.restore(bestRoutes);
    recount();
  }

  /** The value of the best split that any run met. */
  Value best() {
    return best;
  }

  private void recount() {
    limits.ifPresent(
        moves -> {
          held = moves.held(state);
          gained = moves.count(state) + moves.fresh;
        });
  }

  private void remember() {
    Value now = Value.of(state);
    if (now.betterThan(best)) {
      best = now;
      bestRoutes = state.routes();
    }
  }

  private long total() {
    long sum = state.totalExcess * PER_EXCESS;
    for (int cell = 0; cell < state.step.length; cell++) {
      int step = state.step[cell];
      sum += step < 0 ? 0 : weights.of(cell % m.days, step);
    }
    return sum;
  }

  private boolean accept(long limit) {
    long now = state.broken() > 0 ? Long.MAX_VALUE : total();
    if (now <= limit && keeps()) {
      cost = now;
      return true;
    }
    return false;
  }

  private boolean tryOne(int worst, long limit) {
    boolean longer = chains && limits.isEmpty() && dice.below(CHAIN_ONE_IN) == 0;
    return longer ? chain.tryOne(worst, limit, this::accept) : tryPlain(worst, limit);
  }

  /** From now on also tries longer chains, which rules that leave little room call for. */
  void withChains() {
    chains = true;
  }

  /** A move or an exchange between two hikers who both stay to the end. */
  private boolean tryPlain(int worst, long limit) {
    int one = dice.below(3) == 0 && packs.count(worst) > 0 ? packs.anyOf(worst) : packs.any();
    int from = state.holder[one][0];
    boolean[] mayHold = m.blocks.get(one).allowed()[0];
    if (dice.below(4) == 0) {
      int to = dice.below(m.hikers);
      return to != from && mayHold[to] && change(one, from, -1, to, limit);
    }
    int other =
        alike[one].length > 0 && dice.below(2) == 0
            ? alike[one][dice.below(alike[one].length)]
            : packs.any();
    int to = state.holder[other][0];
    if (to == from
        || !mayHold[to]
        || !m.blocks.get(other).allowed()[0][from]
        || m.blocks.get(one).symmetryClass() == m.blocks.get(other).symmetryClass()) {
      return false;
    }
    return change(one, from, other, to, limit);
  }

  /**
   * Gives {@code one} to {@code to}, and {@code other}, if there is one, back; keeps it only within
   * the limit.
   */
  private boolean change(int one, int from, int other, int to, long limit) {
    long[] given = m.blocks.get(one).massSince()[0];
    long[] back = other < 0 ? new long[m.days] : m.blocks.get(other).massSince()[0];
    long delta = 0;
    for (int d = 0; d < m.days; d++) {
      long moved = given[d] - back[d];
      if (moved != 0) {
        delta += weighed(from, d, -moved) + weighed(to, d, moved);
      }
    }
    if (cost + delta > limit) {
      return false;
    }
    int gain = limits.isEmpty() ? 0 : gainOf(limits.get(), one, from, other, to);
    if (gained + gain > mostGained && limits.isPresent()) {
      gainOf(limits.get(), one, to, other, from);
      return false;
    }
    state.take(one);
    if (other >= 0) {
      state.take(other);
      state.put(other, from);
    }
    state.put(one, to);
    if (state.broken() > 0 || !keeps()) {
      state.take(one);
      if (other >= 0) {
        state.take(other);
        state.put(other, to);
      }
      state.put(one, from);
      if (limits.isPresent()) {
        gainOf(limits.get(), one, to, other, from);
      }
      return false;
    }
    gained += gain;
    packs.moved(one, from, to);
    if (other >= 0) {
      packs.moved(other, to, from);
    }
    cost += delta;
    return true;
  }

  private long weighed(int hiker, int d, long moved) {
    int cell = hiker * m.days + d;
    long shared = state.shared[cell] + moved;
    long delta = weights.of(d, m.step(hiker, d, shared)) - weights.of(d, state.step[cell]);
    if (state.excess[cell] > 0 || shared + m.ownLoad[hiker][d] > m.capMilligrams[hiker]) {
      delta += (m.excess(hiker, d, shared) - state.excess[cell]) * PER_EXCESS;
    }
    return delta;
  }
}
