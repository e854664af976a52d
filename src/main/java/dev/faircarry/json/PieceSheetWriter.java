package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.TripNames;
import dev.faircarry.check.PieceSheet;
import dev.faircarry.trip.Trip;

/** Writes what there is to hand out. */
public final class PieceSheetWriter {
  private PieceSheetWriter() {}

  /** All pieces of a trip without issues; there is nothing of anybody's body in it. */
  public static byte[] write(Trip trip) {
    TripNames names = new TripNames(trip);
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    ArrayNode pieces = out.putArray("pieces");
    for (PieceSheet.Line line : PieceSheet.of(trip).lines()) {
      ObjectNode one = pieces.addObject();
      one.put("piece", line.piece().text());
      one.put("name", names.piece(line.piece()));
      one.put("units", line.units());
      ArrayNode grams = one.putArray("unitGrams");
      line.unitMilligrams().forEach(mass -> grams.add(Exact.grams(mass)));
      if (!line.usedOn().isEmpty()) {
        ArrayNode used = one.putArray("usedOn");
        line.usedOn().forEach(used::add);
        one.put("leavesGrams", Exact.grams(line.leavesMilligrams()));
      }
    }
    return JsonBytes.of(out);
  }
}
