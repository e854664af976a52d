package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.IfOneStaysHome;
import dev.faircarry.app.Rebalanced;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.trip.Trip;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Writes changes of plans of a stored trip as somebody sees them who may not see every body mass.
 * As for splits, the fields that stay are listed: who gives what to whom, and whether it is proved.
 * What depends on nobody's hidden mass, because that hiker does not come, is told whole. The trip
 * is left out; it can be read where it is kept.
 */
public final class SeenChange {
  static final Set<String> STAY =
      Set.of(
          "hiker",
          "text",
          "result",
          "notes",
          "reason",
          "recommended",
          "chosen",
          "complete",
          "points",
          "conflict",
          "irreducible",
          "cautions",
          "kept");

  static final Set<String> STAY_OF_POINT =
      Set.of("handovers", "people", "movedGrams", "list", "proof", "split");

  private SeenChange() {}

  /** What came of a change of plans. */
  public static byte[] write(Rebalanced result, Sight sight) {
    return JsonBytes.of(tree(result, sight));
  }

  /** The same when it was taken over: with what is kept of the split now agreed on. */
  public static byte[] takenOver(
      Rebalanced result, Sight sight, StoredTrip trip, StoredSplit split) {
    ObjectNode out = tree(result, sight);
    out.set("kept", KeptWriter.about(trip, split));
    return JsonBytes.of(out);
  }

  /** What to do without each hiker. */
  public static byte[] write(List<IfOneStaysHome.Case> cases, Sight sight) {
    ObjectNode out = TripWriter.object();
    ArrayNode list = out.putArray("dropOuts");
    for (IfOneStaysHome.Case each : cases) {
      ObjectNode one = RebalanceWriter.tree(each);
      list.add(one);
      if (hides(each.result(), sight)) {
        prune(one);
      }
    }
    ResultWriter.cautions(out);
    return JsonBytes.of(out);
  }

  private static ObjectNode tree(Rebalanced result, Sight sight) {
    ObjectNode out = RebalanceWriter.tree(result, true);
    out.remove("trip");
    if (hides(result, sight)) {
      prune(out);
    }
    return out;
  }

  /** Whether a hiker with a hidden body mass is still of the party after the change. */
  private static boolean hides(Rebalanced result, Sight sight) {
    return trip(result)
        .map(trip -> trip.hikers().stream().anyMatch(h -> sight.hides(h.id())))
        .orElse(sight.hidesAny());
  }

  private static Optional<Trip> trip(Rebalanced result) {
    if (result instanceof Rebalanced.Found found) {
      return Optional.of(found.trip());
    }
    if (result instanceof Rebalanced.Impossible impossible) {
      return Optional.of(impossible.trip());
    }
    return result instanceof Rebalanced.Undecided undecided
        ? Optional.of(undecided.trip())
        : Optional.empty();
  }

  private static void prune(ObjectNode out) {
    SeenSplit.keepOnly(out, STAY);
    for (JsonNode point : out.path("points")) {
      SeenSplit.keepOnly((ObjectNode) point, STAY_OF_POINT);
      SeenSplit.keepOnly((ObjectNode) point.path("proof"), SeenSplit.STAY_OF_PROOF);
    }
  }
}
