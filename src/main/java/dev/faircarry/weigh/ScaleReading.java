package dev.faircarry.weigh;

import dev.faircarry.unit.Mass;

/**
 * One reading, kept as it came.
 *
 * @param mass what the scale showed, in the unit it showed
 * @param at when, in the client's words; empty if nobody said
 * @param source which scale or who, in the client's words; empty if nobody said
 * @param confirmed whether somebody looked again and it is so; then earlier readings of the same
 *     thing that nobody confirmed count no longer
 */
public record ScaleReading(
    Weighed weighed, Mass mass, String at, String source, boolean confirmed) {}
