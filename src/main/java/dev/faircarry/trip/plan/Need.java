package dev.faircarry.trip.plan;

import java.util.OptionalInt;

/**
 * Something the group needs so much of.
 *
 * @param covers its name, as items name it in {@code covers}; {@code sleeping} counts places to
 *     sleep
 * @param atLeast so much in the whole group; nothing strikes the need
 * @param perParty each party needs at least so many of its own
 */
public record Need(String covers, Amount atLeast, OptionalInt perParty) {}
