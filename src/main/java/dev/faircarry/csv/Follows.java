package dev.faircarry.csv;

import dev.faircarry.check.IssueCode;
import java.util.Set;

/**
 * Which issues only follow from others: where a cell could not be read a stand-in was put, and what
 * is wrong with a stand-in is nobody's fault.
 */
final class Follows {
  private Follows() {}

  /** Whether an issue with this code may follow from what is noted already. */
  static boolean from(IssueCode code, CellIssues noted) {
    return switch (code) {
      case UNKNOWN_HIKER -> noted.hasAny(Table.HIKERS, Set.of("id", "name"));
      case UNKNOWN_PARTY -> noted.hasAny(Table.HIKERS, Set.of("party"));
      case EMPTY_GROUP -> noted.hasAny(Table.HIKERS, Set.of());
      case NOBODY_PRESENT, TOO_MANY_PIECES ->
          noted.hasAny(Table.HIKERS, Set.of("leavesAfterDay"))
              || noted.hasAny(Table.SHARED, Set.of("count", "perPersonDay"));
      case UNKNOWN_PIECE -> noted.hasAny(Table.SHARED, Set.of("id", "part"));
      case NO_CONTAINER ->
          noted.hasAny(Table.KIT, Set.of("hiker", "containsKind", "containsVolume"))
              || noted.hasAny(Table.SHARED, Set.of("containsKind", "containsVolume"));
      case UNKNOWN_THING ->
          noted.hasAny(Table.HIKERS, Set.of("id", "name"))
              || noted.hasAny(Table.KIT, Set.of("hiker", "id", "name"))
              || noted.hasAny(Table.SHARED, Set.of("id", "name"));
      default -> false;
    };
  }

  /** Whether an issue with this code can only be judged with the rest of a trip. */
  static boolean fromTheRest(IssueCode code) {
    return switch (code) {
      case UNKNOWN_HIKER, NO_CONTAINER, NOBODY_PRESENT, WRONG_LENGTH -> true;
      default -> false;
    };
  }
}
