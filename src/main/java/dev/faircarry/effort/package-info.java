/**
 * How long a day on foot takes and what it costs a walker with a load: published estimates, each
 * with its range.
 */
@NullMarked
package dev.faircarry.effort;

import org.jspecify.annotations.NullMarked;
