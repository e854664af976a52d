package dev.faircarry.solve;

import dev.faircarry.trip.PieceRef;
import java.util.List;

/**
 * What always moves as one: a piece, a unit, or all pieces that a rule keeps together.
 *
 * <p>Units used per day are given their day of use beforehand ({@link Content#openDay}): they are
 * interchangeable, so that dividing units with fixed days is the same as dividing units and
 * choosing an opening plan, and every block has a fixed mass on every morning.
 *
 * @param index position in {@link Model#blocks}
 * @param symmetryClass blocks of one class can be exchanged without changing anything but names
 * @param massSince milligrams by first stage of holding and day: what a holder who took the block
 *     over at the start of that stage has of it on each morning; contents no longer needed then
 *     stay behind
 * @param volume room it takes in a pack by day, in millilitres
 * @param kindVolume room it takes inside containers by kind and day
 * @param kindCount how many of its contents need a container, by kind and day
 * @param innerVolume room it gives as a container, by kind and day
 * @param innerCount how many containers it is, by kind and day
 * @param neededUntil last day on whose morning it is there and unused
 * @param allowed who may hold it, by stage and hiker; all false for stages in which it is no longer
 *     needed
 * @param tags references of apart rules it belongs to
 */
record Block(
    int index,
    int symmetryClass,
    List<Content> contents,
    long[][] massSince,
    long[] volume,
    long[][] kindVolume,
    int[][] kindCount,
    long[][] innerVolume,
    int[][] innerCount,
    int neededUntil,
    boolean[][] allowed,
    List<Tag> tags) {

  /** A piece or unit inside a block. */
  record Content(
      PieceRef ref,
      int item,
      boolean isPart,
      int openDay,
      long[] mass,
      boolean[] there,
      int neededUntil) {
    /** For units not used by the end, and for everything not used by the day. */
    static final int NEVER = Integer.MAX_VALUE;
  }

  /** The block belongs to reference {@code ref} of apart rule {@code rule}, needed until a day. */
  record Tag(int rule, int ref, int neededUntil) {}

  long departureMass() {
    return massSince[0][0];
  }

  /** Mass on the morning it weighs most. */
  long peakMass() {
    long peak = 0;
    for (long mass : massSince[0]) {
      peak = Math.max(peak, mass);
    }
    return peak;
  }
}
