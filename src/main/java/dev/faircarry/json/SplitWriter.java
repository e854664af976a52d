package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.PieceRef;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes a split as a document; reading it gives a split with the same entries, by hiker. */
public final class SplitWriter {
  private SplitWriter() {}

  /** The document, without anything computed. */
  public static byte[] write(Split split) {
    return JsonBytes.of(tree(split));
  }

  static ObjectNode tree(Split split) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("format", SplitReader.FORMAT);
    ArrayNode carries = out.putArray("carries");
    Map<String, ArrayNode> byHiker = new LinkedHashMap<>();
    for (Carry carry : split.carries()) {
      byHiker
          .computeIfAbsent(
              carry.hiker(),
              hiker -> {
                ObjectNode one = carries.addObject();
                one.put("hiker", hiker);
                return one.putArray("pieces");
              })
          .add(piece(carry.piece(), carry.units()));
    }
    ArrayNode opened = out.putArray("opened");
    split.opened().forEach(o -> opened.add(opened(o)));
    ArrayNode handovers = out.putArray("handoversAtCamp");
    split.handoversAtCamp().forEach(h -> handovers.add(handover(h)));
    return out;
  }

  /** A piece by its name; more than one unit as an object with the number. */
  static JsonNode piece(PieceRef piece, int units) {
    if (units == 1) {
      return JsonNodeFactory.instance.textNode(piece.text());
    }
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("piece", piece.text());
    out.put("units", units);
    return out;
  }

  static ObjectNode opened(Opened opened) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("day", opened.day());
    out.put("piece", opened.item());
    out.put("hiker", opened.hiker());
    out.put("units", opened.units());
    return out;
  }

  static ObjectNode handover(CampHandover handover) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("afterDay", handover.afterDay());
    out.put("from", handover.from());
    out.put("to", handover.to());
    out.put("piece", handover.piece().text());
    if (handover.units() != 1) {
      out.put("units", handover.units());
    }
    return out;
  }
}
