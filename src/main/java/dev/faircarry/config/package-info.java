/** What can be set from outside: by the environment and by flags. */
@NullMarked
package dev.faircarry.config;

import org.jspecify.annotations.NullMarked;
