package dev.faircarry.weigh;

import dev.faircarry.trip.Limits;

/** Every limit of readings; openapi/ states the same numbers and a test compares them. */
public final class WeighLimits {
  private WeighLimits() {}

  /** Readings of one request. */
  public static final int READINGS = 1000;

  /** Of a time and of a source, in the client's words. */
  public static final int TEXT_LENGTH = 120;

  /** More than nothing, and at most 200 kg, as for things. */
  public static final long MASS_MILLIGRAMS = Limits.ITEM_MASS_MILLIGRAMS;

  /** A tolerance: at most 5 kg and 10 %. */
  public static final long TOLERANCE_MILLIGRAMS = 5_000_000L;

  public static final int TOLERANCE_THOUSANDTHS = 100;
}
