package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Writes a page of a list: {@code {"items": [...], "next": "..."}}. */
final class Pages {
  private Pages() {}

  /**
   * Entries after the one with an id.
   *
   * @param after if no entry has this id any more, the page is empty
   */
  static byte[] of(ArrayNode list, Optional<String> after, int limit) {
    ObjectNode page = JsonNodeFactory.instance.objectNode();
    ArrayNode items = page.putArray("items");
    boolean begun = after.isEmpty();
    String last = "";
    boolean more = false;
    for (JsonNode entry : list) {
      String id = entry.path("id").asText();
      if (!begun) {
        begun = after.filter(id::equals).isPresent();
      } else if (items.size() == limit) {
        more = true;
        break;
      } else {
        items.add(entry);
        last = id;
      }
    }
    if (more) {
      page.put("next", last);
    }
    return JsonBytes.of(page);
  }

  /** A page that was cut to size before: the cursor of its last entry, if there are more. */
  static byte[] of(ArrayNode items, Optional<String> next) {
    ObjectNode page = JsonNodeFactory.instance.objectNode();
    page.set("items", items);
    next.ifPresent(cursor -> page.put("next", cursor));
    return JsonBytes.of(page);
  }
}
