/** Routes, problem bodies and pages; the only place that knows HTTP. */
@NullMarked
package dev.faircarry.http;

import org.jspecify.annotations.NullMarked;
