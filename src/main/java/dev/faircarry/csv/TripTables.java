package dev.faircarry.csv;

import dev.faircarry.check.Cell;
import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.check.TripIssues;
import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.KitItem;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Policy;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Puts tables into a trip and judges the whole. Everything that is wrong is told at once, with its
 * cell; what is wrong with the rest of the trip, with its place there.
 */
public final class TripTables {
  private static final Pointer HIKERS = Pointer.ROOT.at("hikers");
  private static final Pointer SHARED = Pointer.ROOT.at("shared");

  private final Trip base;
  private final Way way;
  private final CellIssues issues = new CellIssues();
  private final Places places = new Places();
  private final boolean alone;
  private boolean statesHidden;

  private TripTables(Trip base, Way way, boolean alone) {
    this.base = base;
    this.way = way;
    this.alone = alone;
  }

  /**
   * How tables go into a trip.
   *
   * @param append behind what the trip has, in place of instead of it
   * @param hidden ids of hikers whose body mass the author does not see: an empty cell keeps it, a
   *     filled one ends the reading
   * @param kitOf only the kit of this hiker is in the table of kits, and only that is changed
   */
  public record Way(boolean append, Set<String> hidden, Optional<String> kitOf) {
    /** In place of what the trip has, by somebody who sees everything. */
    public static final Way REPLACE = new Way(false, Set.of(), Optional.empty());

    public Way {
      hidden = Set.copyOf(hidden);
    }
  }

  /** The trip with what the tables hold; hikers keep a kit for which there is no table. */
  public static TableReading<Trip> into(Trip base, Map<Table, byte[]> tables, Way way) {
    return new TripTables(base, way, false).read(tables);
  }

  /**
   * One table by itself, in a trip of nothing else. What only the rest of a trip could tell is not
   * judged; a kit belongs to hikers of whom only what its table calls them is known.
   */
  public static TableReading<Trip> alone(Table table, byte[] bytes) {
    Trip nothing =
        new Trip(
            "-", Limits.DAYS, Policy.DEFAULT, List.of(), List.of(), List.of(), Optional.empty());
    return new TripTables(nothing, Way.REPLACE, true).read(Map.of(table, bytes));
  }

  private TableReading<Trip> read(Map<Table, byte[]> tables) {
    Map<Table, List<Row>> rows = new LinkedHashMap<>();
    for (Table table : Table.values()) {
      if (tables.containsKey(table)) {
        rows.put(table, CsvText.rows(table, tables.get(table), issues));
      }
    }
    List<Hiker> hikers =
        rows.containsKey(Table.HIKERS) ? hikers(rows.get(Table.HIKERS)) : base.hikers();
    if (statesHidden) {
      return new TableReading.StatesHidden<>();
    }
    if (alone && rows.containsKey(Table.KIT)) {
      hikers = named(rows.get(Table.KIT));
    }
    WhoIs who = new WhoIs(hikers);
    if (rows.containsKey(Table.KIT)) {
      hikers = kits(hikers, rows.get(Table.KIT), who);
    }
    List<SharedItem> shared =
        rows.containsKey(Table.SHARED) ? shared(rows.get(Table.SHARED), who) : base.shared();
    Trip trip =
        new Trip(
            base.name(), base.days(), base.policy(), hikers, shared, base.rules(), base.plan());
    judge(trip, rows.keySet());
    return issues.isEmpty() ? new TableReading.Read<>(trip) : issues.bad();
  }

  private List<Hiker> hikers(List<Row> rows) {
    Map<String, Hiker> before = new HashMap<>();
    base.hikers().forEach(hiker -> before.put(hiker.id(), hiker));
    List<Hiker> hikers = new ArrayList<>(way.append() ? base.hikers() : List.of());
    FreeIds ids = new FreeIds("h", way.append() ? before.keySet() : Set.of(), rows);
    for (Row row : rows) {
      places.put(HIKERS.at(hikers.size()), row);
      Hiker hiker = HikerTable.read(row, ids);
      Optional<Hiker> same = Optional.ofNullable(before.get(hiker.id()));
      boolean hides = way.hidden().contains(hiker.id());
      statesHidden |= hides && row.has("bodyMass");
      hikers.add(
          HikerTable.with(
              hiker,
              hides ? same.flatMap(Hiker::bodyMass) : hiker.bodyMass(),
              same.map(Hiker::kit).orElse(List.of())));
    }
    return hikers;
  }

  /** Whoever the rows of a kit name. */
  private static List<Hiker> named(List<Row> rows) {
    return rows.stream()
        .flatMap(row -> row.text("hiker").stream())
        .distinct()
        .map(HikerTable::known)
        .toList();
  }

  private List<Hiker> kits(List<Hiker> hikers, List<Row> rows, WhoIs who) {
    Map<String, List<Row>> byHiker = new HashMap<>();
    boolean doubtful = issues.hasAny(Table.HIKERS, Set.of("id", "name"));
    for (Row row : rows) {
      String hiker = owner(row, who, doubtful);
      byHiker.computeIfAbsent(hiker, h -> new ArrayList<>()).add(row);
    }
    List<Hiker> changed = new ArrayList<>();
    for (Hiker hiker : hikers) {
      boolean concerned = way.kitOf().map(hiker.id()::equals).orElse(true);
      changed.add(
          concerned
              ? HikerTable.with(
                  hiker,
                  hiker.bodyMass(),
                  kit(
                      hiker,
                      HIKERS.at(changed.size()),
                      byHiker.getOrDefault(hiker.id(), List.of())))
              : hiker);
    }
    return changed;
  }

