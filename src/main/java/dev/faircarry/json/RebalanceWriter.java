package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.DemandWords;
import dev.faircarry.app.IfOneStaysHome;
import dev.faircarry.app.Rebalanced;
import dev.faircarry.app.Worst;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.CurvePoint;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Handover;
import dev.faircarry.trip.Trip;
import dev.faircarry.trip.change.ChangeNote;
import java.util.List;

/** Writes trade-off curves. Trip and splits in them are documents that can be sent back. */
public final class RebalanceWriter {
  private RebalanceWriter() {}

  /** What came of a change of plans. */
  public static byte[] write(Rebalanced result) {
    return JsonBytes.of(tree(result, true));
  }

  /** What to do without each hiker. */
  public static byte[] write(List<IfOneStaysHome.Case> cases) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    ArrayNode list = out.putArray("dropOuts");
    for (IfOneStaysHome.Case each : cases) {
      list.add(tree(each));
    }
    ResultWriter.cautions(out);
    return JsonBytes.of(out);
  }

  static ObjectNode tree(IfOneStaysHome.Case each) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("hiker", each.hiker());
    out.put("text", each.text());
    out.setAll(tree(each.result(), false));
    return out;
  }

  /**
   * @param whole whether all points are wanted, or the chosen one alone
   */
  static ObjectNode tree(Rebalanced result, boolean whole) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    if (result instanceof Rebalanced.Found found) {
      out.put("result", "curve");
      found(out, found, whole);
    } else if (result instanceof Rebalanced.Impossible impossible) {
      out.put("result", "impossible");
      trip(out, impossible.trip(), impossible.notes(), whole);
      DemandWords words = new DemandWords(impossible.trip());
      ArrayNode conflict = out.putArray("conflict");
      for (Demand demand : impossible.conflict()) {
        ObjectNode one = conflict.addObject();
        one.put("kind", words.kind(demand));
        one.put("id", words.id(demand));
        one.put("words", words.words(demand));
      }
      out.put("irreducible", impossible.irreducible());
      out.put("effortSteps", impossible.effortSteps());
    } else if (result instanceof Rebalanced.Undecided undecided) {
      out.put("result", "undecided");
      trip(out, undecided.trip(), undecided.notes(), whole);
      out.put("effortSteps", undecided.effortSteps());
      out.put("cutByClock", undecided.cutByClock());
    } else {
      out.put("result", "unfit");
    }
    return out;
  }

  private static void trip(ObjectNode out, Trip trip, List<ChangeNote> notes, boolean whole) {
    if (whole) {
      out.set("trip", TripWriter.tree(trip));
    }
    notes(out, notes);
  }

  /** What changes brought with them. */
  static void notes(ObjectNode out, List<ChangeNote> notes) {
    ArrayNode list = out.putArray("notes");
    for (ChangeNote note : notes) {
      ObjectNode one = list.addObject();
      one.put("change", note.change());
      one.put("kind", note.kind().text());
      one.put("message", note.message());
    }
  }

  private static void found(ObjectNode out, Rebalanced.Found found, boolean whole) {
    trip(out, found.trip(), found.notes(), whole);
    out.put("reason", found.reason());
    if (whole) {
      out.put("recommended", found.curve().recommended());
      out.put("chosen", found.chosen());
    }
    out.put("complete", found.curve().complete());
    out.put("effortSteps", found.effortSteps());
    out.put("cutByClock", found.cutByClock());
    ArrayNode points = out.putArray("points");
    for (int p = 0; p < found.curve().points().size(); p++) {
      if (whole || p == found.chosen()) {
        point(points.addObject(), found, p);
      }
    }
    if (whole) {
      ResultWriter.cautions(out);
    }
  }

  private static void point(ObjectNode out, Rebalanced.Found found, int p) {
    CurvePoint point = found.curve().points().get(p);
    Verdict verdict = found.verdicts().get(p);
    out.put("handovers", point.handovers());
    out.put("people", point.people());
    out.put("movedGrams", Exact.grams(point.movedMilligrams()));
    Worst.of(found.trip(), verdict)
        .ifPresent(
            worst -> {
              ObjectNode one = out.putObject("worst");
              one.put("hiker", worst.hiker());
              one.put("day", worst.day());
              one.put(
                  "targetRatio", Exact.ratio(worst.countedMilligrams(), worst.targetNanograms()));
              one.put("steps", worst.steps());
            });
    out.put("excessThousandths", point.excessThousandths());
    ArrayNode list = out.putArray("list");
    for (int h = 0; h < point.list().size(); h++) {
      Handover handover = point.list().get(h);
      ObjectNode one = list.addObject();
      one.put("from", handover.from());
      one.put("to", handover.to());
      one.put("piece", handover.piece().text());
      one.put("units", handover.units());
      one.put("words", found.sentences().get(p).get(h));
    }
    ResultWriter.proof(out.putObject("proof"), point.proof(), found.trip());
    out.set("split", SplitWriter.tree(point.split()));
  }
}
