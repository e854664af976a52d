package dev.faircarry.check;

/** How grave a finding is. */
public enum Severity {
  /** A hard rule is broken, or something is not carried: do not leave like this. */
  STOP,
  /** Worth a look before leaving. */
  CAUTION,
  /** Good to know. */
  ADVICE
}
