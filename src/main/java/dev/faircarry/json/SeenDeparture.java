package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.CheckDeparture;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.check.Departure;
import dev.faircarry.check.FindingCode;
import dev.faircarry.check.Severity;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Writes the departure check of a stored trip as somebody sees it who may not see every body mass.
 *
 * <p>As with stored splits, the fields that stay are listed, and so are the findings whose words
 * follow from no body mass. Others about a hiker whose body mass is hidden go, and count for
 * nothing in the readiness: that hiker judges the own load, and is named.
 */
public final class SeenDeparture {
  static final Set<String> STAY = Set.of("readiness", "findings", "cautions", "kept");

  /** Findings that state no target, no cap and no ratio; a new one is not among them. */
  static final Set<String> PLAIN =
      EnumSet.of(
              FindingCode.NOT_CARRIED,
              FindingCode.CARRIED_TWICE,
              FindingCode.UNKNOWN_PIECE,
              FindingCode.UNKNOWN_HIKER,
              FindingCode.PINNED_ELSEWHERE,
              FindingCode.NOT_ALLOWED,
              FindingCode.BARRED,
              FindingCode.MINOR_CARRIES_FLAME_OR_FUEL,
              FindingCode.NOT_TOGETHER,
              FindingCode.NOT_APART,
              FindingCode.PARTY_LACKS,
              FindingCode.NO_ROOM,
              FindingCode.NO_CONTAINER,
              FindingCode.TOO_MANY_PIECES,
              FindingCode.OPENING_PLAN_WRONG,
              FindingCode.OPENING_PLAN_ASSUMED,
              FindingCode.CAMP_HANDOVER_WRONG,
              FindingCode.OWN_KIT_OVERFILLS,
              FindingCode.LOAD_RATING_PASSED,
              FindingCode.ESSENTIAL_MISSING,
              FindingCode.NEED_NOT_COVERED,
              FindingCode.SCARCE_TOGETHER,
              FindingCode.FUEL_WITH_FOOD,
              FindingCode.STALE)
          .stream()
          .map(FindingCode::text)
          .collect(Collectors.toUnmodifiableSet());

  private SeenDeparture() {}

  /**
   * The answer about leaving with a split.
   *
   * @param newest the trip as it is now, which was judged
   */
  public static byte[] write(
      StoredTrip newest, StoredSplit split, CheckDeparture.Answer answer, Sight sight) {
    ObjectNode out = DepartureWriter.tree(answer);
    out.set("kept", KeptWriter.about(newest, split));
    if (sight.hidesAny()) {
      prune(out, sight);
      // What has changed since may be a hidden body mass, back to what it was: only that is told.
      if (newest.stale(split)) {
        stale(out);
      }
    }
    return JsonBytes.of(out);
  }

  private static void prune(ObjectNode out, Sight sight) {
    SeenSplit.keepOnly(out, STAY);
    String readiness = Departure.Readiness.READY.text();
    for (Iterator<JsonNode> each = out.path("findings").elements(); each.hasNext(); ) {
      JsonNode finding = each.next();
      if (isNumbers(finding, sight)) {
        each.remove();
      } else if (finding.path("severity").asText().equals(Words.text(Severity.STOP))) {
        readiness = Departure.Readiness.NOT_READY.text();
      } else if (finding.path("severity").asText().equals(Words.text(Severity.CAUTION))
          && !readiness.equals(Departure.Readiness.NOT_READY.text())) {
        readiness = Departure.Readiness.READY_WITH_CAUTIONS.text();
      }
    }
    out.put("readiness", readiness);
    ArrayNode hidden = out.putArray("bodyMassHidden");
    sight.hidden().stream().sorted().forEach(hidden::add);
  }

  /** Whether a finding states, or rests on, a target or cap that is hidden, or of all hikers. */
  private static boolean isNumbers(JsonNode finding, Sight sight) {
    boolean hides = finding.path("hikers").isEmpty();
    for (JsonNode hiker : finding.path("hikers")) {
      hides |= sight.hides(hiker.asText());
    }
    return hides && !PLAIN.contains(finding.path("code").asText());
  }

  private static void stale(ObjectNode out) {
    if (out.path("readiness").asText().equals(Departure.Readiness.READY.text())) {
      out.put("readiness", Departure.Readiness.READY_WITH_CAUTIONS.text());
    }
    ObjectNode one = out.withArray("findings").addObject();
    one.put("code", FindingCode.STALE.text());
    one.put("severity", Words.text(Severity.CAUTION));
    List.of("hikers", "pieces", "rules", "days").forEach(one::putArray);
    one.put("message", "The trip has changed since the split was made.");
    one.put("remedy", "Rebalance.");
  }
}
