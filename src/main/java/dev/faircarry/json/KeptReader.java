package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.access.Role;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** Reads small requests about stored trips. */
public final class KeptReader {
  private static final Map<String, Role> ROLES =
      Map.of("leader", Role.LEADER, "hiker", Role.HIKER, "viewer", Role.VIEWER);

  private static final int MOST_DAYS = 3650;

  private KeptReader() {}

  /**
   * A link somebody wants.
   *
   * @param lasts how long it holds; empty for as long as the trip
   */
  public record WantedLink(Role role, Optional<String> hiker, Optional<Duration> lasts) {}

  /** Reads {@code {"role": "hiker", "hiker": "asha", "days": 30}}. */
  public static Reading<WantedLink> link(byte[] document) {
    return read(
        document,
        entry -> {
          Optional<Role> role = entry.word("role", ROLES, Role.VIEWER);
          if (role.isEmpty()) {
            entry.missing("role", "");
          }
          Optional<String> hiker = entry.text("hiker");
          if (role.filter(r -> r == Role.HIKER).isPresent() && hiker.isEmpty()) {
            entry.missing("hiker", "");
          }
          if (role.filter(r -> r != Role.HIKER).isPresent() && hiker.isPresent()) {
            entry
                .issues()
                .add(
                    IssueCode.UNKNOWN_FIELD,
                    entry.at().at("hiker"),
                    "hiker",
                    "Only a hiker's link names a hiker.");
          }
          OptionalInt days = days(entry);
          return new WantedLink(
              role.orElse(Role.VIEWER),
              hiker,
              days.isPresent() ? Optional.of(Duration.ofDays(days.getAsInt())) : Optional.empty());
        });
  }

  private static OptionalInt days(Entry entry) {
    OptionalInt days = entry.whole("days", 1);
    if (days.isPresent() && (days.getAsInt() < 1 || days.getAsInt() > MOST_DAYS)) {
      entry
          .issues()
          .add(
              IssueCode.OUT_OF_RANGE,
              entry.at().at("days"),
              String.valueOf(days.getAsInt()),
              "A link holds for 1 to " + MOST_DAYS + " days.",
              "Write a number of days from 1 to " + MOST_DAYS + ", or none.");
    }
    return days;
  }

  /** Reads {@code {"split": "..."}}: the split to agree on. */
  public static Reading<String> agreed(byte[] document) {
    return read(document, entry -> entry.neededText("split"));
  }

  /** Reads {@code {"bodyMass": "private"}} or {@code "leader"}: who sees it. */
  public static Reading<Boolean> bodyMassPrivate(byte[] document) {
    return read(
        document,
        entry -> {
          Optional<Boolean> word =
              entry.word("bodyMass", Map.of("private", true, "leader", false), false);
          return word.orElseGet(() -> entry.missing("bodyMass", false));
        });
  }

  private static <T> Reading<T> read(byte[] document, Function<Entry, T> fields) {
    Issues issues = new Issues();
    Optional<JsonNode> tree = JsonText.read(document, issues);
    Optional<T> value =
        tree.flatMap(node -> Entry.of(node, Pointer.ROOT, issues))
            .map(
                entry -> {
                  T found = fields.apply(entry);
                  entry.done();
                  return found;
                });
    return value.isPresent() && issues.list().isEmpty()
        ? new Reading.Read<>(value.get())
        : Report.bad(issues);
  }
}
