/** The command line: one class per command. */
@NullMarked
package dev.faircarry.cli;

import org.jspecify.annotations.NullMarked;
