package dev.faircarry.kit;

import dev.faircarry.check.Morning;

/**
 * Weights of a hiker, or of the group, on a morning.
 *
 * @param baseMilligrams what is the same on the last day, empty containers included; never food,
 *     fuel or water
 * @param consumablesMilligrams food, fuel and water that get used up
 * @param packMilligrams total pack weight: base and consumables
 * @param wornMilligrams on the body or in the hand
 */
public record Weights(
    int day,
    long baseMilligrams,
    long consumablesMilligrams,
    long packMilligrams,
    long wornMilligrams) {

  static Weights of(Morning morning) {
    return new Weights(
        morning.day(),
        morning.baseMilligrams(),
        morning.consumablesMilligrams(),
        morning.loadMilligrams(),
        morning.wornMilligrams());
  }

  Weights and(Weights other) {
    return new Weights(
        day,
        baseMilligrams + other.baseMilligrams,
        consumablesMilligrams + other.consumablesMilligrams,
        packMilligrams + other.packMilligrams,
        wornMilligrams + other.wornMilligrams);
  }

  /** Skin-out weight: everything that is carried and worn. */
  public long skinOutMilligrams() {
    return packMilligrams + wornMilligrams;
  }
}
