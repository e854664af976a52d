package dev.faircarry.json;

import dev.faircarry.check.Issue;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Leaves out issues that only follow from others: where a value could not be read a stand-in was
 * put, and what is wrong with a stand-in is nobody's fault.
 */
final class Consequences {
  private static final String HIKERS = "/hikers(/[0-9]+";
  private static final String SHARED = "/shared(/[0-9]+";

  private static final Pattern DAYS = Pattern.compile("/days");
  private static final Pattern HIKER_IDS = Pattern.compile(HIKERS + "(/id)?)?");
  private static final Pattern PARTIES = Pattern.compile(HIKERS + "(/party)?)?");
  private static final Pattern PRESENCE =
      Pattern.compile("/days|" + HIKERS + "(/leavesAfterDay)?)?");
  private static final Pattern PIECES = Pattern.compile(SHARED + "(/id|/parts(/[0-9]+(/id)?)?)?)?");
  private static final Pattern CONTAINERS =
      Pattern.compile(HIKERS + "(/kit(/[0-9]+(/contains.*)?)?)?)?|" + SHARED + "(/contains.*)?)?");

  private static final Pattern THINGS =
      Pattern.compile(SHARED + "(/id)?)?|" + HIKERS + "(/id|/kit(/[0-9]+(/id)?)?)?)?");

  /** A list of a plan with an entry that is no object; what comes after it has moved up. */
  private static final Pattern MOVED = Pattern.compile("/plan/.*/[0-9]+");

  /** Codes whose cause can be any fault beside them. */
  private static final Set<IssueCode> OF_ONE_LIST =
      Set.of(IssueCode.DAYS_NOT_RISING, IssueCode.CONTRADICTION);

  private final Set<String> places;

  /** Lists of which an entry has a fault of its own. */
  private final Set<String> lists = new HashSet<>();

  private final Set<String> moved = new HashSet<>();
  private final Map<Pattern, Boolean> found = new HashMap<>();

  private Consequences(Set<String> places) {
    this.places = places;
    places.stream().filter(place -> !place.isEmpty()).map(Consequences::above).forEach(lists::add);
    places.stream()
        .filter(place -> MOVED.matcher(place).matches())
        .map(Consequences::above)
        .forEach(moved::add);
  }

  /** What is left of {@code issues} once those are gone that follow from {@code earlier} ones. */
  static List<Issue> dropped(List<Issue> issues, Issues earlier) {
    Consequences consequences = new Consequences(earlier.pointers());
    List<Issue> left = new ArrayList<>();
    for (Issue issue : issues) {
      if (!consequences.follows(issue)) {
        left.add(issue);
      }
    }
    return left;
  }

  private boolean follows(Issue issue) {
    return places.contains(issue.pointer())
        || (OF_ONE_LIST.contains(issue.code()) && lists.contains(above(issue.pointer())))
        || hasMoved(issue.pointer())
        || cause(issue.code()).filter(this::anyPlace).isPresent();
  }

  private boolean hasMoved(String pointer) {
    String place = pointer;
    while (place.startsWith("/plan/")) {
      place = above(place);
      if (moved.contains(place)) {
        return true;
      }
    }
    return false;
  }

  private boolean anyPlace(Pattern pattern) {
    return found.computeIfAbsent(
        pattern, p -> places.stream().anyMatch(place -> p.matcher(place).matches()));
  }

  private static String above(String pointer) {
    return pointer.substring(0, pointer.lastIndexOf('/'));
  }

  private static Optional<Pattern> cause(IssueCode code) {
    return switch (code) {
      case NO_SUCH_DAY, WRONG_LENGTH -> Optional.of(DAYS);
      case NOBODY_PRESENT, TOO_MANY_PIECES -> Optional.of(PRESENCE);
      case UNKNOWN_HIKER -> Optional.of(HIKER_IDS);
      case UNKNOWN_PARTY -> Optional.of(PARTIES);
      case UNKNOWN_PIECE -> Optional.of(PIECES);
      case NO_CONTAINER -> Optional.of(CONTAINERS);
      case UNKNOWN_THING -> Optional.of(THINGS);
      default -> Optional.empty();
    };
  }
}
