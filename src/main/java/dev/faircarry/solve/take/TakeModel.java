package dev.faircarry.solve.take;

import dev.faircarry.choose.Candidate;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Required;
import dev.faircarry.solve.Watch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.SearchState;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/** A question with candidates as a constraint model, built anew for each thing asked of it. */
final class TakeModel {

  /** What is made as small as possible. */
  enum Goal {
    MASS,
    PRICE,
    CHANGES
  }

  /**
   * Bounds of one search.
   *
   * @param offers most of each candidate that may be taken here, for asking what single purchases
   *     save
   * @param dropped needs left out, for asking why nothing is possible
   */
  record Within(
      OptionalLong massAtMost,
      OptionalLong priceAtMost,
      List<Integer> offers,
      List<String> dropped) {}

  /**
   * What a search found.
   *
   * @param counts the best choice found; empty when there is none
   * @param proved whether the search was exhausted: the choice is best, or there is none
   */
  record Found(List<Integer> counts, boolean proved, long effortSteps) {}

  private final Question question;
  // Sums stay sums: a table in place of one takes longer to write down than the search.
  private final Model model = new Model("take", Settings.init().setEnableTableSubstitution(false));
  private final IntVar[] counts;
  private final IntVar mass;
  private final IntVar price;
  private final IntVar changes;

  TakeModel(Question question, Scale scale, Within within) {
    this.question = question;
    List<Candidate> candidates = question.candidates();
    counts = new IntVar[candidates.size()];
    for (int i = 0; i < counts.length; i++) {
      int most = within.offers().isEmpty() ? candidates.get(i).most() : within.offers().get(i);
      counts[i] =
          model.intVar(
              "x" + i, candidates.get(i).least(), Math.max(candidates.get(i).least(), most));
    }
    mass = sum("mass", c -> scale.mass(c), within.massAtMost());
    price = sum("price", c -> scale.price(c), within.priceAtMost());
    changes = changes();
    List<Required> needs =
        question.needs().stream().filter(n -> !within.dropped().contains(n.need())).toList();
    question.needs().forEach(n -> meet(n, within.dropped().contains(n.need())));
    replacements();
    bound(mass, scale::mass, needs);
    bound(price, scale::price, needs);
  }

  /**
   * Searches for the choice with the smallest goal; most-weighing things are decided first, and
   * left if they can be.
   */
  Found smallest(Goal goal, long effortSteps, Watch watch) {
    IntVar objective =
        switch (goal) {
          case MASS -> mass;
          case PRICE -> price;
          case CHANGES -> changes;
        };
    return search(true, objective, effortSteps, watch);
  }

  /** Searches for any choice. */
  Found any(long effortSteps, Watch watch) {
    return search(false, mass, effortSteps, watch);
  }

  private Found search(boolean minimise, IntVar objective, long effortSteps, Watch watch) {
    if (minimise) {
      model.setObjective(Model.MINIMIZE, objective);
    }
    Solver solver = model.getSolver();
    solver.limitNode(effortSteps);
    solver.addStopCriterion(() -> watch.signal() != Watch.Signal.GO_ON);
    solver.setSearch(
        Search.inputOrderLBSearch(heaviestFirst()),
        Search.inputOrderLBSearch(model.retrieveIntVars(true)));
    List<Integer> best = List.of();
    while (solver.solve()) {
      best = IntStream.range(0, counts.length).mapToObj(i -> counts[i].getValue()).toList();
      if (!minimise) {
        return new Found(best, true, solver.getNodeCount());
      }
    }
    boolean exhausted =
        solver.getSearchState() == SearchState.TERMINATED && !solver.isStopCriterionMet();
    return new Found(best, exhausted, solver.getNodeCount());
  }

  private IntVar[] heaviestFirst() {
    return IntStream.range(0, counts.length)
        .boxed()
        .sorted(
            Comparator.comparingLong((Integer i) -> -question.candidates().get(i).massMilligrams())
                .thenComparing(i -> i))
        .map(i -> counts[i])
        .toArray(IntVar[]::new);
  }

