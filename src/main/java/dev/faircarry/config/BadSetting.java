package dev.faircarry.config;

import java.util.Locale;

/**
 * A setting that cannot be used.
 *
 * @param where the variable or flag it was set by
 * @param message a sentence that says what it should be; never the value of a secret
 */
public record BadSetting(Code code, String where, String message) {

  /** Why. */
  public enum Code {
    NOT_A_NUMBER,
    OUT_OF_RANGE,
    NOT_A_WORD,
    NOT_A_HOST,
    NOT_A_FILE,
    NOT_AN_ORIGIN,
    NOT_A_DATABASE,
    TOO_SHORT,
    NOT_WITH_DEMO;

    /** The code as it is shown: {@code out-of-range}. */
    public String text() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** One line. */
  public String text() {
    return where + ": " + code.text() + ". " + message;
  }
}
