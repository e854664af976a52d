/** Use cases, and the ports through which they reach the solver and the store. */
@NullMarked
package dev.faircarry.app;

import org.jspecify.annotations.NullMarked;
