package dev.faircarry.split;

/**
 * On a day, so many units of a counted item are taken from a hiker's pack and used.
 *
 * @param item id of the counted item
 */
public record Opened(int day, String item, String hiker, int units) {}
