package dev.faircarry.trip;

/** Where a stated mass comes from. */
public enum MassFrom {
  /** What the maker or a list claims; assumed when nothing is said. */
  LABEL,
  /** Read from a scale. */
  SCALE,
  /** A guess. */
  ESTIMATE
}
