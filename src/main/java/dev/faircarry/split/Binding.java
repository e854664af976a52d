package dev.faircarry.split;

import dev.faircarry.trip.PieceRef;

/** What keeps the worst-off morning from being better. */
public sealed interface Binding {

  /** Own kit alone makes it. */
  record OwnKit(String hiker, int day, long steps) implements Binding {}

  /**
   * Everything there is to carry makes it.
   *
   * @param totalMilligrams shared mass of the day
   * @param roomMilligrams what everybody together could hold with every morning one step better
   */
  record SheerTotal(int day, long totalMilligrams, long roomMilligrams) implements Binding {}

  /** Whoever takes this one piece is as badly off, even with nothing else. */
  record LargePiece(PieceRef piece, int day, long steps) implements Binding {}

  /**
   * Without this demand it could be better.
   *
   * @param worstSteps the highest step of a split found without it
   */
  record OneDemand(Demand demand, long worstSteps) implements Binding {}

  /** No single cause: the pieces and rules do not divide more evenly. */
  record Grain() implements Binding {}
}
