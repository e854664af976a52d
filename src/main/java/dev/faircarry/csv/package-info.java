/** Tables (CSV, RFC 4180) and their mapping to and from what they stand for. */
@NullMarked
package dev.faircarry.csv;

import org.jspecify.annotations.NullMarked;
