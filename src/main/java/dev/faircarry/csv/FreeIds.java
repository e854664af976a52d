package dev.faircarry.csv;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Gives ids to rows that have none: letter and number, counted from 1, skipping those in use. The
 * same table always gets the same ids.
 */
final class FreeIds {
  private final String letter;
  private final Set<String> taken;
  private int last;

  /**
   * @param taken ids that are used elsewhere
   */
  FreeIds(String letter, Set<String> taken, List<Row> rows) {
    this.letter = letter;
    this.taken = new HashSet<>(taken);
    rows.forEach(row -> row.text("id").ifPresent(this.taken::add));
  }

  /** The row's own id, or the next free one. */
  String of(Row row) {
    return row.text("id").orElseGet(this::next);
  }

  private String next() {
    do {
      last++;
    } while (taken.contains(letter + last));
    return letter + last;
  }

  /** The name of a row with this id: the id, where only that is stated. */
  static String name(Row row, String id) {
    if (!row.has("name") && !row.has("id")) {
      row.missing("name", "Write a name or an id.");
    }
    return row.text("name").orElse(id);
  }
}
