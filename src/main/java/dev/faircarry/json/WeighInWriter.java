package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.WeighedIn;
import dev.faircarry.weigh.Reconciled;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.Weighed;

/** Writes weigh-ins. Readings, changes and trip in them are documents that can be sent back. */
public final class WeighInWriter {
  private WeighInWriter() {}

  /** What came of a weigh-in. */
  public static byte[] write(WeighedIn.Told told) {
    return JsonBytes.of(tree(told));
  }

  /** The trip after taking over alone, as a document; of a weigh-in at which that was asked. */
  public static byte[] trip(WeighedIn.Told told) {
    return TripWriter.write(told.accepted().orElseThrow().trip());
  }

  static ObjectNode tree(WeighedIn.Told told) {
    ObjectNode out = TripWriter.object();
    out.put("agrees", told.agrees());
    ObjectNode tolerance = out.putObject("tolerance");
    tolerance.put("grams", Exact.grams(told.tolerance().milligrams()));
    tolerance.put("thousandths", told.tolerance().thousandths());
    ArrayNode lines = out.putArray("weighed");
    told.lines().forEach(line -> line(lines.addObject(), line));
    out.set("changes", ChangeWriter.list(told.changes()));
    told.accepted()
        .ifPresent(
            accepted -> {
              out.set("trip", TripWriter.tree(accepted.trip()));
              RebalanceWriter.notes(out, accepted.notes());
            });
    return out;
  }

  private static void line(ObjectNode out, WeighedIn.Line line) {
    Reconciled reconciled = line.reconciled();
    out.put("subject", reconciled.weighed().text());
    subject(out, reconciled.weighed());
    out.put("name", line.name());
    out.put("result", reconciled.result().text());
    out.put("expectedGrams", Exact.grams(reconciled.expectedMilligrams()));
    out.put("readGrams", Exact.grams(reconciled.readMilligrams()));
    out.put("differenceGrams", Exact.grams(reconciled.differenceMilligrams()));
    out.put("toleranceGrams", Exact.grams(reconciled.toleranceMilligrams()));
    ArrayNode suspects = out.putArray("couldExplain");
    for (Reconciled.Suspect suspect : reconciled.suspects()) {
      ObjectNode one = suspects.addObject();
      one.put("thing", suspect.thing());
      one.put("statedGrams", Exact.grams(suspect.statedMilligrams()));
      one.put("offThousandths", suspect.offThousandths());
    }
    reconciled.question().ifPresent(question -> out.put("question", question));
    out.set("changes", ChangeWriter.list(reconciled.changes()));
    ArrayNode readings = out.putArray("readings");
    reconciled.readings().forEach(reading -> readings.add(reading(reading)));
  }

  private static void subject(ObjectNode out, Weighed weighed) {
    if (weighed instanceof Weighed.WholePack) {
      out.put("kind", "whole-pack");
    } else if (weighed instanceof Weighed.EmptyPack) {
      out.put("kind", "empty-pack");
    } else if (weighed instanceof Weighed.OfKit kit) {
      out.put("kind", "kit");
      out.put("item", kit.item());
    } else {
      out.put("kind", "piece");
      out.put("piece", ((Weighed.Piece) weighed).piece().text());
    }
    weighed.of().ifPresent(hiker -> out.put("hiker", hiker));
  }

  /** A reading as it was sent. */
  static ObjectNode reading(ScaleReading reading) {
    ObjectNode out = TripWriter.object();
    subject(out, reading.weighed());
    out.put("mass", reading.mass().entered());
    if (!reading.at().isEmpty()) {
      out.put("at", reading.at());
    }
    if (!reading.source().isEmpty()) {
      out.put("source", reading.source());
    }
    TripWriter.flag(out, "confirmed", reading.confirmed());
    return out;
  }
}
