package dev.faircarry.cli;

import java.util.ArrayList;
import java.util.List;

/** Columns and paragraphs in plain characters. */
final class Text {
  private static final int WIDTH = 88;

  private final StringBuilder out = new StringBuilder();

  Text line(String text) {
    out.append(text).append('\n');
    return this;
  }

  Text blank() {
    return line("");
  }

  /** A text in lines of at most {@value #WIDTH} characters, later lines under the first. */
  Text wrapped(String first, String text) {
    String indent = " ".repeat(columns(first));
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : text.split(" ", -1)) {
      if (!empty && columns(line.toString()) + 1 + columns(word) > WIDTH) {
        line(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    return line(line.toString());
  }

  /** Rows in columns; the first column left, the others right. */
  Text table(List<List<String>> rows) {
    List<Integer> widths = new ArrayList<>();
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        int width = columns(row.get(i));
        if (i == widths.size()) {
          widths.add(width);
        } else {
          widths.set(i, Math.max(widths.get(i), width));
        }
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.size(); i++) {
        String gap = " ".repeat(widths.get(i) - columns(row.get(i)));
        line.append(i == 0 ? row.get(i) + gap : "  " + gap + row.get(i));
      }
      line(line.toString().stripTrailing());
    }
    return this;
  }

  /** How many columns a text takes: combining marks none, wide characters of East Asia two. */
  static int columns(String text) {
    return text.codePoints().map(Text::columnsOf).sum();
  }

  private static int columnsOf(int c) {
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    boolean wide =
        (c >= 0x1100 && c <= 0x115F)
            || (c >= 0x2E80 && c <= 0xA4CF)
            || (c >= 0xAC00 && c <= 0xD7A3)
            || (c >= 0xF900 && c <= 0xFAFF)
            || (c >= 0xFF00 && c <= 0xFF60)
            || (c >= 0x1F300 && c <= 0x1FAFF);
    return wide ? 2 : 1;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
