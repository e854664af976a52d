package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.Cautions;
import dev.faircarry.app.DemandWords;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.SplitResult;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Demand;
import dev.faircarry.split.Proof;
import dev.faircarry.trip.Trip;
import java.math.BigDecimal;
import java.util.List;

/**
 * Writes the answers about splits. An answer with a split is a split document with computed fields
 * beside it ({@link SplitFields}); it is accepted unchanged when sent back.
 */
public final class ResultWriter {
  private ResultWriter() {}

  /** What came of asking for a split. */
  public static byte[] write(SplitResult result) {
    return JsonBytes.of(tree(result));
  }

  static ObjectNode tree(SplitResult result) {
    if (result instanceof SplitResult.Found found) {
      return found(found);
    }
    if (result instanceof SplitResult.Impossible impossible) {
      return impossible(impossible);
    }
    return undecided((SplitResult.Undecided) result);
  }

  /** What the check says of a split somebody made. */
  public static byte[] write(JudgedSplit judged) {
    ObjectNode out = tree(judged);
    cautions(out);
    return JsonBytes.of(out);
  }

  static ObjectNode tree(JudgedSplit judged) {
    Verdict verdict = judged.verdict();
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("keepsRules", verdict.keepsRules());
    LoadsWriter loads = new LoadsWriter(judged.trip(), verdict);
    loads.summary(out);
    loads.findings(out);
    ArrayNode hikers = out.putArray("hikers");
    for (HikerLoads each : verdict.hikers()) {
      ObjectNode one = hikers.addObject();
      one.put("hiker", each.hiker());
      loads.hiker(one, each);
    }
    ArrayNode steps = out.putArray("steps");
    verdict.steps().forEach(steps::add);
    ArrayNode opened = out.putArray("opened");
    judged.split().opened().forEach(o -> opened.add(SplitWriter.opened(o)));
    return out;
  }

  private static ObjectNode found(SplitResult.Found found) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("format", SplitReader.FORMAT);
    out.put("result", "split");
    LoadsWriter loads = new LoadsWriter(found.trip(), found.verdict());
    loads.summary(out);
    proof(out.putObject("proof"), found.proof(), found.trip());
    ArrayNode carries = out.putArray("carries");
    for (HikerLoads each : found.verdict().hikers()) {
      ObjectNode one = carries.addObject();
      one.put("hiker", each.hiker());
      pieces(one.putArray("pieces"), found.split().carries(), each.hiker());
      loads.hiker(one, each);
    }
    ArrayNode opened = out.putArray("opened");
    found.split().opened().forEach(o -> opened.add(SplitWriter.opened(o)));
    ArrayNode handovers = out.putArray("handoversAtCamp");
    found.split().handoversAtCamp().forEach(h -> handovers.add(SplitWriter.handover(h)));
    loads.findings(out);
    cautions(out);
    return out;
  }

  private static void pieces(ArrayNode out, List<Carry> carries, String hiker) {
    for (Carry carry : carries) {
      if (carry.hiker().equals(hiker)) {
        out.add(SplitWriter.piece(carry.piece(), carry.units()));
      }
    }
  }

  static void proof(ObjectNode out, Proof proof, Trip trip) {
    out.put("proved", proof.proved());
    out.put("levels", proof.levels());
    out.put("provedLevels", proof.provedLevels());
    out.put("provedByBound", proof.provedByBound());
    proof
        .boundSteps()
        .ifPresent(
            bound -> {
              out.put("boundSteps", bound);
              long below = Math.max(0, bound - 1) * trip.policy().grainThousandths();
              out.put("boundRatio", BigDecimal.valueOf(below, 3));
            });
    out.put("excessProved", proof.excessProved());
    out.put("effortSteps", proof.effortSteps());
    out.put("cutByClock", proof.cutByClock());
  }

  private static ObjectNode impossible(SplitResult.Impossible impossible) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("result", "impossible");
    DemandWords words = new DemandWords(impossible.trip());
    ArrayNode conflict = out.putArray("conflict");
    impossible.conflict().forEach(demand -> demand(conflict.addObject(), words, demand));
    out.put("irreducible", impossible.irreducible());
    out.put("effortSteps", impossible.effortSteps());
    return out;
  }

  /** A demand by kind, id and in words. */
  static void demand(ObjectNode out, DemandWords words, Demand demand) {
    out.put("kind", words.kind(demand));
    out.put("id", words.id(demand));
    out.put("words", words.words(demand));
  }

  private static ObjectNode undecided(SplitResult.Undecided undecided) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("result", "undecided");
    out.put("effortSteps", undecided.effortSteps());
    out.put("cutByClock", undecided.cutByClock());
    return out;
  }

  static void cautions(ObjectNode out) {
    ArrayNode list = out.putArray("cautions");
    Cautions.TEXT.forEach(list::add);
  }
}
