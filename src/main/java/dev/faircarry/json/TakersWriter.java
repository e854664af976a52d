package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Sight;
import dev.faircarry.check.Takers;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes who could take one more thing. Where body masses are hidden their hikers have no rank, for
 * it would compare loads with a target that is not told; nor are ratios, steps and caps told. Who
 * cannot, and why, follows from hard rules, which know no body mass.
 */
final class TakersWriter {
  private TakersWriter() {}

  static byte[] write(Trip trip, List<Takers.Taker> takers, Sight sight) {
    ObjectNode out = TripWriter.object();
    ArrayNode list = out.putArray("takers");
    int rank = 0;
    for (Takers.Taker taker : inOrder(trip, takers, sight)) {
      ObjectNode one = list.addObject();
      one.put("hiker", taker.hiker());
      one.put("can", taker.reasons().isEmpty());
      LoadsWriter loads = new LoadsWriter(trip, taker.verdict());
      if (!taker.reasons().isEmpty()) {
        loads.findings(one, taker.reasons());
        continue;
      }
      if (!sight.hides(taker.hiker())) {
        one.put("rank", ++rank);
      }
      if (!sight.hidesAny()) {
        loads.summary(one);
        ArrayNode steps = one.putArray("steps");
        taker.verdict().steps().forEach(steps::add);
      }
      one.set("split", SplitWriter.tree(taker.split()));
    }
    ResultWriter.cautions(out);
    return JsonBytes.of(out);
  }

  /** As ranked, but hikers with a hidden body mass, in the trip's order, behind those ranked. */
  private static List<Takers.Taker> inOrder(Trip trip, List<Takers.Taker> takers, Sight sight) {
    List<Takers.Taker> order = new ArrayList<>();
    takers.stream()
        .filter(t -> t.reasons().isEmpty() && !sight.hides(t.hiker()))
        .forEach(order::add);
    trip.hikers().stream()
        .filter(h -> sight.hides(h.id()))
        .flatMap(h -> takers.stream().filter(t -> t.hiker().equals(h.id())))
        .filter(t -> t.reasons().isEmpty())
        .forEach(order::add);
    takers.stream().filter(t -> !t.reasons().isEmpty()).forEach(order::add);
    return order;
  }
}
