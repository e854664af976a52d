package dev.faircarry.trip;

import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A member of the group.
 *
 * @param bodyMass private: never shown to others, never logged
 * @param targetLoad stated instead of, or above, a body mass
 * @param targetFraction the hiker's own fraction; it wins over the policy's
 * @param capFraction the hiker's own cap; it wins over the policy's
 * @param capLoad a load never to be passed, whatever the body mass
 * @param maxPieces most shared pieces at departure, each part and each unit one
 * @param party name of the party walked with; hikers without one are a party of their own
 * @param leavesAfterDay the last day walked with the group, if not the trip's last
 */
public record Hiker(
    String id,
    String name,
    Optional<Mass> bodyMass,
    Optional<Mass> targetLoad,
    Optional<Fraction> targetFraction,
    Optional<Fraction> capFraction,
    Optional<Mass> capLoad,
    OptionalInt maxPieces,
    Optional<String> party,
    boolean minor,
    OptionalInt leavesAfterDay,
    Optional<Pack> pack,
    List<KitItem> kit) {
  public Hiker {
    kit = List.copyOf(kit);
  }

  /** The last day on whose morning this hiker carries a load. */
  public int lastDay(int tripDays) {
    return Math.min(tripDays, leavesAfterDay.orElse(tripDays));
  }

  /** Names, fractions and counts, never the body mass: records end up in messages. */
  @Override
  public String toString() {
    return "Hiker[" + id + "]";
  }
}
