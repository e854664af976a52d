package dev.faircarry.trip.change;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import java.util.Optional;
import java.util.OptionalInt;

/** One change of plans. Each kind has one answer in {@link Cases}. */
public sealed interface Change {

  /** A hiker does not come. Own kit stays at home; shared pieces stay with the group. */
  record DropsOut(String hiker) implements Change {}

  /** Somebody comes along. */
  record Joins(Hiker hiker) implements Change {}

  /**
   * What a hiker weighs, or can or may carry, is different now; what is empty stays as it was.
   *
   * @param bodyMass private, like {@code targetLoad}
   */
  record CanCarry(
      String hiker,
      Optional<Mass> bodyMass,
      Optional<Mass> targetLoad,
      Optional<Fraction> targetFraction,
      Optional<Fraction> capFraction,
      Optional<Mass> capLoad,
      OptionalInt maxPieces)
      implements Change {

    /** Never the masses: records end up in messages. */
    @Override
    public String toString() {
      return "CanCarry[" + hiker + "]";
    }
  }

  /** A hiker leaves the trip early, after the walk of a day. */
  record LeavesAfter(String hiker, int day) implements Change {}

  /** The group takes something more. */
  record ItemAdded(SharedItem item) implements Change {}

  /**
   * Something is lost, broken or stays at home.
   *
   * @param piece a whole item, a part, or a counted item
   * @param units of a counted item: so many units; empty for all of them
   */
  record ItemGone(PieceRef piece, OptionalInt units) implements Change {}

  /** Something else is taken in place of an item; rules that name the old one name the new. */
  record ItemReplaced(String item, SharedItem by) implements Change {}

  /** A piece, or each unit of a counted item, weighs something else than thought. */
  record ItemWeighs(PieceRef piece, Mass mass, MassFrom massFrom) implements Change {}

  /** A hiker brings something more of their own. */
  record KitAdded(String hiker, KitItem item) implements Change {}

  /** A thing of a hiker's own is lost, broken or stays at home. */
  record KitGone(String hiker, String item) implements Change {}

  /** A thing of a hiker's own weighs something else than thought. */
  record KitWeighs(String hiker, String item, Mass mass, MassFrom massFrom) implements Change {}

  /** A hiker's empty pack weighs something else than thought. */
  record PackWeighs(String hiker, Mass mass, MassFrom massFrom) implements Change {}

  /** The group agrees on one more rule. */
  record RuleAdded(Rule rule) implements Change {}

  /** A rule no longer holds. */
  record RuleRemoved(String rule) implements Change {}

  /** The trip has more days; what is used by the day is used on them as on the last day so far. */
  record DaysAdded(int days) implements Change {}

  /** One answer for each kind of change. */
  interface Cases<R> {
    R dropsOut(DropsOut change);

    R joins(Joins change);

    R canCarry(CanCarry change);

    R leavesAfter(LeavesAfter change);

    R itemAdded(ItemAdded change);

    R itemGone(ItemGone change);

    R itemReplaced(ItemReplaced change);

    R itemWeighs(ItemWeighs change);

    R kitAdded(KitAdded change);

    R kitGone(KitGone change);

    R kitWeighs(KitWeighs change);

    R packWeighs(PackWeighs change);

    R ruleAdded(RuleAdded change);

    R ruleRemoved(RuleRemoved change);

    R daysAdded(DaysAdded change);
  }

  /** Asks {@code cases} for the answer that goes with this change. */
  default <R> R match(Cases<R> cases) {
    if (this instanceof DropsOut change) {
      return cases.dropsOut(change);
    }
    if (this instanceof Joins change) {
      return cases.joins(change);
    }
    if (this instanceof CanCarry change) {
      return cases.canCarry(change);
    }
    if (this instanceof LeavesAfter change) {
      return cases.leavesAfter(change);
    }
    if (this instanceof ItemAdded change) {
      return cases.itemAdded(change);
    }
    if (this instanceof ItemGone change) {
      return cases.itemGone(change);
    }
    if (this instanceof ItemReplaced change) {
      return cases.itemReplaced(change);
    }
    if (this instanceof ItemWeighs change) {
      return cases.itemWeighs(change);
    }
    if (this instanceof KitAdded change) {
      return cases.kitAdded(change);
    }
    if (this instanceof KitGone change) {
      return cases.kitGone(change);
    }
    if (this instanceof KitWeighs change) {
      return cases.kitWeighs(change);
    }
    if (this instanceof PackWeighs change) {
      return cases.packWeighs(change);
    }
    if (this instanceof RuleAdded change) {
      return cases.ruleAdded(change);
    }
    if (this instanceof RuleRemoved change) {
      return cases.ruleRemoved(change);
    }
    return cases.daysAdded((DaysAdded) this);
  }
}
