package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.change.Change;
import dev.faircarry.unit.Mass;
import java.util.List;

/** Writes changes of plans; {@link ChangeReader} reads them as they stand. */
final class ChangeWriter implements Change.Cases<ObjectNode> {

  static ArrayNode list(List<Change> changes) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    changes.forEach(change -> list.add(change.match(new ChangeWriter())));
    return list;
  }

  @Override
  public ObjectNode dropsOut(Change.DropsOut change) {
    return ofHiker("drops-out", change.hiker());
  }

  @Override
  public ObjectNode joins(Change.Joins change) {
    ObjectNode out = of("joins");
    out.set("hiker", TripWriter.hiker(change.hiker()));
    return out;
  }

  @Override
  public ObjectNode canCarry(Change.CanCarry change) {
    ObjectNode out = ofHiker("can-carry", change.hiker());
    TripWriter.mass(out, "bodyMass", change.bodyMass());
    TripWriter.mass(out, "targetLoad", change.targetLoad());
    TripWriter.fraction(out, "targetFraction", change.targetFraction());
    TripWriter.fraction(out, "capFraction", change.capFraction());
    TripWriter.mass(out, "capLoad", change.capLoad());
    TripWriter.number(out, "maxPieces", change.maxPieces());
    return out;
  }

  @Override
  public ObjectNode leavesAfter(Change.LeavesAfter change) {
    return ofHiker("leaves-after", change.hiker()).put("day", change.day());
  }

  @Override
  public ObjectNode itemAdded(Change.ItemAdded change) {
    ObjectNode out = of("item-added");
    out.set("item", TripWriter.shared(change.item()));
    return out;
  }

  @Override
  public ObjectNode itemGone(Change.ItemGone change) {
    ObjectNode out = of("item-gone").put("piece", change.piece().text());
    TripWriter.number(out, "units", change.units());
    return out;
  }

  @Override
  public ObjectNode itemReplaced(Change.ItemReplaced change) {
    ObjectNode out = of("item-replaced").put("item", change.item());
    out.set("by", TripWriter.shared(change.by()));
    return out;
  }

  @Override
  public ObjectNode itemWeighs(Change.ItemWeighs change) {
    ObjectNode out = of("item-weighs").put("piece", change.piece().text());
    return weighing(out, change.mass(), change.massFrom());
  }

  @Override
  public ObjectNode kitAdded(Change.KitAdded change) {
    ObjectNode out = ofHiker("kit-added", change.hiker());
    out.set("item", TripWriter.kitItem(change.item()));
    return out;
  }

  @Override
  public ObjectNode kitGone(Change.KitGone change) {
    return ofHiker("kit-gone", change.hiker()).put("item", change.item());
  }

  @Override
  public ObjectNode kitWeighs(Change.KitWeighs change) {
    ObjectNode out = ofHiker("kit-weighs", change.hiker()).put("item", change.item());
    return weighing(out, change.mass(), change.massFrom());
  }

  @Override
  public ObjectNode packWeighs(Change.PackWeighs change) {
    return weighing(ofHiker("pack-weighs", change.hiker()), change.mass(), change.massFrom());
  }

  @Override
  public ObjectNode ruleAdded(Change.RuleAdded change) {
    ObjectNode out = of("rule-added");
    out.set("rule", change.rule().match(new RuleWriter()));
    return out;
  }

  @Override
  public ObjectNode ruleRemoved(Change.RuleRemoved change) {
    return of("rule-removed").put("rule", change.rule());
  }

  @Override
  public ObjectNode daysAdded(Change.DaysAdded change) {
    return of("days-added").put("days", change.days());
  }

  private static ObjectNode weighing(ObjectNode out, Mass mass, MassFrom from) {
    out.put("mass", mass.entered());
    TripWriter.massFrom(out, from);
    return out;
  }

  private static ObjectNode ofHiker(String kind, String hiker) {
    return of(kind).put("hiker", hiker);
  }

  private static ObjectNode of(String kind) {
    return TripWriter.object().put("kind", kind);
  }
}
