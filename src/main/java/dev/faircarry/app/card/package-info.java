/** What one hiker needs to know of a split, on a card. */
@NullMarked
package dev.faircarry.app.card;

import org.jspecify.annotations.NullMarked;
