package dev.faircarry.split;

import dev.faircarry.trip.PieceRef;

/**
 * At the camp of day {@code afterDay} a hiker who leaves hands a piece, or units, to one who stays;
 * it is in the new pack from the next morning.
 */
public record CampHandover(int afterDay, String from, String to, PieceRef piece, int units) {}
