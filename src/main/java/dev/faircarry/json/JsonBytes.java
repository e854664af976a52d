package dev.faircarry.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;

/** A JSON tree to bytes: UTF-8, indented, numbers without exponents, a line end at the end. */
final class JsonBytes {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
          .build();

  private JsonBytes() {}

  static byte[] of(JsonNode tree) {
    try {
      // By way of a string: the byte writer refuses half characters, which issues may quote.
      return (MAPPER.writeValueAsString(tree) + "\n").getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }
}
