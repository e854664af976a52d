package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.provision.Figure;
import dev.faircarry.provision.Note;
import dev.faircarry.provision.Provision;
import dev.faircarry.trip.Trip;

/** Writes what a trip takes to eat, burn and drink, and the trip with it. */
public final class ProvisionWriter {
  private ProvisionWriter() {}

  /** The answer; body masses stand in its trip: not for every eye. */
  public static byte[] write(Trip trip, Provision provision) {
    ObjectNode out = TripWriter.object();
    ArrayNode items = out.putArray("items");
    for (Provision.Item item : provision.items()) {
      ObjectNode one = items.addObject();
      one.set("item", TripWriter.shared(item.item()));
      one.put("reason", item.reason());
      one.put("followsParty", item.followsParty());
    }
    ArrayNode figures = out.putArray("figures");
    for (Figure figure : provision.figures()) {
      ObjectNode one = figures.addObject();
      one.put("name", figure.name());
      one.put("amount", Numbers.plain(figure.amount()));
      one.put("unit", figure.unit());
      one.put("origin", figure.origin().text());
      one.put("source", figure.source());
    }
    ArrayNode notes = out.putArray("notes");
    for (Note note : provision.notes()) {
      ObjectNode one = notes.addObject();
      one.put("code", note.code().text());
      one.put("message", note.message());
      one.put("remedy", note.remedy());
    }
    out.set("trip", TripWriter.tree(provision.applyTo(trip)));
    return JsonBytes.of(out);
  }
}
