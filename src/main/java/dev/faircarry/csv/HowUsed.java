package dev.faircarry.csv;

/** The words of the column {@code use}. */
enum HowUsed {
  EVENLY,
  UNITS_PER_DAY;

  String text() {
    return Row.wordOf(this);
  }
}
