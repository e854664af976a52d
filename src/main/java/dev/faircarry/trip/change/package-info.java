/** What happens to a trip after the first split: changes, and the trip they make of it. */
@NullMarked
package dev.faircarry.trip.change;

import org.jspecify.annotations.NullMarked;
