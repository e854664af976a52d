package dev.faircarry.http;

import dev.faircarry.app.KeptTrips;
import java.util.Optional;

/**
 * What the service needs to keep trips.
 *
 * @param wake tells the workers of this instance that a solve waits
 * @param creationKey what must be known to make a trip; empty if everybody may
 * @param limited whether requests are counted and limited
 */
public record KeptParts(
    KeptTrips trips, Runnable wake, Optional<String> creationKey, boolean limited) {}
