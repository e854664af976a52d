package dev.faircarry.weigh;

import dev.faircarry.trip.PieceRef;

/** What lay on the scale. */
public sealed interface Weighed {

  /** A hiker's pack on the first morning with everything in and on it. */
  record WholePack(String hiker) implements Weighed {}

  /** A hiker's empty pack. */
  record EmptyPack(String hiker) implements Weighed {}

  /** A thing of a hiker's own. */
  record OfKit(String hiker, String item) implements Weighed {}

  /** A shared piece, or one unit of a counted item. */
  record Piece(PieceRef piece) implements Weighed {}
}
