package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.Cautions;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.TripNames;
import dev.faircarry.app.card.Absence;
import dev.faircarry.app.card.Card;
import dev.faircarry.check.Finding;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Handover;
import dev.faircarry.split.Opened;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;

/**
 * Writes cards as somebody sees them. Of a hiker whose body mass is hidden there stay loads in
 * grams and whether each is within target, as with stored splits.
 */
public final class CardWriter {
  private final Trip trip;
  private final Verdict verdict;
  private final Sight sight;
  private final TripNames names;

  /**
   * @param judged the split with the trip it was made for
   */
  public CardWriter(JudgedSplit judged, Sight sight) {
    this.trip = judged.trip();
    this.verdict = judged.verdict();
    this.sight = sight;
    this.names = new TripNames(trip);
  }

  /** One card. */
  public byte[] card(StoredTrip newest, StoredSplit split, Card card) {
    ObjectNode out = about(newest, split);
    out.setAll(tree(card));
    return JsonBytes.of(out);
  }

  /** The cards of the whole group. */
  public byte[] cards(StoredTrip newest, StoredSplit split, List<Card> cards) {
    ObjectNode out = about(newest, split);
    ArrayNode list = out.putArray("cards");
    cards.forEach(card -> list.add(tree(card)));
    return JsonBytes.of(out);
  }

  /** What to do without each hiker. */
  public byte[] absences(StoredSplit split, List<Absence> absences) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("split", split.id());
    ArrayNode list = out.putArray("absences");
    for (Absence absence : absences) {
      ObjectNode one = list.addObject();
      hiker(one, "hiker", absence.hiker());
      one.put("outcome", Words.text(absence.outcome()));
      ArrayNode handovers = one.putArray("handovers");
      for (Handover handover : absence.handovers()) {
        ObjectNode each = handovers.addObject();
        piece(each, handover.piece(), handover.units());
        hiker(each, "from", handover.from());
        hiker(each, "to", handover.to());
      }
    }
    return JsonBytes.of(out);
  }

  private ObjectNode about(StoredTrip newest, StoredSplit split) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("tripName", trip.name());
    out.put("days", trip.days());
    out.set("kept", KeptWriter.about(newest, split));
    ArrayNode cautions = out.putArray("cautions");
    Cautions.TEXT.forEach(cautions::add);
    return out;
  }

  private ObjectNode tree(Card card) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    hiker(out, "hiker", card.hiker().id());
    ArrayNode things = out.putArray("things");
    card.things().forEach(thing -> thing(things.addObject(), thing));
    ArrayNode gives = out.putArray("gives");
    for (Card.Gives each : card.gives()) {
      ObjectNode one = gives.addObject();
      piece(one, each.piece(), each.units());
      hiker(one, "to", each.to());
      one.put("why", Words.text(each.why()));
    }
    ArrayNode atCamp = out.putArray("atCamp");
    for (CampHandover each : card.atCamp()) {
      ObjectNode one = atCamp.addObject();
      one.put("afterDay", each.afterDay());
      piece(one, each.piece(), each.units());
      hiker(one, "from", each.from());
      hiker(one, "to", each.to());
    }
    ArrayNode openings = out.putArray("openings");
    for (Opened each : card.openings()) {
      ObjectNode one = openings.addObject();
      one.put("day", each.day());
      piece(one, PieceRef.item(each.item()), each.units());
      hiker(one, "hiker", each.hiker());
    }
    ArrayNode kit = out.putArray("kit");
    card.hiker().kit().forEach(item -> kit(kit.addObject(), item));
    loads(out, card);
    return out;
  }

  private void thing(ObjectNode out, Card.Thing thing) {
    piece(out, thing.piece(), thing.units());
    out.put("grams", Exact.grams(thing.milligrams()));
    out.put("stow", Words.text(thing.stow()));
    thing.owner().ifPresent(owner -> hiker(out, "owner", owner));
    ArrayNode onDays = out.putArray("onDays");
    thing.days().forEach(onDays::add);
    ArrayNode into = out.putArray("into");
    thing.into().forEach(into::add);
    ArrayNode from = out.putArray("from");
    for (Card.From each : thing.from()) {
      ObjectNode one = from.addObject();
      hiker(one, "hiker", each.hiker());
      one.put("units", each.units());
      one.put("why", Words.text(each.why()));
    }
  }

  private static void kit(ObjectNode out, KitItem item) {
    out.put("id", item.id());
    out.put("name", item.name());
    out.put("grams", Exact.grams(item.mass().milligrams()));
    out.put("stow", Words.text(item.stow()));
    out.put("worn", item.worn());
  }

  /** Fields of loads that stay are listed where stored splits list them. */
  private void loads(ObjectNode out, Card card) {
    boolean hidden = sight.hides(card.hiker().id());
    ObjectNode loads = JsonNodeFactory.instance.objectNode();
    new LoadsWriter(trip, verdict).hiker(loads, card.loads());
    if (hidden) {
      SeenSplit.hide(loads, card.loads());
    } else {
      out.set("targetGrams", loads.get("targetGrams"));
    }
    out.set("mornings", loads.get("mornings"));
    out.put("ratiosHidden", hidden);
    ArrayNode findings = out.putArray("findings");
    for (Finding finding : card.findings()) {
      if (finding.hikers().stream().noneMatch(sight::hides)) {
        ObjectNode one = findings.addObject();
        one.put("code", finding.code().text());
        one.put("severity", Words.text(finding.severity()));
        one.put("message", finding.message());
        one.put("remedy", finding.remedy());
      }
    }
  }

  private void piece(ObjectNode out, PieceRef piece, int units) {
    out.put("piece", piece.text());
    out.put("name", names.piece(piece));
    out.put("units", units);
  }

  private void hiker(ObjectNode out, String field, String id) {
    ObjectNode one = out.putObject(field);
    one.put("id", id);
    one.put("name", names.hiker(id));
  }
}
