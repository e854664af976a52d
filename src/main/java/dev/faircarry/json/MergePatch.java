package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;

/** Merges JSON documents as RFC 7396 says. */
final class MergePatch {
  private MergePatch() {}

  /** The target with the patch merged in: the pseudo code of RFC 7396, section 2. */
  static JsonNode apply(JsonNode target, JsonNode patch) {
    if (!(patch instanceof ObjectNode changes)) {
      return patch;
    }
    ObjectNode merged =
        target instanceof ObjectNode object
            ? object.deepCopy()
            : JsonNodeFactory.instance.objectNode();
    for (Map.Entry<String, JsonNode> change : changes.properties()) {
      if (change.getValue().isNull()) {
        merged.remove(change.getKey());
      } else {
        JsonNode old = merged.path(change.getKey());
        merged.set(change.getKey(), apply(old, change.getValue()));
      }
    }
    return merged;
  }
}
