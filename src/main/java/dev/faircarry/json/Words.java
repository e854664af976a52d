package dev.faircarry.json;

import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.plan.Fuel;
import dev.faircarry.trip.plan.Surface;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The closed sets of words of a trip document, in both directions. */
final class Words {
  static final Map<String, Stow> STOW = of(Stow.values());
  static final Map<String, MassFrom> MASS_FROM = of(MassFrom.values());
  static final Map<String, Policy.Basis> BASIS = of(Policy.Basis.values());
  static final Map<String, Surface> SURFACE = of(Surface.values());
  static final Map<String, Fuel.Kind> FUEL = of(Fuel.Kind.values());

  private Words() {}

  /** The word as it stands in documents: {@code at-hand}. */
  static String text(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static <E extends Enum<E>> Map<String, E> of(E[] all) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E each : all) {
      words.put(text(each), each);
    }
    return Collections.unmodifiableMap(words);
  }
}
