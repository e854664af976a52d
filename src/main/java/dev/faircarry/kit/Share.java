package dev.faircarry.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What belongs together in a report, on the first morning.
 *
 * @param name a purpose, or a place in the pack
 */
public record Share(String name, long massMilligrams, int things) {

  /** The heaviest first; of equal ones by name. */
  static List<Share> by(List<Carried> things, Function<Carried, String> name) {
    Map<String, Share> sums = new TreeMap<>();
    for (Carried thing : things) {
      sums.merge(
          name.apply(thing),
          new Share(name.apply(thing), thing.massMilligrams(), 1),
          (a, b) -> new Share(a.name, a.massMilligrams + b.massMilligrams, a.things + b.things));
    }
    List<Share> shares = new ArrayList<>(sums.values());
    shares.sort((a, b) -> Long.compare(b.massMilligrams, a.massMilligrams));
    return List.copyOf(shares);
  }
}