  private IntVar sum(String name, ToLongFunction<Candidate> weight, OptionalLong atMost) {
    int[] weights =
        question.candidates().stream().mapToInt(c -> (int) weight.applyAsLong(c)).toArray();
    long most = 0;
    for (int i = 0; i < weights.length; i++) {
      most += (long) weights[i] * question.candidates().get(i).most();
    }
    int bound = Math.toIntExact(Math.min(most, atMost.orElse(most)));
    IntVar total = model.intVar(name, 0, Math.max(0, bound), true);
    model.scalar(counts, weights, "=", total).post();
    return total;
  }

  /** Offers taken and things left: how much is different from what is there. */
  private IntVar changes() {
    List<Candidate> candidates = question.candidates();
    int there = (int) candidates.stream().filter(c -> c.kind() != Candidate.Kind.OFFER).count();
    int most = there + candidates.stream().mapToInt(Candidate::most).sum();
    IntVar total = model.intVar("changes", -there, most, true);
    int[] signs =
        candidates.stream().mapToInt(c -> c.kind() == Candidate.Kind.OFFER ? 1 : -1).toArray();
    model.scalar(counts, signs, "=", total).post();
    return total;
  }

  private void meet(Required need, boolean dropped) {
    List<Candidate> candidates = question.candidates();
    long asks = need.atLeast();
    for (Candidate candidate : candidates) {
      asks += candidate.requires(need.need()) * candidate.most();
    }
    // Nobody asks for more than this, so that cutting at it changes nothing and keeps sums small.
    long most = asks;
    int[] balance =
        candidates.stream()
            .mapToInt(
                c ->
                    Math.toIntExact(
                        Math.min(most, c.covers(need.need())) - c.requires(need.need())))
            .toArray();
    int atLeast = dropped ? 0 : Math.toIntExact(need.atLeast());
    boolean asked = candidates.stream().anyMatch(c -> c.requires(need.need()) > 0);
    if (dropped && !asked) {
      return;
    }
    model.scalar(counts, balance, ">=", atLeast).post();
    if (!dropped) {
      parties(need);
    }
  }

  /** Shared gear makes up for what a party lacks; one thing serves one party. */
  private void parties(Required need) {
    if (need.perParty().isEmpty()) {
      return;
    }
    List<Candidate> candidates = question.candidates();
    List<IntVar> lent = new ArrayList<>();
    List<IntVar> shared = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      if (candidates.get(i).covers(need.need()) > 0 && candidates.get(i).party().isEmpty()) {
        shared.add(counts[i]);
      }
    }
    for (Map.Entry<String, Integer> party : new TreeMap<>(need.perParty()).entrySet()) {
      List<IntVar> own = new ArrayList<>();
      for (int i = 0; i < counts.length; i++) {
        if (candidates.get(i).covers(need.need()) > 0
            && candidates.get(i).party().filter(party.getKey()::equals).isPresent()) {
          own.add(counts[i]);
        }
      }
      IntVar lentHere = model.intVar(0, party.getValue());
      own.add(lentHere);
      lent.add(lentHere);
      model.sum(own.toArray(IntVar[]::new), ">=", party.getValue()).post();
    }
    IntVar total = model.intVar(0, need.perParty().values().stream().mapToInt(n -> n).sum());
    model.sum(lent.toArray(IntVar[]::new), "=", total).post();
    if (shared.isEmpty()) {
      model.arithm(total, "=", 0).post();
    } else {
      model.sum(shared.toArray(IntVar[]::new), ">=", total).post();
    }
  }

  /** What only a replacement lets stay comes unless one of its replacements does. */
  private void replacements() {
    List<Candidate> candidates = question.candidates();
    for (int i = 0; i < counts.length; i++) {
      Candidate candidate = candidates.get(i);
      if (candidate.kind() == Candidate.Kind.OFFER || candidate.free() || candidate.least() > 0) {
        continue;
      }
      List<IntVar> stands = new ArrayList<>(List.of(counts[i]));
      for (int j = 0; j < counts.length; j++) {
        if (candidates.get(j).replaces().contains(candidate.ref())) {
          stands.add(counts[j]);
        }
      }
      model.sum(stands.toArray(IntVar[]::new), ">=", 1).post();
    }
  }

  private void bound(IntVar total, ToLongFunction<Candidate> weight, List<Required> needs) {
    int[] weights =
        question.candidates().stream().mapToInt(c -> (int) weight.applyAsLong(c)).toArray();
    model.post(
        new Constraint(
            "cover bound of " + total.getName(),
            new CoverBound(counts, total, weights, question.candidates(), needs)));
  }
}
