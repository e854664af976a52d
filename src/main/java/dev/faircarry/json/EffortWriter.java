package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.effort.DayEffort;
import dev.faircarry.kit.EffortReport;

/** Writes what walking the route costs. */
public final class EffortWriter {
  private EffortWriter() {}

  /** The answer. */
  public static byte[] write(EffortReport report) {
    ObjectNode out = TripWriter.object();
    ObjectNode rule = out.putObject("walkingTime");
    rule.put("rule", report.rule().text());
    rule.put("source", report.rule().source());
    ObjectNode model = out.putObject("cost");
    model.put("model", report.model().text());
    model.put("source", report.model().source());
    model.put("range", report.model().range());
    ArrayNode hikers = out.putArray("hikers");
    for (EffortReport.OfHiker hiker : report.hikers()) {
      ObjectNode one = hikers.addObject();
      one.put("hiker", hiker.hiker());
      ArrayNode days = one.putArray("days");
      for (DayEffort day : hiker.days()) {
        ObjectNode each = days.addObject();
        each.put("day", day.day());
        each.put("walkingMinutes", day.minutes());
        day.kilocalories().ifPresent(kcal -> each.put("kilocalories", kcal));
        day.refused()
            .ifPresent(
                reason -> {
                  each.put("refused", reason.text());
                  each.put("reason", reason.meaning());
                });
      }
    }
    ResultWriter.cautions(out);
    return JsonBytes.of(out);
  }
}
