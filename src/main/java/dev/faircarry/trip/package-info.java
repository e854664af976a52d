/** What the group says: hikers, kit, shared items, rules and policy, as given and unjudged. */
@NullMarked
package dev.faircarry.trip;

import org.jspecify.annotations.NullMarked;
