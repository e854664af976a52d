package dev.faircarry.unit;

/** What came of reading a quantity somebody entered. */
public sealed interface Parse<T> {

  /** The text was understood. */
  record Read<T>(T value) implements Parse<T> {}

  /** The text was not understood. */
  record Unreadable<T>(Fault fault) implements Parse<T> {}

  /** Why a text is not a quantity. */
  enum Fault {
    EMPTY("nothing is written"),
    TOO_LONG("the text is longer than a quantity can be"),
    NO_UNIT("a number without a unit"),
    UNKNOWN_UNIT("a unit that is not known here"),
    NOT_A_NUMBER("not a plain decimal number with a point"),
    NEGATIVE("less than nothing"),
    OUT_OF_ORDER("the parts must run from the larger unit to the smaller, whole but for the last"),
    TOO_LARGE("larger than any quantity here"),
    TOO_FINE("more decimals than are kept");

    private final String meaning;

    Fault(String meaning) {
      this.meaning = meaning;
    }

    /** The reason in words that fit after a colon. */
    public String meaning() {
      return meaning;
    }
  }
}
