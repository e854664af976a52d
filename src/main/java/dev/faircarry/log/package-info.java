/** How lines of the log are written. */
@NullMarked
package dev.faircarry.log;

import org.jspecify.annotations.NullMarked;
