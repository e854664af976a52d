/** What the service says: who carries what, who opens what when, and how well that is known. */
@NullMarked
package dev.faircarry.split;

import org.jspecify.annotations.NullMarked;
