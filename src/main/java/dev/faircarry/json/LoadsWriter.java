package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.OverCap;
import dev.faircarry.app.TripNames;
import dev.faircarry.app.Worst;
import dev.faircarry.check.Finding;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Morning;
import dev.faircarry.check.Verdict;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Locale;

/** Writes what a check recomputed: loads by morning, the worst of them, caps passed, findings. */
final class LoadsWriter {
  private final Trip trip;
  private final Verdict verdict;
  private final TripNames names;

  LoadsWriter(Trip trip, Verdict verdict) {
    this.trip = trip;
    this.verdict = verdict;
    this.names = new TripNames(trip);
  }

  /** Target and mornings of one hiker. */
  void hiker(ObjectNode out, HikerLoads loads) {
    out.put("name", names.hiker(loads.hiker()));
    out.put("targetGrams", Exact.gramsOfNanograms(loads.targetNanograms()));
    ArrayNode mornings = out.putArray("mornings");
    loads.mornings().forEach(morning -> morning(mornings.addObject(), loads, morning));
  }

  private void morning(ObjectNode out, HikerLoads loads, Morning m) {
    out.put("day", m.day());
    out.put("loadGrams", Exact.grams(m.loadMilligrams()));
    loads
        .bodyMassMilligrams()
        .ifPresent(body -> out.put("relativeLoad", Exact.relative(m.loadMilligrams(), body)));
    out.put("countedGrams", Exact.grams(m.countedMilligrams()));
    out.put("targetRatio", Exact.ratio(m.countedMilligrams(), loads.targetNanograms()));
    out.put("steps", m.steps());
    out.put("baseGrams", Exact.grams(m.baseMilligrams()));
    out.put("consumablesGrams", Exact.grams(m.consumablesMilligrams()));
    out.put("totalPackGrams", Exact.grams(m.baseMilligrams() + m.consumablesMilligrams()));
    out.put("wornGrams", Exact.grams(m.wornMilligrams()));
    out.put("sharedGrams", Exact.grams(m.sharedMilligrams()));
    m.capNanograms().ifPresent(cap -> out.put("capGrams", Exact.gramsOfNanograms(cap)));
    out.put("excessThousandths", m.excessThousandths());
  }

  /** The heaviest hiker-morning, and what passes the caps. */
  void summary(ObjectNode out) {
    Worst.of(trip, verdict)
        .ifPresent(
            worst -> {
              ObjectNode one = out.putObject("worst");
              one.put("hiker", worst.hiker());
              one.put("name", worst.name());
              one.put("day", worst.day());
              one.put(
                  "targetRatio", Exact.ratio(worst.countedMilligrams(), worst.targetNanograms()));
              one.put("steps", worst.steps());
            });
    out.put("excessThousandths", verdict.excessThousandths());
    out.put("ownExcessThousandths", verdict.ownExcessThousandths());
    ArrayNode over = out.putArray("overCap");
    for (OverCap each : OverCap.of(trip, verdict)) {
      ObjectNode one = over.addObject();
      one.put("hiker", each.hiker());
      one.put("name", each.name());
      one.put("day", each.day());
      one.put("loadGrams", Exact.grams(each.loadMilligrams()));
      one.put("capGrams", Exact.gramsOfNanograms(each.capNanograms()));
      one.put("overGrams", Exact.gramsOfNanograms(each.overNanograms()));
      one.put("excessThousandths", each.excessThousandths());
      one.put("ownKitOverGrams", Exact.gramsOfNanograms(each.ownKitOverNanograms()));
    }
  }

  /** Everything found, gravest first. */
  void findings(ObjectNode out) {
    findings(out, verdict.findings());
  }

  /** These findings, in their order. */
  void findings(ObjectNode out, List<Finding> findings) {
    ArrayNode list = out.putArray("findings");
    for (Finding finding : findings) {
      ObjectNode one = list.addObject();
      one.put("code", finding.code().text());
      one.put("severity", finding.severity().name().toLowerCase(Locale.ROOT));
      ArrayNode hikers = one.putArray("hikers");
      finding.hikers().forEach(hikers::add);
      ArrayNode pieces = one.putArray("pieces");
      finding.pieces().stream().map(PieceRef::text).forEach(pieces::add);
      ArrayNode rules = one.putArray("rules");
      finding.rules().forEach(rules::add);
      ArrayNode days = one.putArray("days");
      finding.days().forEach(days::add);
      one.put("message", finding.message());
      one.put("remedy", finding.remedy());
    }
  }
}
