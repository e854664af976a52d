package dev.faircarry.oracle;

import dev.faircarry.split.Carry;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What changes hands between two splits, unit by unit: what both have with the same hiker is
 * crossed out, and of what is left as much is handed over as was somewhere before and is somewhere
 * now.
 *
 * @param units how many pieces and units
 * @param milligrams their mass on the first morning
 * @param certain whether givers and takers are all who had something left over: nothing of a piece
 *     that moves came anew or went away
 * @param people all who had something left over of a piece that moves
 */
public record Movement(int units, long milligrams, boolean certain, Set<String> people) {

  /** Of one piece: who gives and who takes, once for each unit; one list may be longer. */
  public record OfPiece(PieceRef piece, List<String> givers, List<String> takers) {
    public OfPiece {
      givers = List.copyOf(givers);
      takers = List.copyOf(takers);
    }

    public int units() {
      return Math.min(givers.size(), takers.size());
    }
  }

  /** From an earlier split to one of the trip as it is now. */
  public static Movement between(Split before, Split now, Trip trip) {
    int units = 0;
    long milligrams = 0;
    boolean certain = true;
    Set<String> people = new TreeSet<>();
    for (OfPiece piece : pieces(before, now, trip)) {
      if (piece.units() > 0) {
        units += piece.units();
        milligrams += piece.units() * departing(trip, piece.piece());
        certain &= piece.givers().size() == piece.takers().size();
        people.addAll(piece.givers());
        people.addAll(piece.takers());
      }
    }
    return new Movement(units, milligrams, certain, people);
  }

  /** Piece by piece of the trip as it is now. */
  public static List<OfPiece> pieces(Split before, Split now, Trip trip) {
    List<OfPiece> all = new ArrayList<>();
    for (Thing thing : new PlainTrip(trip).things) {
      List<String> givers = holders(before, thing.ref());
      List<String> takers = new ArrayList<>();
      for (String hiker : holders(now, thing.ref())) {
        if (!givers.remove(hiker)) {
          takers.add(hiker);
        }
      }
      all.add(new OfPiece(thing.ref(), givers, takers));
    }
    return all;
  }

  private static List<String> holders(Split split, PieceRef piece) {
    List<String> holders = new ArrayList<>();
    for (Carry carry : split.carries()) {
      for (int u = 0; u < carry.units() && carry.piece().equals(piece); u++) {
        holders.add(carry.hiker());
      }
    }
    return holders;
  }

  /** How many units there are of a piece; 1 of a whole item or a part. */
  public static int units(Trip trip, PieceRef piece) {
    return thing(trip, piece).units();
  }

  private static long departing(Trip trip, PieceRef piece) {
    Thing thing = thing(trip, piece);
    return thing.thereOn(1) ? thing.milligrams(1) : 0;
  }

  private static Thing thing(Trip trip, PieceRef piece) {
    return new PlainTrip(trip)
        .things.stream().filter(t -> t.ref().equals(piece)).findFirst().orElseThrow();
  }
}
