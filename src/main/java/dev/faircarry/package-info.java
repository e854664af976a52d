/** The wiring of the service: one class that puts the packages together. */
@NullMarked
package dev.faircarry;

import org.jspecify.annotations.NullMarked;
