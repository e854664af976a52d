package dev.faircarry.csv;

import dev.faircarry.check.Issue;
import dev.faircarry.json.Reading;
import dev.faircarry.json.TripReader;
import dev.faircarry.trip.Trip;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Tables put into a small trip, for tests. */
public final class TableIssues {
  /** One hiker, two days, nothing shared. */
  public static final Trip BASE =
      trip(
          """
          {"format": "faircarry-trip/1", "name": "Base", "days": 2,
           "hikers": [{"id": "ada", "name": "Ada", "targetLoad": "12 kg"}]}
          """);

  private TableIssues() {}

  static Trip trip(String document) {
    Reading<Trip> reading = TripReader.read(document.getBytes(StandardCharsets.UTF_8));
    if (reading instanceof Reading.Bad<Trip> bad) {
      throw new AssertionError(bad.issues());
    }
    return ((Reading.Read<Trip>) reading).value();
  }

  static byte[] bytes(String table) {
    return table.getBytes(StandardCharsets.UTF_8);
  }

  static TableReading<Trip> read(Table table, String text) {
    return TripTables.into(BASE, Map.of(table, bytes(text)), TripTables.Way.REPLACE);
  }

  /** The trip with this table, which must have no issues. */
  static Trip of(Table table, String text) {
    return value(read(table, text));
  }

  static <T> T value(TableReading<T> reading) {
    if (reading instanceof TableReading.Bad<T> bad) {
      throw new AssertionError(bad.issues());
    }
    return ((TableReading.Read<T>) reading).value();
  }

  /** The issues of a table in {@link #BASE}. */
  public static List<Issue> of(Table table, byte[] bytes) {
    return issues(TripTables.into(BASE, Map.of(table, bytes), TripTables.Way.REPLACE));
  }

  static List<Issue> issues(TableReading<?> reading) {
    if (reading instanceof TableReading.Bad<?> bad) {
      return bad.issues();
    }
    throw new AssertionError("nothing is wrong: " + reading);
  }

  /** Each issue as {@code code place}. */
  static List<String> codes(Table table, String text) {
    return codes(of(table, bytes(text)));
  }

  static List<String> codes(List<Issue> issues) {
    return issues.stream().map(i -> i.code().text() + " @ " + i.place()).toList();
  }
}
