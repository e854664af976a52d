package dev.faircarry.check;

/**
 * A place in a table.
 *
 * @param table name of the table, as in {@code kit}
 * @param row row as a spreadsheet counts: the header is row 1; 0 for the table as a whole
 * @param column name of the column; empty for the whole row
 */
public record Cell(String table, int row, String column) {

  /** The place as people read it. */
  public String text() {
    return table + (row == 0 ? "" : ", row " + row) + (column.isEmpty() ? "" : ", " + column);
  }
}
