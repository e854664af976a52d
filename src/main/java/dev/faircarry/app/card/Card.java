package dev.faircarry.app.card;

import dev.faircarry.check.Finding;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Opened;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Stow;
import java.util.List;
import java.util.Optional;

/**
 * One hiker's part of a split.
 *
 * @param things shared pieces carried at departure, in the order of the trip
 * @param gives what others carry that is now with this hiker
 * @param atCamp what this hiker gives or gets when somebody leaves early
 * @param openings the opening plan of the whole group, by day: whose bag is opened when
 * @param loads loads on every morning
 * @param findings what the check found that names this hiker
 */
public record Card(
    Hiker hiker,
    List<Thing> things,
    List<Gives> gives,
    List<CampHandover> atCamp,
    List<Opened> openings,
    HikerLoads loads,
    List<Finding> findings) {
  public Card {
    things = List.copyOf(things);
    gives = List.copyOf(gives);
    atCamp = List.copyOf(atCamp);
    openings = List.copyOf(openings);
    findings = List.copyOf(findings);
  }

  /**
   * A piece, or units of a counted item, in this hiker's pack at departure.
   *
   * @param milligrams of all units together, unused
   * @param days the days on whose mornings it is there; empty for all
   * @param owner id of whom it belongs to and goes back to, this hiker included
   * @param into names of containers in this pack that it must travel in
   * @param from who hands it over, or parts of it, now
   */
  public record Thing(
      PieceRef piece,
      int units,
      long milligrams,
      Stow stow,
      List<Integer> days,
      Optional<String> owner,
      List<String> into,
      List<From> from) {
    public Thing {
      days = List.copyOf(days);
      into = List.copyOf(into);
      from = List.copyOf(from);
    }
  }

  /** So many units come from this hiker. */
  public record From(String hiker, int units, Why why) {}

  /** A piece, or units, to be handed to somebody else. */
  public record Gives(PieceRef piece, int units, String to, Why why) {}

  /** Why something changes hands now. */
  public enum Why {
    /** It belongs to who gives it, and there was no earlier split. */
    OWNED,
    /** Who gives it carried it by the split agreed on before. */
    CARRIED_BEFORE
  }
}
