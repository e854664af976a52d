package dev.faircarry.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The page openapi/csv-columns.md says what is so. */
class ColumnsPageTest {
  private final String page;

  ColumnsPageTest() throws IOException {
    page = Files.readString(Path.of("openapi/csv-columns.md"));
  }

  @ParameterizedTest
  @EnumSource(Table.class)
  void everyColumnIsThereInItsOrder(Table table) {
    String section = page.split("\n## " + table.text() + "\n", 2)[1].split("\n## ", 2)[0];
    List<String> columns =
        section
            .lines()
            .filter(line -> line.matches("\\| [A-Za-z]+ \\|.*"))
            .map(line -> line.split("\\|", 3)[1].strip())
            .filter(name -> !name.equals("column"))
            .toList();
    assertEquals(table.columns(), columns);
  }

  @Test
  void theLimitsAreThoseOfTheProgram() {
    String limits =
        String.format(
            Locale.ROOT,
            "%,d bytes, %,d rows and %d columns",
            CsvLimits.BYTES,
            CsvLimits.ROWS,
            CsvLimits.COLUMNS);
    assertTrue(page.contains(limits), limits);
  }

  @Test
  void theShownTableIsRead() {
    String shown = page.split("```csv\n", 2)[1].split("```", 2)[0];
    assertEquals(1, TableIssues.of(Table.SHARED, shown).shared().size());
  }
}
