package dev.faircarry.check;

import dev.faircarry.trip.Hiker;
import dev.faircarry.trip.SharedItem;
import dev.faircarry.trip.Trip;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What has changed in a trip since a split was made for it. */
final class Staleness {
  private Staleness() {}

  /** Names what differs, never by how much: it may be a body mass. */
  static Optional<Finding> between(Trip then, Trip now) {
    List<String> changed = new ArrayList<>();
    differ(then.hikers(), now.hikers(), Hiker::id, "hiker", changed);
    differ(then.shared(), now.shared(), SharedItem::id, "item", changed);
    if (then.days() != now.days()) {
      changed.add("days");
    }
    if (!then.rules().equals(now.rules())) {
      changed.add("rules");
    }
    if (!then.policy().equals(now.policy())) {
      changed.add("policy");
    }
    if (changed.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
            FindingCode.STALE,
            Severity.CAUTION,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            "Since the split was made, these have changed: " + String.join(", ", changed) + ".",
            "Rebalance."));
  }

  private static <T> void differ(
      List<T> then, List<T> now, Function<T, String> id, String word, List<String> changed) {
    Map<String, T> before = then.stream().collect(Collectors.toMap(id, Function.identity()));
    Map<String, T> after = now.stream().collect(Collectors.toMap(id, Function.identity()));
    TreeSet<String> ids = new TreeSet<>(before.keySet());
    ids.addAll(after.keySet());
    for (String each : ids) {
      if (!Optional.ofNullable(before.get(each)).equals(Optional.ofNullable(after.get(each)))) {
        changed.add(word + " “" + each + "”");
      }
    }
  }
}
