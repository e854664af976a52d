package dev.faircarry.http;

import dev.faircarry.app.StoreLimits;
import dev.faircarry.app.Visit;
import dev.faircarry.trip.Trip;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Documents of stored trips that were written out lately, as those see them from whom the same is
 * hidden. They are given only for the trip they were written from, so what the store no longer
 * gives is not given here.
 */
final class WrittenTrips {
  private record Place(String trip, int revision, Set<String> hidden) {}

  private record Written(Trip from, byte[] body) {}

  private final Map<Place, Written> lately = new LinkedHashMap<>(16, 0.75f, true);
  private long bytes;

  byte[] of(Visit visit) {
    Trip trip = visit.stored().state().trip();
    Place place = new Place(visit.stored().id(), visit.stored().head(), visit.sight().hidden());
    synchronized (lately) {
      Written found = lately.get(place);
      // The same object, not an equal one: telling equal trips would take longer than writing.
      if (found != null && isSame(found.from(), trip)) {
        return found.body();
      }
    }
    byte[] body = PartRoutes.edit(visit).part(List.of()).orElseThrow();
    keep(place, new Written(trip, body));
    return body;
  }

  @SuppressWarnings("ReferenceEquality")
  private static boolean isSame(Trip one, Trip other) {
    return one == other;
  }

  private void keep(Place place, Written written) {
    synchronized (lately) {
      Written before = lately.put(place, written);
      bytes += written.body().length - (before == null ? 0 : before.body().length);
      var eldest = lately.values().iterator();
      while (bytes > StoreLimits.WRITTEN_BYTES) {
        bytes -= eldest.next().body().length;
        eldest.remove();
      }
    }
  }
}
