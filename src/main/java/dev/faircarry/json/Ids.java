package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Gives ids to entries of a list that have none: letter and number, counted from 1, skipping those
 * that the document itself uses. The same document always gets the same ids.
 */
final class Ids {
  private final String letter;
  private final Set<String> taken = new HashSet<>();
  private int last;

  Ids(String letter, List<JsonNode> entries) {
    this.letter = letter;
    for (JsonNode entry : entries) {
      JsonNode id = entry.get("id");
      if (id != null) {
        taken.add(id.asText());
      }
    }
  }

  /** The entry's own id, or the next free one. */
  String of(Entry entry) {
    return entry.text("id").orElseGet(this::next);
  }

  /** The next free id. */
  String next() {
    do {
      last++;
    } while (taken.contains(letter + last));
    return letter + last;
  }
}
