package dev.faircarry.effort;

/** What a model says about a way of walking. */
public sealed interface Rate {

  /** The metabolic rate, in watts for the whole walker. */
  record Watts(double watts) implements Rate {}

  /** The model was not measured there and so says nothing. */
  record Refused(Reason reason) implements Rate {}

  /** What lies outside the model's range. */
  enum Reason {
    SPEED("the speed lies outside the range the model was measured in"),
    GRADE("the grade lies outside the range the model was measured in"),
    LOAD("the load lies outside the range the model was measured in"),
    NO_BODY_MASS("no body mass is stated, and the model needs one"),
    NO_ROUTE("the day's route is not stated");

    private final String meaning;

    Reason(String meaning) {
      this.meaning = meaning;
    }

    /** The reason in words; it names no number that a body mass could be worked out from. */
    public String meaning() {
      return meaning;
    }

    /** The reason as it stands in documents. */
    public String text() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
  }
}
