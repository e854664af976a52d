package dev.faircarry.app;

import java.time.Instant;

/**
 * A line of a trip's history.
 *
 * @param number 1 for the first, then one more for each change
 * @param what what was done, in a few words and ids; no quantities
 * @param erased whether its document is gone because somebody had their data erased
 */
public record RevisionLine(int number, Instant at, Author by, String what, boolean erased) {}
