/**
 * Chooses what to take: the exact frontier of mass against money, found and proved by constraint
 * programming.
 */
@NullMarked
package dev.faircarry.solve.take;

import org.jspecify.annotations.NullMarked;
