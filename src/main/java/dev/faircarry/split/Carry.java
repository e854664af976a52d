package dev.faircarry.split;

import dev.faircarry.trip.PieceRef;

/**
 * A hiker carries a piece, or so many units of a counted item.
 *
 * @param units 1 for a whole item or a part
 */
public record Carry(String hiker, PieceRef piece, int units) {}
