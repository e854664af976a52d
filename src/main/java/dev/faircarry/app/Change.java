package dev.faircarry.app;

import java.time.Instant;

/**
 * A change somebody asks for.
 *
 * @param expected number of the revision it was made from; it is refused if another came meanwhile
 * @param what what it does, in a few words and ids; no quantities
 */
public record Change(int expected, TripState next, Author by, Instant at, String what) {}
