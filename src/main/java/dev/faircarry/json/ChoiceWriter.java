package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.ChooseGear;
import dev.faircarry.choose.Answer;
import dev.faircarry.choose.Changes;
import dev.faircarry.choose.Doubled;
import dev.faircarry.choose.Point;
import dev.faircarry.choose.Question;
import dev.faircarry.choose.Required;
import dev.faircarry.choose.Shortfall;
import dev.faircarry.choose.Swap;
import java.math.BigDecimal;
import java.util.List;
import java.util.TreeMap;

/** Writes what to take. */
public final class ChoiceWriter {
  private ChoiceWriter() {}

  /** The answer; body masses stand in its trip: not for every eye. */
  public static byte[] write(ChooseGear.Found found) {
    ObjectNode out = TripWriter.object();
    out.put("outcome", outcome(found.answer()));
    needs(out, found.question());
    doubles(out, found.doubles());
    found
        .question()
        .budgetHundredths()
        .ifPresent(budget -> out.put("budget", Numbers.money(budget)));
    if (found.answer() instanceof Answer.Choices choices) {
      choices(out, found.question(), choices);
    } else if (found.answer() instanceof Answer.Unmeetable unmeetable) {
      unmeetable(out, unmeetable);
    } else if (found.answer() instanceof Answer.TooLarge large) {
      out.put("candidates", large.candidates());
      out.put("mostCandidates", large.most());
    } else {
      out.put("cutByClock", ((Answer.Undecided) found.answer()).cutByClock());
    }
    out.put("effortSteps", found.answer().effortSteps());
    found
        .effect()
        .ifPresent(
            effect -> {
              ObjectNode inner = out.putObject("effect");
              inner.set("before", side(effect.before()));
              inner.set("after", side(effect.after()));
              ResultWriter.cautions(out);
            });
    found
        .applied()
        .ifPresent(
            applied -> {
              TripWriter.texts(out, "changedRules", applied.changedRules());
              out.set("trip", TripWriter.tree(applied.trip()));
            });
    return JsonBytes.of(out);
  }

  /** The outcome in a word. */
  public static String outcome(Answer answer) {
    if (answer instanceof Answer.Choices choices) {
      return choices.chosen().isPresent() ? "chosen" : "over-budget";
    }
    if (answer instanceof Answer.TooLarge) {
      return "too-large";
    }
    return answer instanceof Answer.Unmeetable ? "unmeetable" : "undecided";
  }

  private static void needs(ObjectNode out, Question question) {
    ArrayNode needs = out.putArray("needs");
    for (Required need : question.needs()) {
      ObjectNode one = needs.addObject();
      one.put("covers", need.need());
      one.put(need.room() ? "atLeastMilliliters" : "atLeast", need.atLeast());
      if (!need.perParty().isEmpty()) {
        ArrayNode parties = one.putArray("perParty");
        new TreeMap<>(need.perParty())
            .forEach(
                (party, number) -> {
                  ObjectNode each = parties.addObject();
                  if (!party.isEmpty()) {
                    each.put("party", party);
                  }
                  each.put("atLeast", number);
                });
      }
      one.put("reason", need.reason());
    }
  }

  private static void doubles(ObjectNode out, List<Doubled> doubles) {
    ArrayNode list = out.putArray("doubles");
    for (Doubled doubled : doubles) {
      ObjectNode one = list.addObject();
      one.put("covers", doubled.need());
      one.put("asked", doubled.asked());
      one.put("met", doubled.met());
      texts(one.putArray("things"), doubled.things());
      texts(one.putArray("canStay"), doubled.canStay());
    }
  }

  private static void choices(ObjectNode out, Question question, Answer.Choices choices) {
    choices.chosen().ifPresent(point -> out.set("chosen", point(question, point)));
    ArrayNode frontier = out.putArray("frontier");
    choices.frontier().forEach(point -> frontier.add(point(question, point)));
    out.put("complete", choices.complete());
    out.put("cutByClock", choices.cutByClock());
    out.put("massStepGrams", Numbers.grams(choices.massStepMilligrams()));
    out.set("swapsFrom", point(question, choices.start()));
    ArrayNode swaps = out.putArray("swaps");
    for (Swap swap : choices.swaps()) {
      ObjectNode one = swaps.addObject();
      one.put("offer", swap.offer());
      one.put("savedGrams", Numbers.grams(swap.savedMilligrams()));
      one.put("price", Numbers.money(swap.costHundredths()));
      if (swap.costHundredths() > 0) {
        one.put(
            "savedGramsPerMoney",
            Numbers.gramsPerMoney(swap.savedMilligrams(), swap.costHundredths()));
      }
      one.set("with", point(question, swap.with()));
    }
  }

  private static ObjectNode point(Question question, Point point) {
    ObjectNode out = TripWriter.object();
    out.put("massGrams", Numbers.grams(point.massMilligrams()));
    out.put("price", Numbers.money(point.priceHundredths()));
    Changes changes = Changes.of(question, point);
    counted(out.putArray("bought"), changes.bought());
    counted(out.putArray("brought"), changes.brought());
    texts(out.putArray("leftAtHome"), changes.leftAtHome());
    ArrayNode swapped = out.putArray("swapped");
    for (Changes.Pair pair : changes.swapped()) {
      ObjectNode one = swapped.addObject();
      one.put("in", pair.in());
      one.put("out", pair.out());
    }
    return out;
  }

  private static void counted(ArrayNode list, List<Changes.Counted> things) {
    for (Changes.Counted thing : things) {
      ObjectNode one = list.addObject();
      one.put("offer", thing.offer());
      one.put("count", thing.count());
    }
  }

  private static void texts(ArrayNode list, List<String> texts) {
    texts.forEach(list::add);
  }

  private static void unmeetable(ObjectNode out, Answer.Unmeetable unmeetable) {
    texts(out.putArray("conflict"), unmeetable.needs());
    out.put("irreducible", unmeetable.irreducible());
    ArrayNode shortfalls = out.putArray("shortfalls");
    for (Shortfall shortfall : unmeetable.shortfalls()) {
      ObjectNode one = shortfalls.addObject();
      one.put("covers", shortfall.need());
      shortfall.party().filter(p -> !p.isEmpty()).ifPresent(party -> one.put("party", party));
      one.put("asked", shortfall.asked());
      one.put("met", shortfall.met());
    }
    out.put(
        "remedy",
        "Offer something that covers what is named, or strike a need by stating it with"
            + " \"atLeast\": 0.");
  }

  private static ObjectNode side(ChooseGear.Side side) {
    ObjectNode out = TripWriter.object();
    out.put("outcome", Words.text(side.kind()));
    side.worst()
        .ifPresent(
            worst -> {
              out.put("hiker", worst.hiker());
              out.put("day", worst.day());
              out.put(
                  "worstTargetRatio", BigDecimal.valueOf(ChooseGear.ratioThousandths(worst), 3));
              out.put("proved", side.proved());
            });
    return out;
  }
}
