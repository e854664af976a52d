package dev.faircarry.csv;

import dev.faircarry.app.TripNames;
import dev.faircarry.check.IssueCode;
import dev.faircarry.split.CampHandover;
import dev.faircarry.split.Carry;
import dev.faircarry.split.Opened;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.PieceRef;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Splits: who carries what, whose units are opened when, what is handed over at which camp. Whether
 * a split fits its trip is not judged here: that is the verdict.
 */
public final class SplitTable {
  private enum Kind {
    CARRIES,
    OPENS,
    HANDS_OVER
  }

  private final WhoIs who;
  private final List<Carry> carries = new ArrayList<>();
  private final List<Opened> opened = new ArrayList<>();
  private final List<CampHandover> handovers = new ArrayList<>();
  private final Set<Carry> seen = new HashSet<>();

  private SplitTable(WhoIs who) {
    this.who = who;
  }

  /**
   * Reads a split, made by hand or written here.
   *
   * @param hikers who may be named by name; without them only ids are understood
   */
  public static TableReading<Split> read(byte[] bytes, List<Hiker> hikers) {
    CellIssues issues = new CellIssues();
    SplitTable table = new SplitTable(new WhoIs(hikers));
    CsvText.rows(Table.SPLIT, bytes, issues).forEach(table::row);
    return issues.isEmpty()
        ? new TableReading.Read<>(new Split(table.carries, table.opened, table.handovers))
        : issues.bad();
  }

  private void row(Row row) {
    String hiker = hiker(row, "hiker");
    PieceRef piece = piece(row);
    int units = row.within("units", 1, Limits.PIECES);
    switch (row.word("kind", Kind.values(), Kind.CARRIES)) {
      case CARRIES -> {
        row.refuse(List.of("day", "to"), "What is carried from departure on has neither.");
        if (!seen.add(new Carry(hiker, piece, 1))) {
          row.note(
              IssueCode.DUPLICATE_NAME,
              "piece",
              "This hiker carries the piece in an earlier row.",
              "Keep one row for a hiker and a piece, with all its units.");
        }
        carries.add(new Carry(hiker, piece, units));
      }
      case OPENS -> {
        row.refuse(List.of("to"), "What is opened is not handed over.");
        opened.add(new Opened(day(row), piece.text(), hiker, units));
      }
      case HANDS_OVER ->
          handovers.add(new CampHandover(day(row), hiker, hiker(row, "to"), piece, units));
    }
  }

  private String hiker(Row row, String column) {
    String id = who.id(row.needed(column));
    row.id(column, id);
    return id;
  }

  private static PieceRef piece(Row row) {
    PieceRef piece = PieceRef.of(row.needed("piece"));
    row.id("piece", piece.item());
    piece.part().ifPresent(part -> row.id("piece", part));
    return piece;
  }

  private static int day(Row row) {
    if (!row.has("day")) {
      row.missing("day", "Write the day on which it is opened, or after which it is handed over.");
    }
    return row.within("day", 1, Limits.DAYS);
  }

  /** Writes a split, with the ids alone. */
  public static byte[] write(Split split) {
    return write(split, Optional.empty());
  }

  /** Writes a split, with the names its trip has beside the ids. */
  public static byte[] write(Split split, Trip trip) {
    return write(split, Optional.of(new TripNames(trip)));
  }

  private static byte[] write(Split split, Optional<TripNames> names) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (Carry carry : split.carries()) {
      rows.add(cells(Kind.CARRIES, carry.hiker(), carry.piece(), carry.units(), names).map());
    }
    for (Opened open : split.opened()) {
      PieceRef piece = PieceRef.of(open.item());
      rows.add(
          cells(Kind.OPENS, open.hiker(), piece, open.units(), names)
              .put("day", String.valueOf(open.day()))
              .map());
    }
    for (CampHandover handed : split.handoversAtCamp()) {
      rows.add(
          cells(Kind.HANDS_OVER, handed.from(), handed.piece(), handed.units(), names)
              .put("day", String.valueOf(handed.afterDay()))
              .put("to", handed.to())
              .map());
    }
    return TableWriter.write(Table.SPLIT, rows);
  }

  private static Cells cells(
      Kind kind, String hiker, PieceRef piece, int units, Optional<TripNames> names) {
    return new Cells()
        .put("kind", Row.wordOf(kind))
        .put("hiker", hiker)
        .text("hikerName", names.map(n -> n.hiker(hiker)))
        .put("piece", piece.text())
        .text("pieceName", names.map(n -> n.piece(piece)))
        .put("units", String.valueOf(units));
  }
}
