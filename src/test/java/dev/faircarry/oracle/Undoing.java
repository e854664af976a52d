package dev.faircarry.oracle;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.Change;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** The change that takes a change back, where one change can. */
public final class Undoing {
  private Undoing() {}

  /**
   * Takes a change back.
   *
   * @param before the trip that the change was made to
   */
  public static Optional<Change> of(Change change, Trip before) {
    if (change instanceof Change.DropsOut c) {
      return Optional.of(new Change.Joins(hiker(before, c.hiker())));
    }
    if (change instanceof Change.Joins c) {
      return Optional.of(new Change.DropsOut(c.hiker().id()));
    }
    if (change instanceof Change.LeavesAfter c) {
      int last = hiker(before, c.hiker()).leavesAfterDay().orElse(before.days());
      return Optional.of(new Change.LeavesAfter(c.hiker(), last));
    }
    if (change instanceof Change.ItemAdded c) {
      return Optional.of(new Change.ItemGone(PieceRef.item(c.item().id()), OptionalInt.empty()));
    }
    if (change instanceof Change.ItemGone c && c.units().isEmpty() && c.piece().part().isEmpty()) {
      return Optional.of(
          new Change.ItemAdded(one(before.shared(), SharedItem::id, c.piece().item())));
    }
    if (change instanceof Change.RuleAdded c) {
      return Optional.of(new Change.RuleRemoved(c.rule().id()));
    }
    if (change instanceof Change.RuleRemoved c) {
      return Optional.of(new Change.RuleAdded(one(before.rules(), Rule::id, c.rule())));
    }
    if (change instanceof Change.KitAdded c) {
      return Optional.of(new Change.KitGone(c.hiker(), c.item().id()));
    }
    if (change instanceof Change.KitGone c) {
      List<KitItem> kit = hiker(before, c.hiker()).kit();
      return Optional.of(new Change.KitAdded(c.hiker(), one(kit, KitItem::id, c.item())));
    }
    if (change instanceof Change.KitWeighs c) {
      KitItem item = one(hiker(before, c.hiker()).kit(), KitItem::id, c.item());
      return Optional.of(new Change.KitWeighs(c.hiker(), c.item(), item.mass(), item.massFrom()));
    }
    return Optional.empty();
  }

  private static Hiker hiker(Trip trip, String id) {
    return one(trip.hikers(), Hiker::id, id);
  }

  private static <T> T one(List<T> list, Function<T, String> id, String wanted) {
    return list.stream().filter(x -> id.apply(x).equals(wanted)).findFirst().orElseThrow();
  }
}
