package dev.faircarry.provision;

import java.util.Locale;

/**
 * Something to know about a quantity, in one sentence, and what to do about it in another.
 *
 * @param code its kind, for programs
 */
public record Note(Code code, String message, String remedy) {

  /** Kinds of notes. */
  public enum Code {
    MEALS_COVER_ENERGY,
    NO_FUEL_NEEDED,
    TOO_MUCH_FUEL,
    BOTTLES_MISSING,
    CONTAINER_MISSING,
    TOO_MANY_PIECES,
    NOBODY_THERE,
    WALKING_TIME_ASSUMED;

    /** The code as it stands in documents: {@code bottles-missing}. */
    public String text() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
