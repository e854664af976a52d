package dev.faircarry.csv;

import dev.faircarry.check.Cell;
import dev.faircarry.check.Pointer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which row stands at which place of the trip that the tables make. */
final class Places {
  /** Fields of a document that have another name as a column, or none. */
  private static final Map<String, String> COLUMNS =
      Map.ofEntries(
          Map.entry("unitMass", "mass"),
          Map.entry("unitVolume", "volume"),
          Map.entry("perPerson/countPerDay", "perPersonDay"),
          Map.entry("use/perDay", "perDay"),
          Map.entry("use/leaves", "leaves"),
          Map.entry("contains/kind", "containsKind"),
          Map.entry("contains/volume", "containsVolume"));

  private final Map<String, Row> rows = new HashMap<>();

  void put(Pointer thing, Row row) {
    rows.put(thing.text(), row);
  }

  /** The cell a place of the trip comes from, if it comes from a table. */
  Optional<Cell> cell(String pointer) {
    String thing = pointer;
    while (!thing.isEmpty()) {
      Row row = rows.get(thing);
      if (row != null) {
        return Optional.of(row.at(column(row, pointer.substring(thing.length()))));
      }
      thing = thing.substring(0, thing.lastIndexOf('/'));
    }
    return Optional.empty();
  }

  private static String column(Row row, String rest) {
    String field = rest.replaceFirst("(/[0-9]+)+$", "").replaceFirst("^/", "");
    if (row.has("part") && field.equals("id")) {
      return "part";
    }
    if (field.startsWith("pack/")) {
      String inPack = field.substring("pack/".length());
      return "pack" + inPack.substring(0, 1).toUpperCase(Locale.ROOT) + inPack.substring(1);
    }
    String column = COLUMNS.getOrDefault(field, field);
    return row.knows(column) ? column : "";
  }
}
