package dev.faircarry.kit;

import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Verdict;
import dev.faircarry.effort.CostModel;
import dev.faircarry.effort.DayEffort;
import dev.faircarry.effort.Rate;
import dev.faircarry.effort.WalkingRule;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.plan.Plan;
import dev.faircarry.trip.plan.RouteDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What walking the route costs each hiker with the load of each morning. With the load it tells the
 * body mass, and so is as private as that.
 */
public record EffortReport(WalkingRule rule, CostModel model, List<OfHiker> hikers) {
  public EffortReport {
    hikers = List.copyOf(hikers);
  }

  /**
   * One hiker's days.
   *
   * @param days those on which the hiker is there; a day without a route takes no time and has no
   *     cost
   */
  public record OfHiker(String hiker, List<DayEffort> days) {
    public OfHiker {
      days = List.copyOf(days);
    }
  }

  /**
   * Estimates the route's cost.
   *
   * @param verdict the checker's reading of the same trip and a split of it
   */
  public static EffortReport of(Trip trip, Verdict verdict, WalkingRule rule, CostModel model) {
    Plan plan = trip.plan().orElse(Plan.EMPTY);
    List<OfHiker> hikers = new ArrayList<>();
    for (HikerLoads loads : verdict.hikers()) {
      List<DayEffort> days =
          loads.mornings().stream()
              .map(
                  morning -> {
                    Optional<RouteDay> day = plan.routeOn(morning.day());
                    return day.map(
                            d ->
                                DayEffort.of(
                                    d,
                                    rule,
                                    model,
                                    loads.bodyMassMilligrams(),
                                    morning.loadMilligrams()))
                        .orElseGet(
                            () ->
                                new DayEffort(
                                    morning.day(),
                                    0,
                                    OptionalLong.empty(),
                                    Optional.of(Rate.Reason.NO_ROUTE)));
                  })
              .toList();
      hikers.add(new OfHiker(loads.hiker(), days));
    }
    return new EffortReport(rule, model, hikers);
  }
}
