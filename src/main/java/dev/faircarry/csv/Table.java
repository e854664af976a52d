package dev.faircarry.csv;

import dev.faircarry.unit.Mass;
import dev.faircarry.unit.Parse;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The tables there are, with their columns in the order in which they are written. */
@SuppressWarnings("ImmutableEnumChecker") // the lists are copies that nobody can change
public enum Table {
  /** One row for each hiker, with the pack. */
  HIKERS(
      List.of(),
      "id",
      "name",
      "bodyMass",
      "targetLoad",
      "targetFraction",
      "capFraction",
      "capLoad",
      "maxPieces",
      "party",
      "minor",
      "leavesAfterDay",
      "packMass",
      "packMassFrom",
      "packVolume",
      "packLoadRating",
      "packCost",
      "packLabelMass"),

  /** One row for each thing of a hiker's own. */
  KIT(
      List.of("hiker", "mass"),
      "hiker",
      "id",
      "name",
      "mass",
      "massFrom",
      "volume",
      "cost",
      "stow",
      "worn",
      "luxury",
      "covers",
      "use",
      "leaves",
      "containsKind",
      "containsVolume",
      "purpose",
      "labelMass"),

  /** One row for each shared item, and one for each part. */
  SHARED(
      List.of("mass"),
      "id",
      "part",
      "name",
      "mass",
      "massFrom",
      "volume",
      "stow",
      "count",
      "perPersonDay",
      "use",
      "perDay",
      "leaves",
      "onDays",
      "covers",
      "owner",
      "sleeps",
      "goesInto",
      "containsKind",
      "containsVolume",
      "cost",
      "purpose"),

  /** One row for each piece a hiker carries, for each opening and each handover at a camp. */
  SPLIT(
      List.of("hiker", "piece"),
      "kind",
      "hiker",
      "hikerName",
      "piece",
      "pieceName",
      "units",
      "day",
      "to"),

  /** One row for each reading of a scale. */
  READINGS(
      List.of("kind", "mass"),
      "kind",
      "hiker",
      "item",
      "piece",
      "mass",
      "at",
      "source",
      "confirmed");

  private static final Set<String> SHOWN_OF_HIKERS = Set.of("id", "name", "party");

  private final List<String> needed;
  private final List<String> columns;

  Table(List<String> needed, String... columns) {
    this.needed = needed;
    this.columns = List.of(columns);
  }

  /** The name as it stands in addresses and issues. */
  public String text() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The table of this name. */
  public static Optional<Table> of(String text) {
    return Arrays.stream(values()).filter(table -> table.text().equals(text)).findFirst();
  }

  /** All columns that are read and written. */
  public List<String> columns() {
    return columns;
  }

  /**
   * Whether issues show what stands in a cell. Of hikers they show little: in a row in which cells
   * have slipped, any of them can be a body mass.
   */
  boolean shows(String column, String value) {
    return this != HIKERS
        || (SHOWN_OF_HIKERS.contains(column) && !(Mass.parse(value) instanceof Parse.Read));
  }

  /** The columns without which no row could be read. */
  List<String> needed() {
    return needed;
  }
}
