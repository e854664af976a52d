package dev.faircarry.choose;

/**
 * What buying one thing would save, everything else chosen as well as can be.
 *
 * @param offer its id
 * @param savedMilligrams against the choice without it
 * @param costHundredths more money than that choice; less than nothing when it spares another
 *     purchase
 * @param with the choice with it
 */
public record Swap(String offer, long savedMilligrams, long costHundredths, Point with) {}
