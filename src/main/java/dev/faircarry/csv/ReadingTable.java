package dev.faircarry.csv;

import dev.faircarry.check.Cell;
import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import dev.faircarry.weigh.ReadingIssues;
import dev.faircarry.weigh.ScaleReading;
import dev.faircarry.weigh.WeighLimits;
import dev.faircarry.weigh.Weighed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Readings of a scale. */
public final class ReadingTable {
  private enum Kind {
    WHOLE_PACK,
    EMPTY_PACK,
    KIT,
    PIECE
  }

  private final WhoIs who;
  private final CellIssues issues = new CellIssues();
  private final Places places = new Places();
  private final List<ScaleReading> readings = new ArrayList<>();

  private ReadingTable(WhoIs who) {
    this.who = who;
  }

  /** Reads readings by themselves; whether the things are there is not judged. */
  public static TableReading<List<ScaleReading>> read(byte[] bytes) {
    return new ReadingTable(new WhoIs(List.of())).rows(bytes, Optional.empty());
  }

  /** Reads readings of things of a trip, whose hikers may be named by name. */
  public static TableReading<List<ScaleReading>> read(byte[] bytes, Trip trip) {
    return new ReadingTable(new WhoIs(trip.hikers())).rows(bytes, Optional.of(trip));
  }

  private TableReading<List<ScaleReading>> rows(byte[] bytes, Optional<Trip> trip) {
    List<Row> rows = CsvText.rows(Table.READINGS, bytes, issues);
    if (rows.size() > WeighLimits.READINGS) {
      issues.add(
          IssueCode.TOO_MANY,
          new Cell(Table.READINGS.text(), 0, ""),
          String.valueOf(rows.size()),
          "There are " + rows.size() + " readings; at most " + WeighLimits.READINGS + " are read.");
    }
    rows.stream().limit(WeighLimits.READINGS).forEach(this::row);
    trip.ifPresent(this::judge);
    return issues.isEmpty() ? new TableReading.Read<>(List.copyOf(readings)) : issues.bad();
  }

  private void row(Row row) {
    if (!row.has("kind")) {
      row.missing("kind", "Use one of whole-pack, empty-pack, kit, piece.");
    }
    places.put(Pointer.ROOT.at(readings.size()), row);
    readings.add(
        new ScaleReading(
            weighed(row),
            KitTable.neededMass(row),
            row.text("at").orElse(""),
            row.text("source").orElse(""),
            row.flag("confirmed")));
  }

  private Weighed weighed(Row row) {
    Optional<Kind> kind = row.word("kind", List.of(Kind.values()), Kind.WHOLE_PACK);
    if (kind.isEmpty() || issues.has(row.at("kind"))) {
      return new Weighed.WholePack("");
    }
    if (kind.get() == Kind.PIECE) {
      row.refuse(List.of("hiker", "item"), "A shared piece is named by \"piece\" alone.");
      return new Weighed.Piece(PieceRef.of(row.needed("piece")));
    }
    row.refuse(List.of("piece"), "Only a shared piece is named by \"piece\".");
    String hiker = who.id(row.needed("hiker"));
    if (kind.get() == Kind.KIT) {
      return new Weighed.OfKit(hiker, row.needed("item"));
    }
    row.refuse(List.of("item"), "A pack is named by its hiker alone.");
    return kind.get() == Kind.EMPTY_PACK
        ? new Weighed.EmptyPack(hiker)
        : new Weighed.WholePack(hiker);
  }

  private void judge(Trip trip) {
    Issues found = new Issues();
    ReadingIssues.find(trip, readings, Pointer.ROOT, found);
    for (Issue issue : found.list()) {
      Cell cell = places.cell(issue.pointer()).orElseThrow();
      boolean kindUnclear = issues.has(new Cell(cell.table(), cell.row(), "kind"));
      if (!issues.has(cell) && !kindUnclear) {
        issues.add(issue.code(), cell, issue.value(), issue.message(), issue.remedy());
      }
    }
  }

  /** Writes readings. */
  public static byte[] write(List<ScaleReading> readings) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (ScaleReading reading : readings) {
      rows.add(
          subject(reading.weighed())
              .text("hiker", reading.weighed().of())
              .put("mass", reading.mass().entered())
              .put("at", reading.at())
              .put("source", reading.source())
              .flag("confirmed", reading.confirmed())
              .map());
    }
    return TableWriter.write(Table.READINGS, rows);
  }

  private static Cells subject(Weighed weighed) {
    if (weighed instanceof Weighed.WholePack) {
      return kind(Kind.WHOLE_PACK);
    }
    if (weighed instanceof Weighed.EmptyPack) {
      return kind(Kind.EMPTY_PACK);
    }
    if (weighed instanceof Weighed.OfKit kit) {
      return kind(Kind.KIT).put("item", kit.item());
    }
    return kind(Kind.PIECE).put("piece", ((Weighed.Piece) weighed).piece().text());
  }

  private static Cells kind(Kind kind) {
    return new Cells().put("kind", Row.wordOf(kind));
  }
}
