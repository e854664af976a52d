package dev.faircarry.weigh;

import dev.faircarry.unit.Mass;

/**
 * One reading, kept as it came.
 *
 * @param mass what the scale showed, in the unit it showed
 * @param at when, in the client's words
 * @param source which scale or who, in the client's words
 * @param confirmed whether somebody looked again and it is so
 */
public record ScaleReading(
    Weighed weighed, Mass mass, String at, String source, boolean confirmed) {}
