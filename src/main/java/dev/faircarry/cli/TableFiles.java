package dev.faircarry.cli;

import dev.faircarry.app.ServiceLimits;
import dev.faircarry.csv.ReadingTable;
import dev.faircarry.csv.SplitTable;
import dev.faircarry.csv.Table;
import dev.faircarry.csv.TableReading;
import dev.faircarry.csv.TripTables;
import dev.faircarry.json.Reading;
import dev.faircarry.json.ScaleDocument;
import dev.faircarry.json.SplitWriter;
import dev.faircarry.json.TripReader;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Files that may be tables in place of documents. What is wrong with a table ends the command with
 * {@link BadTable}.
 */
final class TableFiles {
  private final Documents documents;

  TableFiles(Documents documents) {
    this.documents = documents;
  }

  /**
   * A split document, from a file that is one or a table of it.
   *
   * @param trip document of its trip, whose hikers a table may call by name
   */
  byte[] split(String file, byte[] trip) {
    byte[] bytes = documents.read(file, ServiceLimits.REQUEST_BYTES);
    if (!isTable(file, bytes)) {
      return bytes;
    }
    boolean known = TripReader.read(trip) instanceof Reading.Read<Trip>;
    return SplitWriter.write(
        value(SplitTable.read(bytes, known ? tripOf(trip).hikers() : List.of())));
  }

  /** A document with readings, from a file that is one or a table of them. */
  byte[] readings(String file, byte[] trip) {
    byte[] bytes = documents.read(file, ServiceLimits.REQUEST_BYTES);
    if (!isTable(file, bytes)) {
      return bytes;
    }
    boolean known = TripReader.read(trip) instanceof Reading.Read<Trip>;
    return ScaleDocument.write(
        value(known ? ReadingTable.read(bytes, tripOf(trip)) : ReadingTable.read(bytes)));
  }

  private static Trip tripOf(byte[] trip) {
    return ((Reading.Read<Trip>) TripReader.read(trip)).value();
  }

  /** A trip with the tables of these files in it. */
  Trip trip(Trip frame, Map<Table, byte[]> tables) {
    return value(TripTables.into(frame, tables, TripTables.Way.REPLACE));
  }

  /** By the ending of the name; of standard input, whatever does not begin like JSON. */
  private static boolean isTable(String file, byte[] bytes) {
    if (!file.equals(Documents.STANDARD_INPUT)) {
      return file.toLowerCase(Locale.ROOT).endsWith(".csv");
    }
    String text = new String(bytes, StandardCharsets.UTF_8).replace("\uFEFF", "").strip();
    return !text.startsWith("{") && !text.startsWith("[");
  }

  private static <T> T value(TableReading<T> reading) {
    if (reading instanceof TableReading.Bad<T> bad) {
      throw new BadTable(bad.issues(), bad.more());
    }
    return ((TableReading.Read<T>) reading).value();
  }
}
