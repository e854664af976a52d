package dev.faircarry.trip.plan;

import dev.faircarry.unit.Length;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A day on foot.
 *
 * @param distance along the way, seen from above
 * @param climb sum of all climbs
 * @param descent sum of all descents
 * @param gentleDescent of the descent, what lies between 5 and 12 degrees, if known
 * @param steepDescent of the descent, what is steeper than 12 degrees, if known
 * @param surface what is walked on
 * @param kmPerHour pace on the flat without stops; by default the one of the rule used
 * @param campHeight height above the sea of that night's camp
 */
public record RouteDay(
    int day,
    Length distance,
    Length climb,
    Length descent,
    Optional<Length> gentleDescent,
    Optional<Length> steepDescent,
    Surface surface,
    Optional<BigDecimal> kmPerHour,
    Optional<Length> campHeight) {}
