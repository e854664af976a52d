/** What a scale at the trailhead says against what was stated. */
@NullMarked
package dev.faircarry.weigh;

import org.jspecify.annotations.NullMarked;
