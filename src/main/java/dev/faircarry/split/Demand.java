package dev.faircarry.split;

import dev.faircarry.trip.PieceRef;

/** Something every split must keep, as explanations name it. */
public sealed interface Demand {

  /** A rule of the trip. */
  record OfRule(String ruleId) implements Demand {}

  /** A minor carries nothing that covers flame or fuel. */
  record OfMinor(String hiker) implements Demand {}

  /** The room in a hiker's pack. */
  record OfRoom(String hiker) implements Demand {}

  /** The most pieces a hiker takes. */
  record OfMaxPieces(String hiker) implements Demand {}

  /** What goes into a kind of container travels in one. */
  record OfContainers(String kind) implements Demand {}

  /** A piece that is packed already stays with who has it. */
  record OfFrozen(PieceRef piece) implements Demand {}
}
