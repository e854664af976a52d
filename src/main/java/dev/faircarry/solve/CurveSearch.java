package dev.faircarry.solve;

import dev.faircarry.split.Curve;
import dev.faircarry.split.CurveOutcome;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Recommendation;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Builds a trade-off curve, point by point, each from the one before with one more handover. */
final class CurveSearch {
  private static final long NODES = 200_000;
  private static final int POINTS = 200;

  private final Trip trip;
  private final Split earlier;
  private final Set<PieceRef> frozen;
  private final int maxHandovers;
  private final Effort effort;
  private final Model m;
  private final Moves moves;

  CurveSearch(Trip trip, Split earlier, Set<PieceRef> frozen, int maxHandovers, Effort effort) {
    this.trip = trip;
    this.earlier = earlier;
    this.frozen = frozen;
    this.maxHandovers = maxHandovers;
    this.effort = effort;
    m = model(demand -> true);
    moves = new Moves(m, earlier);
  }

  private Model model(Predicate<Demand> active) {
    return ModelBuilder.of(trip, active, earlier, frozen);
  }

  CurveOutcome run() {
    State free = new State(m);
    RuleModel.Verdict verdict = RuleModel.Verdict.FOUND;
    if (m.contradictory || !new Construction(free, effort, new Dice(1)).build()) {
      free = new State(m);
      verdict = RuleModel.find(free, NODES, effort);
    }
    if (verdict == RuleModel.Verdict.NONE) {
      List<Demand> demands = new ArrayList<>(Conflict.demands(trip));
      frozen.forEach(piece -> demands.add(new Demand.OfFrozen(piece)));
      Conflict.Found found = Conflict.of(demands, this::model, effort);
      return new CurveOutcome.Impossible(found.demands(), found.irreducible(), effort.spent());
    }
    if (verdict == RuleModel.Verdict.UNKNOWN) {
      return new CurveOutcome.Undecided(effort.spent(), effort.cutByClock());
    }
    Effort share = effort.part(4);
    Search best = new Search(free, share);
    best.run();
    effort.spend(share.spent());
    return walk(free, best);
  }

  private CurveOutcome walk(State free, Search best) {
    List<CurvePoint> points = new ArrayList<>();
    BudgetSearch search = new BudgetSearch(m, moves, free, best, effort);
    int last = Math.min(maxHandovers, moves.count(free));
    Optional<Exchange.Value> before = Optional.empty();
    boolean complete = true;
    for (int k = moves.forced; k <= Math.max(last, moves.forced) && points.size() < POINTS; k++) {
      if (!search.solve(k)) {
        complete &= search.excluded();
        if (effort.over()) {
          complete = false;
          break;
        }
        continue;
      }
      Exchange.Value now = Exchange.Value.of(search.state());
      if (before.isEmpty() || now.betterThan(before.get())) {
        CurvePoint point = PointOf.write(m, moves, earlier, search, effort);
        // A search that was not exhausted may have missed what a wider one then meets.
        while (!points.isEmpty()
            && points.get(points.size() - 1).handovers() >= point.handovers()) {
          points.remove(points.size() - 1);
          complete = false;
        }
        points.add(point);
        before = Optional.of(now);
      }
      complete &= search.provedAll();
      if (search.reachedBest() || effort.over()) {
        break;
      }
    }
    if (points.isEmpty()) {
      return new CurveOutcome.Undecided(effort.spent(), effort.cutByClock());
    }
    complete &= search.reachedBest();
    return new CurveOutcome.Found(
        new Curve(points, Recommendation.among(points, m.grain), complete),
        effort.spent(),
        effort.cutByClock());
  }
}
