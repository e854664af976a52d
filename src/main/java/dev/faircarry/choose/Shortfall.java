package dev.faircarry.choose;

import java.util.Optional;

/**
 * A need that is not met.
 *
 * @param party the party that lacks it; empty for the whole group
 * @param asked how much is asked for, what is taken may ask for more than the need itself
 * @param met how much there is
 */
public record Shortfall(String need, Optional<String> party, long asked, long met) {}
