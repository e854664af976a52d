package dev.faircarry.split;

import dev.faircarry.trip.PieceRef;

/**
 * A piece, or units of a counted item, that leaves one hiker for another between two splits.
 *
 * @param from who had it; possibly somebody who is no longer on the trip
 */
public record Handover(String from, String to, PieceRef piece, int units) {}
