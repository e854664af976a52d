package dev.faircarry.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.variables.DomOverWDeg;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * The hard rules as a constraint model, without any load: finds a split that keeps them, or proves
 * that there is none.
 *
 * <p>A proof is an exhausted tree: the solver says no without having met its node limit.
 */
final class RuleModel {
  /** What came of it. */
  enum Verdict {
    FOUND,
    NONE,
    UNKNOWN
  }

  private static final int STEPS_PER_NODE = 64;

  private final Model m;
  private final org.chocosolver.solver.Model cp = new org.chocosolver.solver.Model("rules");

  /** 1 where the hiker holds the block in the stage; by block, stage and hiker. */
  private final BoolVar[][][] holds;

  /** Most handovers, where they are limited. */
  private final Optional<Budget> budget;

  private final StayingFirst stays;

  private RuleModel(Model m, Optional<Budget> budget) {
    this.m = m;
    this.budget = budget;
    stays = new StayingFirst(m, cp);
    holds = new BoolVar[m.blocks.size()][m.stages][m.hikers];
  }

  /** Looks for a split that keeps all hard rules; on success the state holds it. */
  static Verdict find(State state, long nodeLimit, Effort effort) {
    return find(state, Optional.empty(), nodeLimit, effort);
  }

  /** The same within a number of handovers. */
  static Verdict find(State state, Optional<Budget> budget, long nodeLimit, Effort effort) {
    Model m = state.m;
    if (m.contradictory) {
      return Verdict.NONE;
    }
    for (Block block : m.blocks) {
      for (int s = 0; s < m.stages; s++) {
        if (block.neededUntil() >= m.stageStart[s] && Routes.holders(m, block, s).isEmpty()) {
          return Verdict.NONE;
        }
      }
    }
    return new RuleModel(m, budget).solve(state, nodeLimit, effort);
  }

  /** Steps of a node within a budget: what moves is summed over everybody and everything. */
  static long stepsWithinBudget(Model m) {
    long cells = (long) m.blocks.size() * m.hikers;
    return STEPS_PER_NODE + cells * cells / 200;
  }

  private Verdict solve(State state, long nodeLimit, Effort effort) {
    IntVar[] holders = postHolders();
    postApart();
    for (int i = 0; i < m.hikers; i++) {
      postPieces(i);
      for (int d = 0; d <= m.lastDay[i]; d++) {
        postRoom(i, d);
        for (int k = 0; k < m.kinds; k++) {
          postContainers(i, d, k);
        }
      }
    }
    for (Model.Need need : m.needs) {
      for (int d = 0; d < m.days; d++) {
        postNeed(need, d);
      }
    }
    budget.ifPresent(b -> stays.post(b, holds));
    var solver = cp.getSolver();
    if (holders.length > 0) {
      solver.setSearch(
          budget.isEmpty()
              ? Search.domOverWDegSearch(holders)
              : Search.intVarSearch(new DomOverWDeg<>(holders, 0), stays, holders));
      solver.setLubyRestart(500, new org.chocosolver.solver.search.limits.FailCounter(cp, 500), 50);
    }
    solver.limitNode(nodeLimit);
    solver.addStopCriterion(effort::stopped);
    boolean found = solver.solve();
    long perNode = budget.isEmpty() ? STEPS_PER_NODE : stepsWithinBudget(m);
    effort.spend(perNode * (1 + solver.getNodeCount()));
    if (found) {
      put(state);
      return Verdict.FOUND;
    }
    return solver.isStopCriterionMet() ? Verdict.UNKNOWN : Verdict.NONE;
  }

  private IntVar[] postHolders() {
    List<IntVar> all = new ArrayList<>();
    for (Block block : m.blocks) {
      int b = block.index();
      for (int s = 0; s < m.stages && block.neededUntil() >= m.stageStart[s]; s++) {
        int[] who = Routes.holders(m, block, s).stream().mapToInt(Integer::intValue).toArray();
        IntVar holder = cp.intVar("x" + b + "." + s, who);
        for (int i : who) {
          holds[b][s][i] = cp.isEq(holder, i);
        }
        for (int i : who) {
          if (s > 0 && holds[b][s - 1][i] != null) {
            cp.arithm(holds[b][s - 1][i], "<=", holds[b][s][i]).post();
          }
        }
        for (int i = 0; s > 0 && i < m.hikers; i++) {
          if (holds[b][s - 1][i] != null && m.presentInStage(i, s) && holds[b][s][i] == null) {
            cp.arithm(holds[b][s - 1][i], "=", 0).post();
          }
        }
        all.add(holder);
        if (s == 0 && budget.isPresent()) {
          stays.tell(holder, block, budget.get());
        }
        boolean twin =
            s == 0
                && m.stages == 1
                && b > 0
                && m.blocks.get(b - 1).symmetryClass() == block.symmetryClass();
        if (twin) {
          cp.arithm(all.get(all.size() - 2), "<=", holder).post();
        }
      }
    }
    return all.toArray(IntVar[]::new);
  }

  private void postApart() {
    for (Block one : m.blocks) {
      for (Block other : m.blocks) {
        if (other.index() <= one.index()) {
          continue;
        }
        for (Block.Tag a : one.tags()) {
          for (Block.Tag b : other.tags()) {
            if (a.rule() == b.rule() && a.ref() != b.ref()) {
              postDifferent(one, other, Math.min(a.neededUntil(), b.neededUntil()));
            }
          }
        }
      }
    }
  }

