/**
 * What the group says about the rest of the trip: route, food, fuel, water, goals, and what could
 * be taken.
 */
@NullMarked
package dev.faircarry.trip.plan;

import org.jspecify.annotations.NullMarked;
