/**
 * Food, fuel and water by the day, from people, days, height and habits; every figure says where it
 * comes from.
 */
@NullMarked
package dev.faircarry.provision;

import org.jspecify.annotations.NullMarked;
