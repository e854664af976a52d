package dev.faircarry.trip.plan;

import java.util.List;
import java.util.Optional;

/**
 * The rest of the trip around the split. Nothing of it changes a split; quantities, reports and
 * choices are worked out from it on request.
 *
 * @param route the days on foot, at most one entry a day
 */
public record Plan(
    List<RouteDay> route,
    Optional<Food> food,
    Optional<Fuel> fuel,
    Optional<Water> water,
    Optional<Goals> goals,
    Optional<Taking> taking) {
  public Plan {
    route = List.copyOf(route);
  }

  /** A plan that says nothing. */
  public static final Plan EMPTY =
      new Plan(
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** The route of a day, if it is stated. */
  public Optional<RouteDay> routeOn(int day) {
    return route.stream().filter(r -> r.day() == day).findFirst();
  }
}
