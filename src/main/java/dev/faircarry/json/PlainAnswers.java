package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;

/** Answers of a field or two. */
public final class PlainAnswers {
  private PlainAnswers() {}

  /** Name and version of the program. */
  public static byte[] version(String version) {
    return JsonBytes.of(
        JsonNodeFactory.instance.objectNode().put("name", "faircarry").put("version", version));
  }
}
