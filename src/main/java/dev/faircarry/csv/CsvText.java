package dev.faircarry.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import dev.faircarry.check.Cell;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Takes the bytes of a table apart into rows: UTF-8 with or without byte order mark, comma or
 * semicolon as the header has it. The library's own messages quote the table; none of them is
 * passed on.
 */
final class CsvText {
  private final Table table;
  private final CellIssues issues;

  private CsvText(Table table, CellIssues issues) {
    this.table = table;
    this.issues = issues;
  }

  /** The rows below the header that are not empty; as far as they can be read. */
  static List<Row> rows(Table table, byte[] bytes, CellIssues issues) {
    CsvText text = new CsvText(table, issues);
    return text.decoded(bytes).map(text::rows).orElse(List.of());
  }

  private Optional<String> decoded(byte[] bytes) {
    if (bytes.length > CsvLimits.BYTES) {
      return stop(
          IssueCode.DOCUMENT_TOO_LARGE,
          0,
          "The table has more than " + CsvLimits.BYTES + " bytes; no more are read.");
    }
    CharBuffer text = CharBuffer.allocate(bytes.length);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(in, text, true);
    if (result.isError()) {
      return stop(
          IssueCode.NOT_UTF_8, 0, "Byte " + (in.position() + 1) + " is not part of UTF-8 text.");
    }
    String all = text.flip().toString();
    return Optional.of(all.startsWith("\uFEFF") ? all.substring(1) : all);
  }

  private Optional<String> stop(IssueCode code, int row, String message) {
    issues.add(code, new Cell(table.text(), row, ""), "", message);
    return Optional.empty();
  }

  private List<Row> rows(String text) {
    List<Row> rows = new ArrayList<>();
    int row = 1;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator(text))
            .allowUnclosedQuote(false)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            // Empty lines count as rows, as they do in a spreadsheet, so they are passed over here.
            .skipEmptyLines(false)
            .ofCsvRecord(text)) {
      Iterator<CsvRecord> records = reader.iterator();
      List<String> names = records.hasNext() ? records.next().getFields() : List.of();
      if (names.stream().allMatch(String::isBlank)) {
        stop(IssueCode.NOT_CSV, 1, "The first row holds no names of columns.");
        return rows;
      }
      Map<Integer, String> header = header(names);
      for (row = 2; records.hasNext(); row++) {
        List<String> cells = records.next().getFields();
        boolean empty = cells.stream().allMatch(String::isBlank);
        if (!empty && rows.size() == CsvLimits.ROWS) {
          tooManyRows(row);
          break;
        }
        if (!empty) {
          rows.add(row(header, names.size(), row, cells));
        }
      }
    } catch (CsvParseException e) {
      stop(
          IssueCode.NOT_CSV,
          row,
          "The row cannot be read: a quotation mark is not closed, text follows a closed one, or the"
              + " row has thousands of cells.");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }

  private void tooManyRows(int row) {
    issues.add(
        IssueCode.TOO_MANY,
        new Cell(table.text(), row, ""),
        "",
        "The table has more than " + CsvLimits.ROWS + " rows.",
        "Shorten the table to at most " + CsvLimits.ROWS + " rows.");
  }

  /** What the header separates its names by: no name of ours holds either. */
  private static char separator(String text) {
    int commas = 0;
    int semicolons = 0;
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == '\r' || c == '\n')) {
        break;
      } else if (!quoted) {
        commas += c == ',' ? 1 : 0;
        semicolons += c == ';' ? 1 : 0;
      }
    }
    return semicolons > commas ? ';' : ',';
  }

  /** Position to name, of the columns that are read. */
  private Map<Integer, String> header(List<String> names) {
    Map<Integer, String> header = new LinkedHashMap<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < Math.min(names.size(), CsvLimits.COLUMNS); i++) {
      String name = names.get(i).strip();
      Cell at = new Cell(table.text(), 1, Issues.shortened(name));
      if (name.isEmpty()) {
        continue;
      }
      if (!table.columns().contains(name)) {
        // The name stands for the value, which may be a body mass under a wrong name.
        issues.add(
            IssueCode.UNKNOWN_FIELD,
            at,
            name,
            "The table \"" + table.text() + "\" has no column of this name.",
            "Columns known here: " + String.join(", ", table.columns()) + ".");
      } else if (!seen.add(name)) {
        issues.add(IssueCode.DUPLICATE_FIELD, at, name, "Two columns have this name.");
      } else {
        header.put(i, name);
      }
    }
    if (names.size() > CsvLimits.COLUMNS) {
      issues.add(
          IssueCode.TOO_MANY,
          new Cell(table.text(), 1, ""),
          String.valueOf(names.size()),
          "The table has " + names.size() + " columns; at most " + CsvLimits.COLUMNS + " are read.",
          "Remove the columns that are too many.");
    }
    table.needed().stream().filter(needed -> !seen.contains(needed)).forEach(this::missing);
    if (table.columns().contains("name") && !seen.contains("name") && !seen.contains("id")) {
      missing("name");
    }
    return header;
  }

  private void missing(String column) {
    issues.add(
        IssueCode.MISSING,
        new Cell(table.text(), 1, column),
        "",
        "The column \"" + column + "\" is needed and not there.",
        "Add the column \"" + column + "\".");
  }

  private Row row(Map<Integer, String> header, int width, int number, List<String> cells) {
    Map<String, String> values = new HashMap<>();
    header.forEach(
        (at, name) -> {
          if (at < cells.size() && !cells.get(at).isBlank()) {
            values.put(name, Formulas.restored(cells.get(at)));
          }
        });
    boolean tooMany = cells.stream().skip(width).anyMatch(cell -> !cell.isBlank());
    if (tooMany) {
      issues.add(
          IssueCode.RAGGED_ROW,
          new Cell(table.text(), number, ""),
          String.valueOf(cells.size()),
          "The row has " + cells.size() + " cells, the table " + width + " columns.");
    }
    return new Row(table, number, values, issues);
  }
}
