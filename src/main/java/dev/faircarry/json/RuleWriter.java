package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Rule;
import java.util.List;

/** Writes a rule. */
final class RuleWriter implements Rule.Cases<ObjectNode> {

  @Override
  public ObjectNode pinned(Rule.Pinned rule) {
    ObjectNode out = ofPieces(rule, "pinned", rule.pieces());
    out.put("hiker", rule.hiker());
    return out;
  }

  @Override
  public ObjectNode only(Rule.Only rule) {
    ObjectNode out = ofPieces(rule, "only", rule.pieces());
    TripWriter.texts(out, "hikers", rule.hikers());
    return out;
  }

  @Override
  public ObjectNode barred(Rule.Barred rule) {
    ObjectNode out = ofPieces(rule, "barred", rule.pieces());
    TripWriter.texts(out, "hikers", rule.hikers());
    return out;
  }

  @Override
  public ObjectNode together(Rule.Together rule) {
    return ofPieces(rule, "together", rule.pieces());
  }

  @Override
  public ObjectNode apart(Rule.Apart rule) {
    return ofPieces(rule, "apart", rule.pieces());
  }

  @Override
  public ObjectNode partyHas(Rule.PartyHas rule) {
    ObjectNode out = of(rule, "party-has");
    out.put("covers", rule.covers());
    TripWriter.texts(out, "parties", rule.parties());
    out.put("atLeast", rule.atLeast());
    return out;
  }

  private static ObjectNode ofPieces(Rule rule, String kind, List<PieceRef> pieces) {
    ObjectNode out = of(rule, kind);
    TripWriter.texts(out, "pieces", pieces.stream().map(PieceRef::text).toList());
    return out;
  }

  private static ObjectNode of(Rule rule, String kind) {
    ObjectNode out = TripWriter.object();
    out.put("id", rule.id());
    out.put("kind", kind);
    return out;
  }
}
