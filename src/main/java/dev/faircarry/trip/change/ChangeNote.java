package dev.faircarry.trip.change;

import java.util.Locale;

/**
 * Something a change brought with it that nobody asked for by name.
 *
 * @param change position of the change, from 0
 * @param message one sentence
 */
public record ChangeNote(int change, Kind kind, String message) {
  /** What it is about. */
  public enum Kind {
    RULE_DROPPED,
    RULE_NARROWED,
    OWNER_GONE,
    NEED_GOES_WITH_HIKER,
    USE_CONTINUED,
    STAYS_TO_THE_END,
    PLAN_SHORTENED;

    /** The kind as it stands in documents: {@code rule-dropped}. */
    public String text() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
