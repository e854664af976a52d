/** Capability links, and what the bearer of each may see. */
@NullMarked
package dev.faircarry.access;

import org.jspecify.annotations.NullMarked;
