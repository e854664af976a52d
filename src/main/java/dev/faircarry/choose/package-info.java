/** What to take: needs, what could meet them, doubles, and what a choice changes about the trip. */
@NullMarked
package dev.faircarry.choose;

import org.jspecify.annotations.NullMarked;
