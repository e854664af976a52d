package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.trip.Contains;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.MassFrom;
import dev.faircarry.trip.Pack;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.Rule;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Stow;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.Use;
import dev.faircarry.unit.Cost;
import dev.faircarry.unit.Fraction;
import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Volume;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Writes a trip as a document. Quantities stand as they were entered. Ids, names and the policy are
 * always written; other fields are left out where they equal what is assumed without them. Reading
 * the document gives an equal trip.
 */
public final class TripWriter {
  private TripWriter() {}

  /** The document, body masses included: not for every eye. */
  public static byte[] write(Trip trip) {
    return JsonBytes.of(tree(trip));
  }

  static ObjectNode tree(Trip trip) {
    ObjectNode out = object();
    out.put("format", TripReader.FORMAT);
    out.put("name", trip.name());
    out.put("days", trip.days());
    out.set("policy", policy(trip.policy()));
    ArrayNode hikers = out.putArray("hikers");
    trip.hikers().forEach(hiker -> hikers.add(hiker(hiker)));
    ArrayNode shared = out.putArray("shared");
    trip.shared().forEach(item -> shared.add(shared(item)));
    ArrayNode rules = out.putArray("rules");
    for (Rule rule : trip.rules()) {
      rules.add(rule.match(new RuleWriter()));
    }
    trip.plan().ifPresent(plan -> out.set("plan", PlanWriter.plan(plan)));
    return out;
  }

  private static ObjectNode policy(Policy policy) {
    ObjectNode out = object();
    out.put("targetFraction", policy.targetFraction().entered());
    out.put("capFraction", policy.capFraction().entered());
    out.put("basis", Words.text(policy.basis()));
    out.put("grain", policy.grainThousandths());
    out.put("minorsMayCarryFlameAndFuel", policy.minorsMayCarryFlameAndFuel());
    return out;
  }

  static ObjectNode hiker(Hiker hiker) {
    ObjectNode out = named(hiker.id(), hiker.name());
    mass(out, "bodyMass", hiker.bodyMass());
    mass(out, "targetLoad", hiker.targetLoad());
    fraction(out, "targetFraction", hiker.targetFraction());
    fraction(out, "capFraction", hiker.capFraction());
    mass(out, "capLoad", hiker.capLoad());
    number(out, "maxPieces", hiker.maxPieces());
    hiker.party().ifPresent(party -> out.put("party", party));
    flag(out, "minor", hiker.minor());
    number(out, "leavesAfterDay", hiker.leavesAfterDay());
    hiker.pack().ifPresent(pack -> out.set("pack", pack(pack)));
    if (!hiker.kit().isEmpty()) {
      ArrayNode kit = out.putArray("kit");
      hiker.kit().forEach(item -> kit.add(kitItem(item)));
    }
    return out;
  }

  private static ObjectNode pack(Pack pack) {
    ObjectNode out = object();
    out.put("mass", pack.mass().entered());
    massFrom(out, pack.massFrom());
    volume(out, "volume", pack.volume());
    mass(out, "loadRating", pack.loadRating());
    cost(out, pack.cost());
    mass(out, "labelMass", pack.labelMass());
    return out;
  }

  static ObjectNode kitItem(KitItem item) {
    ObjectNode out = named(item.id(), item.name());
    out.put("mass", item.mass().entered());
    massFrom(out, item.massFrom());
    volume(out, "volume", item.volume());
    cost(out, item.cost());
    stow(out, item.stow());
    flag(out, "worn", item.worn());
    flag(out, "luxury", item.luxury());
    texts(out, "covers", item.covers());
    item.use().ifPresent(use -> out.set("use", evenly(use)));
    contains(out, item.contains());
    item.purpose().ifPresent(purpose -> out.put("purpose", purpose));
    mass(out, "labelMass", item.labelMass());
    return out;
  }

  static ObjectNode shared(SharedItem item) {
    ObjectNode out = named(item.id(), item.name());
    item.owner().ifPresent(owner -> out.put("owner", owner));
    texts(out, "covers", item.covers());
    number(out, "sleeps", item.sleeps());
    cost(out, item.cost());
    item.goesInto().ifPresent(kind -> out.put("goesInto", kind));
    if (!item.onDays().isEmpty()) {
      ArrayNode days = out.putArray("onDays");
      item.onDays().forEach(days::add);
    }
    item.purpose().ifPresent(purpose -> out.put("purpose", purpose));
    return item.form().match(new FormWriter(out));
  }

  static ObjectNode evenly(Use.Evenly use) {
    ObjectNode out = object();
    out.put("kind", "evenly");
    leaves(out, use.leaves());
    return out;
  }

  static void leaves(ObjectNode out, Mass leaves) {
    if (!leaves.equals(Quantities.NO_MASS)) {
      out.put("leaves", leaves.entered());
    }
  }

  static void contains(ObjectNode out, Optional<Contains> contains) {
    if (contains.isPresent()) {
      ObjectNode inner = out.putObject("contains");
      inner.put("kind", contains.get().kind());
      inner.put("volume", contains.get().volume().entered());
    }
  }

  static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  static ObjectNode named(String id, String name) {
    ObjectNode out = object();
    out.put("id", id);
    out.put("name", name);
    return out;
  }

  static void massFrom(ObjectNode out, MassFrom massFrom) {
    if (massFrom != MassFrom.LABEL) {
      out.put("massFrom", Words.text(massFrom));
    }
  }

  static void stow(ObjectNode out, Stow stow) {
    if (stow != Stow.INSIDE) {
      out.put("stow", Words.text(stow));
    }
  }

  static void volume(ObjectNode out, String field, Optional<Volume> volume) {
    volume.ifPresent(v -> out.put(field, v.entered()));
  }

  static void texts(ObjectNode out, String field, List<String> texts) {
    if (!texts.isEmpty()) {
      ArrayNode list = out.putArray(field);
      texts.forEach(list::add);
    }
  }

  static void mass(ObjectNode out, String field, Optional<Mass> mass) {
    mass.ifPresent(m -> out.put(field, m.entered()));
  }

  private static void cost(ObjectNode out, Optional<Cost> cost) {
    cost.ifPresent(c -> out.put("cost", c.entered()));
  }

  static void fraction(ObjectNode out, String field, Optional<Fraction> fraction) {
    fraction.ifPresent(f -> out.put(field, f.entered()));
  }

  static void number(ObjectNode out, String field, OptionalInt number) {
    number.ifPresent(n -> out.put(field, n));
  }

  static void flag(ObjectNode out, String field, boolean flag) {
    if (flag) {
      out.put(field, true);
    }
  }
}
