package dev.faircarry.app;

import dev.faircarry.weigh.ScaleReading;
import java.time.Instant;
import java.util.Optional;

/**
 * A reading kept with its trip.
 *
 * @param split id of the split that was agreed on when it was read: what the packs held
 * @param at when it was kept; what the client says of the time is in the reading
 */
public record StoredReading(
    String id, String trip, Optional<String> split, Instant at, Author by, ScaleReading reading) {}
