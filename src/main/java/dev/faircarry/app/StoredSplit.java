package dev.faircarry.app;

import dev.faircarry.split.Proof;
import dev.faircarry.split.Split;
import java.time.Instant;
import java.util.Optional;

/**
 * A split kept with its trip.
 *
 * @param revision the revision whose document it answers
 * @param proof how well it is known to be the best; empty for one made by hand
 */
public record StoredSplit(
    String id,
    String trip,
    int revision,
    Instant at,
    Author by,
    Split split,
    Optional<Proof> proof) {}
