package dev.faircarry.solve;

import dev.faircarry.split.Demand;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Finds a small set of demands that cannot hold together: QuickXplain (Junker 2004), asking {@link
 * RuleModel} whether a subset can hold.
 */
final class Conflict {
  private static final long NODES_PER_QUESTION = 20_000;

  private final Function<Predicate<Demand>, Model> models;
  private final Effort effort;
  private boolean sure = true;

  private Conflict(Function<Predicate<Demand>, Model> models, Effort effort) {
    this.models = models;
    this.effort = effort;
  }

  /**
   * The demands found, in the order of the trip.
   *
   * @param irreducible whether every question was answered for sure, so that dropping any one
   *     demand makes the rest possible
   */
  record Found(List<Demand> demands, boolean irreducible) {}

  /**
   * Explains why demands cannot all hold.
   *
   * @param models the model under a part of the demands
   */
  static Found of(List<Demand> all, Function<Predicate<Demand>, Model> models, Effort effort) {
    Conflict conflict = new Conflict(models, effort);
    List<Demand> found = conflict.explain(List.of(), List.of(), all);
    List<Demand> ordered = all.stream().filter(found::contains).toList();
    return new Found(ordered, conflict.sure);
  }

  /** Everything a split must keep, what is easiest to give way first. */
  static List<Demand> demands(Trip trip) {
    List<Demand> all = new ArrayList<>();
    for (Rule rule : trip.rules()) {
      all.add(new Demand.OfRule(rule.id()));
    }
    Set<String> kinds = new LinkedHashSet<>();
    for (SharedItem item : trip.shared()) {
      item.goesInto().ifPresent(kinds::add);
    }
    for (String kind : kinds) {
      all.add(new Demand.OfContainers(kind));
    }
    for (Hiker hiker : trip.hikers()) {
      if (hiker.minor() && !trip.policy().minorsMayCarryFlameAndFuel()) {
        all.add(new Demand.OfMinor(hiker.id()));
      }
      if (hiker.maxPieces().isPresent()) {
        all.add(new Demand.OfMaxPieces(hiker.id()));
      }
      if (hiker.pack().flatMap(p -> p.volume()).isPresent()) {
        all.add(new Demand.OfRoom(hiker.id()));
      }
    }
    return all;
  }

  private boolean impossible(List<Demand> demands) {
    Model m = models.apply(demands::contains);
    State state = new State(m);
    if (!m.contradictory && new Construction(state, effort, new Dice(7)).build()) {
      return false;
    }
    RuleModel.Verdict verdict = RuleModel.find(new State(m), NODES_PER_QUESTION, effort);
    sure &= verdict != RuleModel.Verdict.UNKNOWN;
    return verdict == RuleModel.Verdict.NONE;
  }

  /** QuickXplain: demands out of {@code rest} that with {@code ground} make the conflict. */
  private List<Demand> explain(List<Demand> ground, List<Demand> added, List<Demand> rest) {
    if (!added.isEmpty() && impossible(ground)) {
      return List.of();
    }
    if (rest.size() <= 1) {
      return rest;
    }
    List<Demand> first = rest.subList(0, rest.size() / 2);
    List<Demand> second = rest.subList(rest.size() / 2, rest.size());
    List<Demand> ofSecond = explain(joined(ground, first), first, second);
    List<Demand> ofFirst = explain(joined(ground, ofSecond), ofSecond, first);
    return joined(ofFirst, ofSecond);
  }

  private static List<Demand> joined(List<Demand> one, List<Demand> other) {
    List<Demand> all = new ArrayList<>(one);
    all.addAll(other);
    return all;
  }
}
