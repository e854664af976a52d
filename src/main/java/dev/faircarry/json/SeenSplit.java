package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.JudgedSplit;
import dev.faircarry.app.SplitResult;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.check.HikerLoads;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Morning;
import dev.faircarry.check.Verdict;
import dev.faircarry.split.Proof;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Writes a stored split as somebody sees it who may not see every body mass.
 *
 * <p>The fields that stay are listed, not those that go: a field added to the full answer stays
 * hidden until somebody has thought about it. Of a hiker whose body mass is hidden there stay the
 * loads in grams and whether each is within the hiker's target; of the whole split nothing that is
 * a maximum, a bound or a proof over all hikers, except that it is proved or not.
 */
public final class SeenSplit {
  /** Of the split: who carries what, and whether it is proved. */
  static final Set<String> STAY =
      Set.of(
          "format",
          "result",
          "carries",
          "opened",
          "handoversAtCamp",
          "findings",
          "cautions",
          "kept",
          "proof",
          "overCap",
          "keepsRules",
          "hikers");

  static final Set<String> STAY_OF_PROOF = Set.of("proved");

  /** Of a hiker whose body mass is hidden. */
  static final Set<String> STAY_OF_HIKER = Set.of("hiker", "name", "pieces", "mornings");

  /** Of their mornings: sums of things weighed, the same for every body mass. */
  static final Set<String> STAY_OF_MORNING =
      Set.of(
          "day",
          "loadGrams",
          "countedGrams",
          "baseGrams",
          "consumablesGrams",
          "totalPackGrams",
          "wornGrams",
          "sharedGrams",
          "withinTarget");

  /** Of an answer without a split: the hard rules, of which none knows a body mass. */
  static final Set<String> STAY_WITHOUT_SPLIT = Set.of("result", "conflict", "irreducible");

  private static final long NANOGRAMS_PER_MILLIGRAM = 1_000_000L;

  /** Stands where a split made by hand has no proof; never written. */
  private static final Proof NONE = new Proof(1, 0, 0, OptionalLong.of(0), false, 0, false);

  private SeenSplit() {}

  /**
   * The answer about a split that is kept.
   *
   * @param trip the newest revision
   * @param answered the trip as it was when the split was made
   * @param verdict what the independent check says of both
   */
  public static byte[] write(
      StoredTrip trip, StoredSplit split, Trip answered, Verdict verdict, Sight sight) {
    ObjectNode out =
        tree(
            ResultWriter.write(
                new SplitResult.Found(
                    answered, split.split(), split.proof().orElse(NONE), verdict)));
    if (split.proof().isEmpty()) {
      out.remove("proof");
    }
    out.set("kept", KeptWriter.about(trip, split));
    if (sight.hidesAny()) {
      prune(out, verdict, sight);
    }
    return JsonBytes.of(out);
  }

  /** The answer about a search that found no split. */
  public static byte[] write(SplitResult none, Sight sight) {
    ObjectNode out = tree(ResultWriter.write(none));
    if (sight.hidesAny()) {
      keepOnly(out, STAY_WITHOUT_SPLIT);
    }
    return JsonBytes.of(out);
  }

  /**
   * What the check says of a split that is not kept. Of a hiker whose body mass is hidden not even
   * whether a load is within the target is told: whoever may try any load would find the target.
   */
  public static byte[] write(JudgedSplit judged, Sight sight) {
    ObjectNode out = tree(ResultWriter.write(judged));
    if (sight.hidesAny()) {
      keepOnly(out, STAY);
      // What was filled in follows the targets, hidden ones too.
      out.remove("opened");
      for (JsonNode each : out.path("hikers")) {
        if (each instanceof ObjectNode one && sight.hides(one.path("hiker").asText())) {
          keepOnly(one, STAY_OF_HIKER);
          for (JsonNode morning : one.path("mornings")) {
            keepOnly((ObjectNode) morning, STAY_OF_MORNING);
          }
        }
      }
      dropAbout(out.path("overCap"), sight, "hiker");
      dropAbout(out.path("findings"), sight, "hikers");
    }
    return JsonBytes.of(out);
  }

  private static void prune(ObjectNode out, Verdict verdict, Sight sight) {
    keepOnly(out, STAY);
    if (out.get("proof") instanceof ObjectNode proof) {
      keepOnly(proof, STAY_OF_PROOF);
    }
    for (JsonNode carry : out.path("carries")) {
      String hiker = carry.path("hiker").asText();
      if (carry instanceof ObjectNode one && sight.hides(hiker)) {
        hide(one, loadsOf(verdict, hiker));
      }
    }
    dropAbout(out.path("overCap"), sight, "hiker");
    dropAbout(out.path("findings"), sight, "hikers");
  }

  private static HikerLoads loadsOf(Verdict verdict, String hiker) {
    return verdict.hikers().stream().filter(h -> h.hiker().equals(hiker)).findFirst().orElseThrow();
  }

  /** Leaves of a hiker what follows from no body mass, and says whether each load is in target. */
  static void hide(ObjectNode carry, HikerLoads loads) {
    keepOnly(carry, STAY_OF_HIKER);
    for (int i = 0; i < loads.mornings().size(); i++) {
      Morning morning = loads.mornings().get(i);
      ObjectNode shown = (ObjectNode) carry.path("mornings").get(i);
      boolean within =
          Math.multiplyExact(morning.countedMilligrams(), NANOGRAMS_PER_MILLIGRAM)
              <= loads.targetNanograms();
      shown.put("withinTarget", within);
      keepOnly(shown, STAY_OF_MORNING);
    }
  }

  /** Drops entries that name a hiker whose body mass is hidden: their texts may state a cap. */
  private static void dropAbout(JsonNode list, Sight sight, String field) {
    for (Iterator<JsonNode> entries = list.elements(); entries.hasNext(); ) {
      JsonNode named = entries.next().path(field);
      boolean hides = named.isTextual() && sight.hides(named.asText());
      for (JsonNode each : named) {
        hides |= sight.hides(each.asText());
      }
      if (hides) {
        entries.remove();
      }
    }
  }

  static void keepOnly(ObjectNode object, Set<String> names) {
    List<String> all = new ArrayList<>();
    object.fieldNames().forEachRemaining(all::add);
    all.removeAll(names);
    object.remove(all);
  }

  private static ObjectNode tree(byte[] document) {
    return (ObjectNode)
        JsonText.read(document, new Issues())
            .orElseThrow(() -> new IllegalStateException("an answer is JSON"));
  }
}
