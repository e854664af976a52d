package dev.faircarry.csv;

import dev.faircarry.trip.Limits;

/** Every limit of a table; openapi/csv-columns.md states the same numbers. */
public final class CsvLimits {
  private CsvLimits() {}

  /** All kits of the largest group. */
  public static final int ROWS = Limits.HIKERS * Limits.KIT_ITEMS_PER_HIKER;

  /** More than any table has, for columns that are passed over as unknown. */
  public static final int COLUMNS = 100;

  public static final int BYTES = Limits.DOCUMENT_BYTES;
}
