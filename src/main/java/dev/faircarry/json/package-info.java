/** Wire forms of trips and splits in JSON, and their mappers. */
@NullMarked
package dev.faircarry.json;

import org.jspecify.annotations.NullMarked;
