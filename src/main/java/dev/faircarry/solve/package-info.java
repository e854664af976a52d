/** The search for the fairest split: model, bounds, construction, local search and proof. */
@NullMarked
package dev.faircarry.solve;

import org.jspecify.annotations.NullMarked;
