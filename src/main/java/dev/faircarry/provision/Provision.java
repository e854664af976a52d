package dev.faircarry.provision;

import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * What the group takes to eat, burn and drink.
 *
 * @param items as shared items of the trip
 * @param figures every number they were worked out from
 */
public record Provision(List<Item> items, List<Figure> figures, List<Note> notes) {

  /**
   * Ids of provisioned items begin with this, so that asking again replaces them and nothing else.
   */
  public static final String ID_PREFIX = "plan-";

  public Provision {
    items = List.copyOf(items);
    figures = List.copyOf(figures);
    notes = List.copyOf(notes);
  }

  /**
   * One provisioned item.
   *
   * @param reason how its quantity came about, in one sentence
   * @param followsParty whether its quantity follows the party by itself; if not, ask again when
   *     somebody drops out
   */
  public record Item(SharedItem item, String reason, boolean followsParty) {
    /** The item's name. */
    public String name() {
      return item.name();
    }
  }

  /** The trip with these items in place of all that an earlier provision put there. */
  public Trip applyTo(Trip trip) {
    List<SharedItem> shared = new ArrayList<>();
    for (SharedItem item : trip.shared()) {
      if (!item.id().startsWith(ID_PREFIX)) {
        shared.add(item);
      }
    }
    for (Item item : items) {
      shared.add(item.item());
    }
    return new Trip(
        trip.name(), trip.days(), trip.policy(), trip.hikers(), shared, trip.rules(), trip.plan());
  }
}
