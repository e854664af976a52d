package dev.faircarry.kit;

import dev.faircarry.trip.MassFrom;
import java.util.ArrayList;
import java.util.List;

/**
 * What was claimed against what was weighed.
 *
 * @param labelMilligrams as the maker claims
 * @param scaleMilligrams as read from a scale
 */
public record Drift(String ref, String name, long labelMilligrams, long scaleMilligrams) {

  /** How much more it weighs than claimed; less than nothing when it is lighter. */
  public long driftMilligrams() {
    return scaleMilligrams - labelMilligrams;
  }

  /** Things weighed of which the claim is known, in the order of the kit. */
  static List<Drift> of(List<Carried> things) {
    List<Drift> drifts = new ArrayList<>();
    for (Carried thing : things) {
      if (thing.massFrom() == MassFrom.SCALE && thing.labelMilligrams().isPresent()) {
        drifts.add(
            new Drift(
                thing.ref(),
                thing.name(),
                thing.labelMilligrams().orElseThrow(),
                thing.massMilligrams()));
      }
    }
    return List.copyOf(drifts);
  }
}
