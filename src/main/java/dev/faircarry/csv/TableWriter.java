package dev.faircarry.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Writes tables as RFC 4180 has it: commas, lines that end with CR LF, quotes where they are
 * needed, a header; UTF-8 without byte order mark. What a spreadsheet could take for a formula is
 * guarded.
 */
public final class TableWriter {
  private TableWriter() {}

  /**
   * A table of a trip.
   *
   * @param table hikers, kit or shared
   * @param trip as the reader of the table may see it
   */
  public static byte[] write(Table table, Trip trip) {
    List<Map<String, String>> rows = new ArrayList<>();
    switch (table) {
      case HIKERS -> trip.hikers().forEach(hiker -> rows.add(HikerTable.written(hiker)));
      case KIT -> trip.hikers().forEach(hiker -> rows.addAll(kit(hiker)));
      case SHARED -> trip.shared().forEach(item -> rows.addAll(SharedTable.written(item)));
      case SPLIT, READINGS -> throw new IllegalArgumentException("no table of a trip: " + table);
    }
    return write(table, rows);
  }

  /** The kit of one hiker. */
  public static byte[] kitOf(Trip trip, String hiker) {
    List<Map<String, String>> rows = new ArrayList<>();
    trip.hikers().stream()
        .filter(each -> each.id().equals(hiker))
        .forEach(each -> rows.addAll(kit(each)));
    return write(Table.KIT, rows);
  }

  private static List<Map<String, String>> kit(Hiker hiker) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (KitItem item : hiker.kit()) {
      rows.add(KitTable.written(hiker.id(), item));
    }
    return rows;
  }

  static byte[] write(Table table, List<Map<String, String>> rows) {
    List<String> columns = table.columns();
    StringWriter out = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out)) {
      writer.writeRecord(columns);
      for (Map<String, String> row : rows) {
        writer.writeRecord(
            columns.stream().map(c -> Formulas.guarded(row.getOrDefault(c, ""))).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }
}
