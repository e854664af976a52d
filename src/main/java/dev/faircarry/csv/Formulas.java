package dev.faircarry.csv;

/**
 * Keeps spreadsheets from taking a cell for a formula, and takes that back.
 *
 * <p>OWASP, CSV Injection: a cell that begins with one of {@code = + - @}, tab, carriage return,
 * line feed, or the full-width forms of the signs gets an apostrophe before it; and because a
 * program may split at another separator than was meant, so does what stands behind a separator or
 * line end inside a cell. An apostrophe that stands there already gets another, so that taking one
 * away always gives the cell back.
 */
final class Formulas {
  private static final String SIGNS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
  private static final String SEPARATORS = ",;\t\r\n";

  private Formulas() {}

  /** The cell as it is written. */
  static String guarded(String cell) {
    return changed(cell, 1);
  }

  /** The cell as it was before it was written. */
  static String restored(String cell) {
    return changed(cell, -1);
  }

  /** With so many apostrophes more or fewer before each sign that could begin a formula. */
  private static String changed(String cell, int more) {
    StringBuilder out = new StringBuilder(cell.length() + 1);
    boolean begins = true;
    int at = 0;
    while (at < cell.length()) {
      if (begins) {
        int sign = at;
        while (sign < cell.length() && cell.charAt(sign) == '\'') {
          sign++;
        }
        boolean formula = sign < cell.length() && SIGNS.indexOf(cell.charAt(sign)) >= 0;
        out.append("'".repeat(Math.max(0, sign - at + (formula ? more : 0))));
        at = sign;
        begins = false;
      } else {
        out.append(cell.charAt(at));
        begins = SEPARATORS.indexOf(cell.charAt(at)) >= 0;
        at++;
      }
    }
    return out.toString();
  }
}
