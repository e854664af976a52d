package dev.faircarry.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Several entries in one cell, with an upright stroke between them: {@code 4|4|2}. Spaces around an
 * entry do not count; a backslash takes the sign behind it as it is.
 */
final class CellList {
  private static final char BETWEEN = '|';
  private static final char AS_IT_IS = '\\';

  private CellList() {}

  static List<String> entries(String cell) {
    List<String> entries = new ArrayList<>();
    StringBuilder entry = new StringBuilder();
    int kept = 0;
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == BETWEEN) {
        entries.add(trimmed(entry, kept));
        entry.setLength(0);
        kept = 0;
      } else if (c == AS_IT_IS && i + 1 < cell.length()) {
        entry.append(cell.charAt(++i));
        kept = entry.length();
      } else if (c != ' ' || !entry.isEmpty()) {
        entry.append(c);
      }
    }
    // A stroke at the end closes the last entry and begins none: a list of one entry needs it.
    if (entries.isEmpty() || !entry.isEmpty()) {
      entries.add(trimmed(entry, kept));
    }
    return entries;
  }

  /**
   * Without the spaces at the end, but for those that were kept on purpose.
   *
   * @param kept so many characters stay, spaces or not
   */
  private static String trimmed(StringBuilder entry, int kept) {
    int end = entry.length();
    while (end > kept && entry.charAt(end - 1) == ' ') {
      end--;
    }
    return entry.substring(0, end);
  }

  static String cell(List<?> entries) {
    return entries.stream()
        .map(entry -> written(String.valueOf(entry)))
        .collect(Collectors.joining(String.valueOf(BETWEEN)));
  }

  private static String written(String entry) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < entry.length(); i++) {
      char c = entry.charAt(i);
      boolean edge = c == ' ' && (i == 0 || i == entry.length() - 1);
      if (c == BETWEEN || c == AS_IT_IS || edge) {
        out.append(AS_IT_IS);
      }
      out.append(c);
    }
    return out.toString();
  }
}