  /**
   * The hiker a row of a kit belongs to; noted, where there is none.
   *
   * @param doubtful whether some hiker could not be read, and so may be the one
   */
  private String owner(Row row, WhoIs who, boolean doubtful) {
    String stated = row.text("hiker").map(who::id).orElseGet(() -> way.kitOf().orElse(""));
    if (stated.isEmpty()) {
      row.missing("hiker", "Write the id or the name of a hiker.");
    } else if (way.kitOf().filter(only -> !only.equals(stated)).isPresent()) {
      row.note(
          IssueCode.CONFLICTING_FIELDS,
          "hiker",
          "This is the kit of somebody else.",
          "Write \"" + way.kitOf().get() + "\", or leave the cell empty.");
    } else if (!who.knows(stated) && !doubtful) {
      row.note(
          IssueCode.UNKNOWN_HIKER,
          "hiker",
          "The trip has no hiker \"" + Issues.shortened(stated) + "\".",
          "Write the id of a hiker, or a name that only one hiker has.");
    }
    return stated;
  }

  private List<KitItem> kit(Hiker hiker, Pointer at, List<Row> rows) {
    List<KitItem> kit = new ArrayList<>(way.append() ? hiker.kit() : List.of());
    FreeIds ids = new FreeIds("k", kit.stream().map(KitItem::id).collect(Collectors.toSet()), rows);
    for (Row row : rows) {
      places.put(at.at("kit").at(kit.size()), row);
      kit.add(KitTable.read(row, ids));
    }
    return kit;
  }

  private List<SharedItem> shared(List<Row> rows, WhoIs who) {
    Map<String, List<Row>> parts = new LinkedHashMap<>();
    List<Row> items = new ArrayList<>();
    for (Row row : rows) {
      if (!row.has("part")) {
        items.add(row);
      } else if (row.has("id")) {
        parts.computeIfAbsent(row.text("id").orElseThrow(), id -> new ArrayList<>()).add(row);
      } else {
        row.missing("id", "Write the id of the item the part belongs to.");
      }
    }
    List<SharedItem> before = way.append() ? base.shared() : List.of();
    List<SharedItem> shared = new ArrayList<>(before);
    Set<String> taken = before.stream().map(SharedItem::id).collect(Collectors.toSet());
    FreeIds ids = new FreeIds("s", taken, rows);
    for (Row row : items) {
      String id = ids.of(row);
      List<Row> own = row.has("id") ? parts.getOrDefault(id, List.of()) : List.of();
      add(shared, withOwner(SharedTable.read(row, id, own), who), row, own);
      parts.remove(id);
    }
    parts.forEach((id, own) -> add(shared, SharedTable.ofParts(id, own), own.get(0), own));
    return shared;
  }

  private void add(List<SharedItem> shared, SharedItem item, Row row, List<Row> parts) {
    Pointer at = SHARED.at(shared.size());
    places.put(at, row);
    for (int i = 0; i < parts.size(); i++) {
      places.put(at.at("parts").at(i), parts.get(i));
    }
    shared.add(item);
  }

  private static SharedItem withOwner(SharedItem item, WhoIs who) {
    return new SharedItem(
        item.id(),
        item.name(),
        item.owner().map(who::id),
        item.covers(),
        item.sleeps(),
        item.cost(),
        item.goesInto(),
        item.onDays(),
        item.purpose(),
        item.form());
  }

  /** Notes what is wrong with the whole, but for what only follows from what is noted already. */
  private void judge(Trip trip, Set<Table> given) {
    List<Issue> found = new ArrayList<>();
    for (Issue issue : TripIssues.of(trip)) {
      Optional<Cell> cell = places.cell(issue.pointer()).or(() -> whole(issue.pointer(), given));
      boolean follows =
          cell.filter(issues::has).isPresent()
              || Follows.from(issue.code(), issues)
              || (alone && (cell.isEmpty() || Follows.fromTheRest(issue.code())));
      if (!follows) {
        found.add(cell.map(at -> told(issue, at)).orElse(issue));
      }
    }
    found.forEach(issues::add);
  }

  private static Optional<Cell> whole(String pointer, Set<Table> given) {
    return given.stream()
        .filter(table -> pointer.equals("/" + table.text()))
        .findFirst()
        .map(table -> new Cell(table.text(), 0, ""));
  }

  private static Issue told(Issue issue, Cell at) {
    boolean shows =
        Table.of(at.table()).map(t -> t.shows(at.column(), issue.value())).orElse(false);
    String message =
        issue.code() == IssueCode.DUPLICATE_ID
            ? "Another thing of this kind has the id \"" + issue.value() + "\"."
            : shows ? issue.message() : issue.code().meaning();
    return new Issue(
        issue.code(), "", shows ? issue.value() : "", message, issue.remedy(), Optional.of(at));
  }
}
