/**
 * Masses, volumes, money and fractions: how they are read, kept exactly, rounded by name and
 * printed.
 */
@NullMarked
package dev.faircarry.unit;

import org.jspecify.annotations.NullMarked;
