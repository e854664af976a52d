package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.kit.Carried;
import dev.faircarry.kit.Drift;
import dev.faircarry.kit.Goal;
import dev.faircarry.kit.KitOf;
import dev.faircarry.kit.KitReport;
import dev.faircarry.kit.Share;
import dev.faircarry.kit.StowAdvice;
import dev.faircarry.kit.Weights;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;

/** Writes what was found about kits and loads. */
public final class KitReportWriter {
  private KitReportWriter() {}

  /** The answer. */
  public static byte[] write(KitReport report) {
    ObjectNode out = TripWriter.object();
    ArrayNode hikers = out.putArray("hikers");
    report.hikers().forEach(kit -> hikers.add(kit(kit)));
    out.set("group", kit(report.group()));
    ResultWriter.cautions(out);
    return JsonBytes.of(out);
  }

  private static ObjectNode kit(KitOf kit) {
    ObjectNode out = TripWriter.object();
    kit.hiker().ifPresent(id -> out.put("hiker", id));
    ArrayNode mornings = out.putArray("mornings");
    for (Weights weights : kit.mornings()) {
      ObjectNode one = mornings.addObject();
      one.put("day", weights.day());
      one.put("baseGrams", Numbers.grams(weights.baseMilligrams()));
      one.put("consumablesGrams", Numbers.grams(weights.consumablesMilligrams()));
      one.put("totalPackGrams", Numbers.grams(weights.packMilligrams()));
      one.put("wornGrams", Numbers.grams(weights.wornMilligrams()));
      one.put("skinOutGrams", Numbers.grams(weights.skinOutMilligrams()));
    }
    out.put("ownBaseGrams", Numbers.grams(kit.ownBaseMilligrams()));
    shares(out, "byPurpose", "purpose", kit.byPurpose());
    shares(out, "byPlace", "place", kit.byPlace());
    ArrayNode heaviest = out.putArray("heaviest");
    for (Carried thing : kit.heaviest()) {
      ObjectNode one = heaviest.addObject();
      one.put("ref", thing.ref());
      one.put("name", thing.name());
      one.put("massGrams", Numbers.grams(thing.massMilligrams()));
      one.put("shared", thing.shared());
    }
    drifts(out, kit);
    out.put("claimedOnlyGrams", Numbers.grams(kit.claimedOnlyMilligrams()));
    out.put("cost", Numbers.money(kit.costHundredths()));
    out.put("costUnknown", kit.costUnknown());
    goal(out, "baseGoal", kit.baseGoal(), "Grams", Numbers::grams);
    goal(out, "spendingGoal", kit.spendingGoal(), "", Numbers::money);
    ArrayNode advice = out.putArray("advice");
    for (StowAdvice each : kit.advice()) {
      ObjectNode one = advice.addObject();
      one.put("ref", each.ref());
      one.put("name", each.name());
      one.put("stow", Words.text(each.stow()));
      one.put("better", Words.text(each.better()));
      one.put("reason", each.reason());
    }
    return out;
  }

  private static void shares(ObjectNode out, String field, String name, List<Share> shares) {
    ArrayNode list = out.putArray(field);
    for (Share share : shares) {
      ObjectNode one = list.addObject();
      one.put(name, share.name());
      one.put("massGrams", Numbers.grams(share.massMilligrams()));
      one.put("things", share.things());
    }
  }

  private static void drifts(ObjectNode out, KitOf kit) {
    ArrayNode drifts = out.putArray("drifts");
    for (Drift drift : kit.drifts()) {
      ObjectNode one = drifts.addObject();
      one.put("ref", drift.ref());
      one.put("name", drift.name());
      one.put("labelGrams", Numbers.grams(drift.labelMilligrams()));
      one.put("scaleGrams", Numbers.grams(drift.scaleMilligrams()));
      one.put("driftGrams", Numbers.grams(drift.driftMilligrams()));
    }
    out.put("driftGrams", Numbers.grams(kit.driftMilligrams()));
  }

  private static void goal(
      ObjectNode out,
      String field,
      Optional<Goal> goal,
      String unit,
      LongFunction<BigDecimal> number) {
    if (goal.isPresent()) {
      ObjectNode one = out.putObject(field);
      one.put("goal" + unit, number.apply(goal.get().goal()));
      one.put("now" + unit, number.apply(goal.get().now()));
      one.put("distance" + unit, number.apply(goal.get().distance()));
    }
  }
}
