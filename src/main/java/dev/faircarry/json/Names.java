package dev.faircarry.json;

import java.util.Optional;

/** The name people see; the id where only that is stated. */
final class Names {
  private Names() {}

  static String of(Entry entry, String id) {
    Optional<String> name = entry.text("name");
    return name.isEmpty() && !entry.has("id") ? entry.missing("name", id) : name.orElse(id);
  }
}
