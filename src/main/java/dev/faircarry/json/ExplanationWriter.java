package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.AdviceWords;
import dev.faircarry.app.DemandWords;
import dev.faircarry.app.ExplainTrip;
import dev.faircarry.split.Advice;
import dev.faircarry.split.Binding;
import dev.faircarry.trip.Trip;

/** Writes why a split is no fairer, and what would help. */
public final class ExplanationWriter {
  private ExplanationWriter() {}

  /** The split with the explanation beside it; a result without a split explains itself. */
  public static byte[] write(ExplainTrip.Explained explained) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.set("outcome", ResultWriter.tree(explained.result()));
    explained
        .advice()
        .ifPresent(
            advice -> {
              Trip trip = explained.result().trip();
              binding(out.putObject("binding"), trip, advice.binding());
              ArrayNode lifted = out.putArray("lifted");
              advice.lifted().forEach(each -> lifted(lifted.addObject(), trip, each));
              out.put("effortSteps", advice.effortSteps());
            });
    return JsonBytes.of(out);
  }

  private static void binding(ObjectNode out, Trip trip, Binding binding) {
    AdviceWords words = new AdviceWords(trip);
    out.put("kind", AdviceWords.kind(binding));
    out.put("words", words.words(binding));
    if (binding instanceof Binding.OwnKit kit) {
      out.put("hiker", kit.hiker());
      out.put("day", kit.day());
      out.put("steps", kit.steps());
    } else if (binding instanceof Binding.SheerTotal total) {
      out.put("day", total.day());
      out.put("totalGrams", Exact.grams(total.totalMilligrams()));
      out.put("roomGrams", Exact.grams(total.roomMilligrams()));
    } else if (binding instanceof Binding.LargePiece piece) {
      ArrayNode pieces = out.putArray("pieces");
      piece.pieces().forEach(each -> pieces.add(each.text()));
      out.put("day", piece.day());
      out.put("steps", piece.steps());
    } else if (binding instanceof Binding.OneDemand one) {
      ResultWriter.demand(out.putObject("demand"), new DemandWords(trip), one.demand());
      out.put("steps", one.worstSteps());
    }
  }

  private static void lifted(ObjectNode out, Trip trip, Advice.Lifted lifted) {
    lifted.piece().ifPresent(piece -> out.put("piece", piece.text()));
    lifted
        .demand()
        .ifPresent(
            demand -> ResultWriter.demand(out.putObject("demand"), new DemandWords(trip), demand));
    out.put("worstSteps", lifted.worstSteps());
    out.put("proved", lifted.proved());
    out.put("words", new AdviceWords(trip).words(lifted));
  }
}
