/** Issues of a trip and the verdict on a split, recomputed from the trip alone. */
@NullMarked
package dev.faircarry.check;

import org.jspecify.annotations.NullMarked;
