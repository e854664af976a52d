package dev.faircarry.split;

import dev.faircarry.trip.PieceRef;
import java.util.List;

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

  /**
   * Whoever takes this is as badly off, even with nothing else.
   *
   * @param pieces one piece, or what rules keep in one pack
   */
  record LargePiece(List<PieceRef> pieces, int day, long steps) implements Binding {
    public LargePiece {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * Without this demand it could be better.
   *
   * @param worstSteps the highest step of a split found without it
   */
  record OneDemand(Demand demand, long worstSteps) implements Binding {}

  /** The caps cannot all hold, and passing them by as little as possible comes first. */
  record Caps() implements Binding {}

  /** Not known: nothing proves yet that the worst-off morning cannot be better. */
  record Unproved() implements Binding {}

  /** No single cause: the pieces and rules do not divide more evenly. */
  record Grain() implements Binding {}
}
