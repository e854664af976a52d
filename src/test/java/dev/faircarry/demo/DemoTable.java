package dev.faircarry.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The table of demo trips in the README. */
final class DemoTable {
  private static final String ROW_START = "| [";

  private DemoTable() {}

  /**
   * One line.
   *
   * @param best highest target ratio, or "impossible"
   */
  record Row(String name, String size, String best) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Row> rows() {
    try {
      return Files.readAllLines(Path.of("README.md")).stream()
          .filter(line -> line.startsWith(ROW_START) && line.contains("(demo-data/"))
          .filter(line -> !line.contains("(demo-data/plans/"))
          .map(DemoTable::row)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(String line) {
    String[] cells = line.split("\\|", -1);
    String link = cells[1].strip();
    String name = link.substring(1, link.indexOf(']'));
    if (!link.equals("[" + name + "](demo-data/" + name + ".json)")) {
      throw new AssertionError("not a link to a demo trip: " + link);
    }
    return new Row(name, cells[3].strip(), cells[4].strip());
  }
}
