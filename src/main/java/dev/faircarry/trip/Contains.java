package dev.faircarry.trip;

import dev.faircarry.unit.Volume;

/**
 * Makes a thing a container: pieces that go into {@code kind} travel inside it.
 *
 * @param volume room inside the container
 */
public record Contains(String kind, Volume volume) {}