  private void postDifferent(Block one, Block other, int until) {
    for (int s = 0; s < m.stages && until >= m.stageStart[s]; s++) {
      for (int i = 0; i < m.hikers; i++) {
        BoolVar a = holds[one.index()][s][i];
        BoolVar b = holds[other.index()][s][i];
        if (a != null && b != null) {
          cp.arithm(a, "+", b, "<=", 1).post();
        }
      }
    }
  }

  /** A sum of holdings with coefficients, as it is put together. */
  private final class Sum {
    private final List<BoolVar> variables = new ArrayList<>();
    private final List<Integer> coefficients = new ArrayList<>();

    void add(@org.jspecify.annotations.Nullable BoolVar variable, long coefficient) {
      if (variable != null && coefficient != 0) {
        variables.add(variable);
        coefficients.add(Math.toIntExact(coefficient));
      }
    }

    void post(String operator, long right) {
      if (variables.isEmpty()) {
        boolean holds = operator.equals("<=") ? 0 <= right : 0 >= right;
        if (!holds) {
          cp.falseConstraint().post();
        }
        return;
      }
      int[] c = coefficients.stream().mapToInt(Integer::intValue).toArray();
      cp.scalar(variables.toArray(BoolVar[]::new), c, operator, Math.toIntExact(right)).post();
    }
  }

  private void postPieces(int hiker) {
    if (m.maxPieces[hiker] < Integer.MAX_VALUE) {
      Sum sum = new Sum();
      for (Block block : m.blocks) {
        sum.add(holds[block.index()][0][hiker], block.contents().size());
      }
      sum.post("<=", m.maxPieces[hiker]);
    }
  }

  private void postRoom(int hiker, int day) {
    long room = m.room[hiker];
    if (room >= Model.UNLIMITED) {
      return;
    }
    Sum sum = new Sum();
    for (Block block : m.blocks) {
      // A volume above the room counts as one above it, so that no sum overflows.
      long volume = Math.min(block.volume()[day], room + 1);
      sum.add(holds[block.index()][m.stageOfDay[day]][hiker], volume);
    }
    sum.post("<=", room);
  }

  private void postContainers(int hiker, int day, int kind) {
    int s = m.stageOfDay[day];
    Sum volumes = new Sum();
    for (Block block : m.blocks) {
      BoolVar held = holds[block.index()][s][hiker];
      volumes.add(held, block.kindVolume()[kind][day] - block.innerVolume()[kind][day]);
      if (held == null || block.kindCount()[kind][day] == 0 || m.ownInnerCount[hiker][kind] > 0) {
        continue;
      }
      Sum boxes = new Sum();
      for (Block box : m.blocks) {
        if (box.innerCount()[kind][day] > 0) {
          boxes.add(holds[box.index()][s][hiker], 1);
        }
      }
      boxes.add(held, -1);
      boxes.post(">=", 0);
    }
    volumes.post("<=", m.ownInnerVolume[hiker][kind]);
  }

  private void postNeed(Model.Need need, int day) {
    int wanted = need.wanted()[day] - need.own()[day];
    if (wanted <= 0) {
      return;
    }
    int s = m.stageOfDay[day];
    Sum sum = new Sum();
    List<List<BoolVar>> partsInParty = new ArrayList<>();
    for (int k = 0; k < m.partsOfItem.length; k++) {
      partsInParty.add(new ArrayList<>());
    }
    for (Block block : m.blocks) {
      for (Block.Content content : block.contents()) {
        if (!content.there()[day] || !need.covering()[content.item()]) {
          continue;
        }
        List<BoolVar> inParty = new ArrayList<>();
        for (int i = 0; i < m.hikers; i++) {
          BoolVar held = holds[block.index()][s][i];
          if (need.who()[i] && held != null) {
            inParty.add(held);
          }
        }
        if (content.isPart()) {
          BoolVar any = cp.boolVar();
          cp.sum(inParty.toArray(BoolVar[]::new), "=", any).post();
          partsInParty.get(content.item()).add(any);
        } else {
          inParty.forEach(held -> sum.add(held, 1));
        }
      }
    }
    for (int k = 0; k < m.partsOfItem.length; k++) {
      List<BoolVar> parts = partsInParty.get(k);
      if (!parts.isEmpty() && parts.size() == m.partsOfItem[k]) {
        BoolVar complete = cp.boolVar();
        cp.min(complete, parts.toArray(BoolVar[]::new)).post();
        sum.add(complete, 1);
      }
    }
    sum.post(">=", wanted);
  }

  private void put(State state) {
    for (Block block : m.blocks) {
      int b = block.index();
      if (state.held(b)) {
        state.take(b);
      }
      int[] route = new int[m.stages];
      for (int s = 0; s < m.stages; s++) {
        route[s] = State.NOBODY;
        if (block.neededUntil() < m.stageStart[s]) {
          int before = s > 0 ? route[s - 1] : State.NOBODY;
          route[s] = before != State.NOBODY && m.presentInStage(before, s) ? before : State.NOBODY;
          continue;
        }
        for (int i = 0; i < m.hikers; i++) {
          if (holds[b][s][i] != null && holds[b][s][i].getValue() == 1) {
            route[s] = i;
          }
        }
      }
      state.put(b, route);
    }
  }
}
