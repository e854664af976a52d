package dev.faircarry.store;

import dev.faircarry.app.StoreLimits;
import dev.faircarry.trip.Trip;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Trips that were opened lately, so that those read often need not be opened and read each time.
 * The sealed bytes are still fetched: a trip is given only for the very bytes it came from, so
 * nothing that was changed or erased is.
 */
final class OpenedTrips {
  private record Opened(byte[] sealed, Trip trip) {}

  private final Map<String, Opened> lately = new LinkedHashMap<>(16, 0.75f, true);
  private long bytes;

  synchronized Optional<Trip> find(String place, byte[] sealed) {
    Opened found = lately.get(place);
    return found != null && Arrays.equals(found.sealed(), sealed)
        ? Optional.of(found.trip())
        : Optional.empty();
  }

  synchronized void keep(String place, byte[] sealed, Trip trip) {
    forget(lately.remove(place));
    lately.put(place, new Opened(sealed, trip));
    bytes += sealed.length;
    var eldest = lately.values().iterator();
    while (bytes > StoreLimits.OPENED_BYTES) {
      forget(eldest.next());
      eldest.remove();
    }
  }

  private void forget(@Nullable Opened gone) {
    bytes -= gone == null ? 0 : gone.sealed().length;
  }
}
