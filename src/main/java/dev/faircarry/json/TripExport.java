package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.access.Sight;
import dev.faircarry.app.KeptTrips;
import dev.faircarry.app.RevisionLine;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.StoredSplit;
import dev.faircarry.app.StoredTrip;
import dev.faircarry.app.Visit;
import dev.faircarry.split.Carry;
import dev.faircarry.trip.Hiker;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes everything that is kept about a trip or a hiker, as far as the asker may see it. */
public final class TripExport {
  private TripExport() {}

  /** A trip with all revisions, splits, readings and links; of links everything but the secret. */
  public static byte[] trip(Store store, Visit visit) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("id", visit.stored().id());
    ArrayNode revisions = out.putArray("revisions");
    for (RevisionLine line : lines(store, visit)) {
      ObjectNode one = KeptWriter.line(line);
      then(store, visit, line)
          .ifPresent(
              then -> {
                Sight sight = KeptTrips.sightOf(visit, then);
                one.set("trip", TripWriter.tree(sight.of(then.state().trip())));
              });
      revisions.add(one);
    }
    ArrayNode splits = out.putArray("splits");
    for (StoredSplit split : splits(store, visit)) {
      ObjectNode one = KeptWriter.about(visit.stored(), split);
      one.set("split", SplitWriter.tree(split.split()));
      splits.add(one);
    }
    ArrayNode readings = out.putArray("readings");
    store
        .readings()
        .of(visit.stored().id())
        .forEach(reading -> readings.add(KeptReadingWriter.reading(reading)));
    ArrayNode links = out.putArray("links");
    store.links().of(visit.stored().id()).forEach(link -> links.add(KeptWriter.link(link)));
    return JsonBytes.of(out);
  }

  /**
   * A hiker as every revision has them, what they carry in every split, readings of theirs, and
   * their links.
   */
  public static byte[] hiker(Store store, Visit visit, String hiker) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    out.put("hiker", hiker);
    ArrayNode revisions = out.putArray("revisions");
    for (RevisionLine line : lines(store, visit)) {
      then(store, visit, line)
          .ifPresent(
              then -> {
                Sight sight = KeptTrips.sightOf(visit, then);
                for (Hiker each : sight.of(then.state().trip()).hikers()) {
                  if (each.id().equals(hiker)) {
                    ObjectNode one = KeptWriter.line(line);
                    one.set("hiker", TripWriter.hiker(each));
                    revisions.add(one);
                  }
                }
              });
    }
    ArrayNode splits = out.putArray("splits");
    for (StoredSplit split : splits(store, visit)) {
      ObjectNode one = KeptWriter.about(visit.stored(), split);
      ArrayNode pieces = one.putArray("pieces");
      for (Carry carry : split.split().carries()) {
        if (carry.hiker().equals(hiker)) {
          pieces.add(SplitWriter.piece(carry.piece(), carry.units()));
        }
      }
      splits.add(one);
    }
    ArrayNode readings = out.putArray("readings");
    store.readings().of(visit.stored().id()).stream()
        .filter(reading -> reading.reading().weighed().of().filter(hiker::equals).isPresent())
        .forEach(reading -> readings.add(KeptReadingWriter.reading(reading)));
    ArrayNode links = out.putArray("links");
    store.links().of(visit.stored().id()).stream()
        .filter(link -> link.isOf(hiker))
        .forEach(link -> links.add(KeptWriter.link(link)));
    return JsonBytes.of(out);
  }

  private static Optional<StoredTrip> then(Store store, Visit visit, RevisionLine line) {
    return store.trips().find(visit.stored().id(), line.number());
  }

  private static List<RevisionLine> lines(Store store, Visit visit) {
    return store.trips().history(visit.stored().id(), Integer.MAX_VALUE, Integer.MAX_VALUE);
  }

  private static List<StoredSplit> splits(Store store, Visit visit) {
    List<StoredSplit> all = new ArrayList<>();
    Optional<String> before = Optional.empty();
    List<StoredSplit> page;
    do {
      page = store.trips().splits(visit.stored().id(), before, StoreLimits.PAGE);
      all.addAll(page);
      before = page.isEmpty() ? before : Optional.of(page.get(page.size() - 1).id());
    } while (page.size() == StoreLimits.PAGE);
    return all;
  }
}
