package dev.faircarry.check;

import java.util.OptionalLong;

/**
 * One hiker's load on one morning, recomputed from trip and split.
 *
 * @param loadMilligrams L: pack, packed kit and pieces held
 * @param countedMilligrams F: what the policy's basis counts of it, luxuries left out
 * @param steps ceil(1000 F / (grain T))
 * @param capNanograms the load not to be passed, exact; empty without any cap
 * @param excessThousandths ceil(1000 (L - cap) / T) where the cap is passed, else 0
 * @param baseMilligrams what is the same on the last day, empty containers and packaging included
 * @param consumablesMilligrams food, water and fuel that get used up
 * @param wornMilligrams worn weight, no part of the load
 * @param sharedMilligrams shared pieces held, used-up packaging included
 */
public record Morning(
    int day,
    long loadMilligrams,
    long countedMilligrams,
    long steps,
    OptionalLong capNanograms,
    long excessThousandths,
    long baseMilligrams,
    long consumablesMilligrams,
    long wornMilligrams,
    long sharedMilligrams) {}
