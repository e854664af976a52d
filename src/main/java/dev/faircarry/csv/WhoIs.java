package dev.faircarry.csv;

import dev.faircarry.trip.Hiker;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds the hiker a cell names: by id, or by a name that only one hiker has. */
final class WhoIs {
  private final Set<String> ids = new HashSet<>();
  private final Map<String, String> byName = new HashMap<>();
  private final Set<String> severalHave = new HashSet<>();

  WhoIs(List<Hiker> hikers) {
    for (Hiker hiker : hikers) {
      ids.add(hiker.id());
      if (byName.putIfAbsent(hiker.name(), hiker.id()) != null) {
        severalHave.add(hiker.name());
      }
    }
  }

  /** The id, or the text itself where nobody is found. */
  String id(String text) {
    return ids.contains(text) || severalHave.contains(text)
        ? text
        : byName.getOrDefault(text, text);
  }

  boolean knows(String id) {
    return ids.contains(id);
  }
}
