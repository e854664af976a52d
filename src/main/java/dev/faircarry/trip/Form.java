package dev.faircarry.trip;

import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.util.List;
import java.util.Optional;

/** In how many hands a shared item can be. */
public sealed interface Form {

  /** One thing, in one pack. */
  record Whole(
      Mass mass,
      MassFrom massFrom,
      Optional<Volume> volume,
      Stow stow,
      Optional<Use.Evenly> use,
      Optional<Contains> contains)
      implements Form {}

  /** Parts that can be in different packs; complete only together. */
  record Parts(List<Part> parts) implements Form {
    public Parts {
      parts = List.copyOf(parts);
    }
  }

  /** Equal units that can be in different packs, interchangeable. */
  record Counted(
      Quantity quantity,
      Mass unitMass,
      MassFrom massFrom,
      Optional<Volume> unitVolume,
      Stow stow,
      Optional<Use> use)
      implements Form {}

  /** A part of a shared item. */
  record Part(
      String id, String name, Mass mass, MassFrom massFrom, Optional<Volume> volume, Stow stow) {}

  /** How many units there are. */
  sealed interface Quantity {
    /** A stated number. */
    record Fixed(int count) implements Quantity {}

    /**
     * So many for each person present on each day, so that the number follows the party. With
     * {@code onDays} the people present on the first of those days are counted, once.
     */
    record PerPerson(int countPerDay) implements Quantity {}
  }

  /** One answer for each form. */
  interface Cases<R> {
    R whole(Whole form);

    R parts(Parts form);

    R counted(Counted form);
  }

  /** Asks {@code cases} for the answer that goes with this form. */
  default <R> R match(Cases<R> cases) {
    if (this instanceof Whole whole) {
      return cases.whole(whole);
    }
    if (this instanceof Parts parts) {
      return cases.parts(parts);
    }
    return cases.counted((Counted) this);
  }
}
