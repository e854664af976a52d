package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.BestKnown;
import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.DepartureWords;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.check.Departure;
import dev.faircarry.check.Fairness;
import java.math.BigDecimal;

/** Writes departure checks. */
public final class DepartureWriter {
  private DepartureWriter() {}

  /** The whole answer; {@link SeenDeparture} writes what somebody may see of it. */
  public static byte[] write(CheckDeparture.Answer answer) {
    return JsonBytes.of(tree(answer));
  }

  /** What the check says of a split, and beside it whether the group can leave with it. */
  public static byte[] write(JudgedSplit judged, CheckDeparture.Answer answer) {
    ObjectNode out = ResultWriter.tree(judged);
    ObjectNode departure = out.putObject("departure");
    readiness(departure, answer);
    fairness(departure, answer);
    ResultWriter.cautions(out);
    return JsonBytes.of(out);
  }

  static ObjectNode tree(CheckDeparture.Answer answer) {
    ObjectNode out = TripWriter.object();
    readiness(out, answer);
    new LoadsWriter(answer.trip(), answer.departure().verdict()).summary(out);
    fairness(out, answer);
    ResultWriter.cautions(out);
    return out;
  }

  private static void readiness(ObjectNode out, CheckDeparture.Answer answer) {
    Departure departure = answer.departure();
    out.put("readiness", departure.readiness().text());
    new LoadsWriter(answer.trip(), departure.verdict()).findings(out, departure.findings());
  }

  private static void fairness(ObjectNode out, CheckDeparture.Answer answer) {
    Departure departure = answer.departure();
    ObjectNode labels = out.putObject("labels");
    labels.put("unweighedGrams", Exact.grams(departure.labels().unweighedMilligrams()));
    labels.put("worstRatio", thousandths(departure.labels().worstThousandths()));
    labels.put("couldBeRatio", thousandths(departure.labels().couldBeThousandths()));
    departure.fairness().ifPresent(f -> fairness(out.putObject("fairness"), answer, f));
    answer.best().ifPresent(best -> best(out.putObject("best"), best));
  }

  private static void fairness(ObjectNode out, CheckDeparture.Answer answer, Fairness fairness) {
    out.put("spread", thousandths(fairness.spreadThousandths()));
    ArrayNode standings = out.putArray("standings");
    for (Fairness.Standing each : fairness.standings()) {
      ObjectNode one = standings.addObject();
      one.put("hiker", each.hiker());
      one.put("day", each.day());
      one.put("targetRatio", thousandths(each.ratioThousandths()));
      one.put("aboveTargetGrams", Exact.grams(each.aboveMilligrams()));
    }
    ArrayNode gains = out.putArray("gains");
    DepartureWords words = new DepartureWords(answer.trip());
    for (Fairness.Gain gain : fairness.gains()) {
      ObjectNode one = gains.addObject();
      one.put("from", gain.from());
      one.put("to", gain.to());
      one.put("piece", gain.piece().text());
      gain.back().ifPresent(back -> one.put("back", back.text()));
      one.put("worstRatio", thousandths(gain.worstThousandths()));
      one.put("words", words.of(gain));
    }
  }

  private static void best(ObjectNode out, BestKnown best) {
    out.put("asFair", best.asFair());
    out.put("proved", best.proved());
    best.worst()
        .ifPresent(
            worst -> {
              out.put(
                  "worstRatio", Exact.ratio(worst.countedMilligrams(), worst.targetNanograms()));
              out.put("worstSteps", worst.steps());
            });
    out.put("excessThousandths", best.excessThousandths());
    best.boundThousandths().ifPresent(bound -> out.put("boundRatio", thousandths(bound)));
    out.put("words", best.words());
    out.put("effortSteps", best.effortSteps());
    out.put("cutByClock", best.cutByClock());
  }

  private static BigDecimal thousandths(long ratio) {
    return BigDecimal.valueOf(ratio, 3);
  }
}
