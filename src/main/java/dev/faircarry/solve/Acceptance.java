package dev.faircarry.solve;

/** Judges a change that has been made to a state. */
interface Acceptance {
  /** Whether the state may stay as it is now: no hard rule broken, and not above a cost. */
  boolean accept(long limit);
}
