package dev.faircarry.access;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Trip;
import dev.faircarry.unit.Mass;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whose body mass the bearer of a link may not learn.
 *
 * <p>A leader sees every body mass except those kept private; a hiker sees the own one, but while
 * it is kept private only by a link of their own making: the leader has seen the others. A viewer
 * sees none. A target load that stands instead of a body mass is open to all.
 *
 * @param hidden ids of hikers whose body mass, and everything that follows from it by arithmetic,
 *     is left out
 */
public record Sight(Set<String> hidden) {
  /** Everything is open. */
  public static final Sight ALL = new Sight(Set.of());

  public Sight {
    hidden = Set.copyOf(hidden);
  }

  /**
   * What the bearer of a link may see of a trip.
   *
   * @param keptPrivate ids of hikers who keep their body mass even from the leader
   */
  public static Sight of(Link link, Trip trip, Set<String> keptPrivate) {
    return new Sight(
        trip.hikers().stream()
            .filter(h -> h.bodyMass().isPresent())
            .map(Hiker::id)
            .filter(
                id ->
                    switch (link.role()) {
                      case LEADER -> keptPrivate.contains(id);
                      case HIKER -> !link.isOf(id) || (keptPrivate.contains(id) && !link.own());
                      case VIEWER -> true;
                    })
            .collect(Collectors.toUnmodifiableSet()));
  }

  /** Whether this hiker's body mass is left out. */
  public boolean hides(String hiker) {
    return hidden.contains(hiker);
  }

  /** Whether anything is left out. */
  public boolean hidesAny() {
    return !hidden.isEmpty();
  }

  /** The trip without the body masses that are hidden. */
  public Trip of(Trip trip) {
    if (!hidesAny()) {
      return trip;
    }
    List<Hiker> hikers =
        trip.hikers().stream().map(h -> hides(h.id()) ? withoutBodyMass(h) : h).toList();
    return new Trip(
        trip.name(), trip.days(), trip.policy(), hikers, trip.shared(), trip.rules(), trip.plan());
  }

  private static Hiker withoutBodyMass(Hiker h) {
    return withBodyMass(h, Optional.empty());
  }

  /** A hiker with another body mass, or none. */
  public static Hiker withBodyMass(Hiker h, Optional<Mass> bodyMass) {
    return new Hiker(
        h.id(),
        h.name(),
        bodyMass,
        h.targetLoad(),
        h.targetFraction(),
        h.capFraction(),
        h.capLoad(),
        h.maxPieces(),
        h.party(),
        h.minor(),
        h.leavesAfterDay(),
        h.pack(),
        h.kit());
  }
}
