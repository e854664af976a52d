package dev.faircarry.check;

import java.util.List;
import java.util.OptionalLong;

/**
 * One hiker's loads on every morning they are there.
 *
 * @param targetNanograms T, exact
 * @param bodyMassMilligrams for the relative load; empty without a body mass
 */
public record HikerLoads(
    String hiker, long targetNanograms, OptionalLong bodyMassMilligrams, List<Morning> mornings) {
  public HikerLoads {
    mornings = List.copyOf(mornings);
  }

  /** Never the body mass or what follows from it: records end up in messages. */
  @Override
  public String toString() {
    return "HikerLoads[" + hiker + "]";
  }
}
