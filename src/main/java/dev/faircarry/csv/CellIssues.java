package dev.faircarry.csv;

import dev.faircarry.check.Cell;
import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.trip.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Gathers what is wrong with tables while they are read. Keeps a bounded number. */
final class CellIssues {
  /** More than are reported, so that the first in the order of rows can be chosen. */
  private static final int KEPT = 10 * Limits.ISSUES;

  private final List<Issue> kept = new ArrayList<>();
  private final Set<Cell> cells = new HashSet<>();
  private boolean untold;

  void add(IssueCode code, Cell at, String value, String message) {
    add(code, at, value, message, code.remedy());
  }

  /**
   * @param value as it stands in the table, shortened here; empty where it is private or absent
   */
  void add(IssueCode code, Cell at, String value, String message, String remedy) {
    add(new Issue(code, "", Issues.shortened(value), message, remedy, Optional.of(at)));
  }

  /**
   * Notes an issue; not of a cell whose row is noted as a whole, for its cells may have slipped,
   * nor of one in a column that is missing.
   */
  void add(Issue issue) {
    if (issue.cell().filter(this::explained).isPresent()) {
      return;
    }
    issue.cell().ifPresent(cells::add);
    if (kept.size() < KEPT) {
      kept.add(issue);
    } else {
      untold = true;
    }
  }

  private boolean explained(Cell cell) {
    return cells.contains(new Cell(cell.table(), cell.row(), ""))
        || (cell.row() > 1 && cells.contains(new Cell(cell.table(), 1, cell.column())));
  }

  boolean isEmpty() {
    return kept.isEmpty();
  }

  /** Whether something is noted of just this cell, or of its whole row. */
  boolean has(Cell cell) {
    return cells.contains(cell) || cells.contains(new Cell(cell.table(), cell.row(), ""));
  }

  /** Whether something is noted of one of these columns, or of a row or a table as a whole. */
  boolean hasAny(Table table, Set<String> columns) {
    return cells.stream()
        .anyMatch(
            cell ->
                cell.table().equals(table.text())
                    && (cell.column().isEmpty()
                        || cell.row() <= 1
                        || columns.contains(cell.column())));
  }

  /** All of it in the order of tables, rows and columns; what is of no table comes last. */
  <T> TableReading<T> bad() {
    List<Issue> sorted = new ArrayList<>(kept);
    sorted.sort(
        Comparator.comparingInt(CellIssues::table)
            .thenComparingInt(CellIssues::row)
            .thenComparingInt(CellIssues::column));
    boolean more = untold || sorted.size() > Limits.ISSUES;
    return new TableReading.Bad<>(sorted.subList(0, Math.min(sorted.size(), Limits.ISSUES)), more);
  }

  private static int table(Issue issue) {
    return issue.cell().flatMap(cell -> Table.of(cell.table())).map(Table::ordinal).orElse(99);
  }

  private static int column(Issue issue) {
    return issue
        .cell()
        .flatMap(cell -> Table.of(cell.table()).map(t -> t.columns().indexOf(cell.column())))
        .orElse(-1);
  }

  private static int row(Issue issue) {
    return issue.cell().map(Cell::row).orElse(0);
  }
}
