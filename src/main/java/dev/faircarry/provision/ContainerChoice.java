package dev.faircarry.provision;

import dev.faircarry.trip.plan.Fuel.Container;
import java.util.Arrays;
import java.util.List;

/**
 * Which cartridges or bottles hold so much fuel with the least mass on the first morning, and of
 * those with the fewest containers; among equals the one named first in the plan. Worked out
 * exactly in whole grams: what a container holds is rounded down, what is needed up.
 */
final class ContainerChoice {
  /** The most fuel that is planned here: 200 kg. */
  static final long MAX_GRAMS = 200_000;

  private ContainerChoice() {}

  /** How many of each, in the plan's order; together they hold the fuel needed. */
  static int[] choose(List<Container> containers, long neededGrams) {
    if (neededGrams > MAX_GRAMS) {
      throw new IllegalArgumentException("more fuel than is planned here");
    }
    int needed = (int) neededGrams;
    long[] mass = new long[needed + 1];
    int[] count = new int[needed + 1];
    int[] last = new int[needed + 1];
    Arrays.fill(mass, 1, needed + 1, Long.MAX_VALUE);
    for (int grams = 1; grams <= needed; grams++) {
      for (int kind = 0; kind < containers.size(); kind++) {
        Container container = containers.get(kind);
        int rest = (int) Math.max(0, grams - wholeGrams(container));
        long with = mass[rest] + carriedMilligrams(container);
        if (with < mass[grams] || (with == mass[grams] && count[rest] + 1 < count[grams])) {
          mass[grams] = with;
          count[grams] = count[rest] + 1;
          last[grams] = kind;
        }
      }
    }
    int[] chosen = new int[containers.size()];
    for (int grams = needed; grams > 0; ) {
      int kind = last[grams];
      chosen[kind]++;
      grams = (int) Math.max(0, grams - wholeGrams(containers.get(kind)));
    }
    return chosen;
  }

  private static long wholeGrams(Container container) {
    return container.fuel().milligrams() / 1000;
  }

  /**
   * A cartridge is carried full; what a bottle holds can be measured, so that only the bottle
   * counts.
   */
  private static long carriedMilligrams(Container container) {
    return container.emptyMass().milligrams()
        + (container.refillable() ? 0 : container.fuel().milligrams());
  }
}
