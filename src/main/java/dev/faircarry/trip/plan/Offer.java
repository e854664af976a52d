package dev.faircarry.trip.plan;

import dev.faircarry.trip.Contains;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Stow;
import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.util.List;
import java.util.Optional;

/**
 * Something that could be taken.
 *
 * @param price what must be paid to have it, each; empty for what somebody owns already
 * @param available how many there are
 * @param owner to whom it belongs, when the group shares it
 * @param forHiker whose own kit it would join; empty for shared gear
 * @param covers what it meets, each
 * @param requires what must be there besides, each: poles to pitch it with
 * @param makesUnnecessary things of the trip, or other offers, that can stay when it is taken:
 *     {@code "asha/quilt"}
 */
public record Offer(
    String id,
    String name,
    Mass mass,
    MassFrom massFrom,
    Optional<Volume> volume,
    Optional<Cost> price,
    int available,
    Optional<String> owner,
    Optional<String> forHiker,
    Stow stow,
    List<Cover> covers,
    List<Cover> requires,
    List<String> makesUnnecessary,
    Optional<Contains> contains) {
  public Offer {
    covers = List.copyOf(covers);
    requires = List.copyOf(requires);
    makesUnnecessary = List.copyOf(makesUnnecessary);
  }

  /** So much of a need. */
  public record Cover(String need, Amount amount) {}
}
