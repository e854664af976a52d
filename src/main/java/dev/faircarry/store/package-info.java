/** The embedded and the PostgreSQL store, and the steps by which their schema came about. */
@NullMarked
package dev.faircarry.store;

import org.jspecify.annotations.NullMarked;
