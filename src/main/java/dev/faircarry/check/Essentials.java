package dev.faircarry.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The ten essential systems as the US National Park Service publishes them ("Ten Essentials",
 * nps.gov; from memory), with the needs that count as each.
 *
 * @param personal those that everybody has in their own pack; the others each party has once
 */
public record Essentials(Set<Kind> personal) {
  public Essentials {
    personal = Set.copyOf(personal);
  }

  /** Common practice: what everybody keeps because a party can be torn apart. */
  public static final Essentials DEFAULT =
      new Essentials(
          EnumSet.of(
              Kind.SUN_PROTECTION,
              Kind.INSULATION,
              Kind.ILLUMINATION,
              Kind.NUTRITION,
              Kind.HYDRATION));

  /** A system, and the needs of which one is enough. */
  public enum Kind {
    NAVIGATION("navigation", "map", "compass"),
    SUN_PROTECTION("sun-protection", "sun"),
    INSULATION("insulation", "warmth", "rain"),
    ILLUMINATION("illumination", "light"),
    FIRST_AID("first-aid"),
    FIRE("fire", "flame"),
    REPAIR("repair", "tools", "knife"),
    NUTRITION("nutrition", "food"),
    HYDRATION("hydration", "water", "water-treatment"),
    EMERGENCY_SHELTER("emergency-shelter", "shelter", "sleeping");

    /** Separated by blanks. */
    private final String needs;

    Kind(String... needs) {
      this.needs = String.join(" ", needs);
    }

    /** Whether what covers these needs is part of the system. */
    public boolean metBy(List<String> covers) {
      return covers.stream().anyMatch(List.of(needs.split(" ", -1))::contains);
    }

    /** The system as it stands in documents: {@code sun-protection}. */
    public String text() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The same in a sentence: {@code sun protection}. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
