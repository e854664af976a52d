/**
 * Kits and loads looked at: weights by morning, what they are made of, drift, cost, goals, effort,
 * and plots of them.
 */
@NullMarked
package dev.faircarry.kit;

import org.jspecify.annotations.NullMarked;
