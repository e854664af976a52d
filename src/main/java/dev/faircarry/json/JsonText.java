package dev.faircarry.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import dev.faircarry.trip.Limits;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Bytes to a JSON tree. Builds the tree itself, so that a field that stands twice is named with its
 * place and the rest of the document is still looked at. The library's own messages name classes
 * and quote the document; none of them is passed on.
 */
final class JsonText {
  private static final int FIELD_NAME_LENGTH = 200;

  /** No number of a document is longer; longer ones are not worth converting. */
  private static final int NUMBER_LENGTH = 60;

  private static final JsonFactory FACTORY =
      new JsonFactoryBuilder()
          .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
          .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(Limits.NESTING + 1)
                  .maxNameLength(FIELD_NAME_LENGTH)
                  .maxStringLength(Limits.DOCUMENT_BYTES)
                  .maxNumberLength(Limits.DOCUMENT_BYTES)
                  .build())
          .build();

  private final Issues issues;

  private JsonText(Issues issues) {
    this.issues = issues;
  }

  /** The tree of a document, or nothing when the issues say why there is none. */
  static Optional<JsonNode> read(byte[] document, Issues issues) {
    return new JsonText(issues).read(document);
  }

  private Optional<JsonNode> read(byte[] document) {
    if (document.length > Limits.DOCUMENT_BYTES) {
      return stop(
          IssueCode.DOCUMENT_TOO_LARGE,
          "The document has "
              + document.length
              + " bytes; at most "
              + Limits.DOCUMENT_BYTES
              + " are read.");
    }
    CharBuffer text = CharBuffer.allocate(document.length);
    ByteBuffer bytes = ByteBuffer.wrap(document);
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(bytes, text, true);
    if (result.isError()) {
      return stop(
          IssueCode.NOT_UTF_8, "Byte " + (bytes.position() + 1) + " is not part of UTF-8 text.");
    }
    text.flip();
    return parse(withoutByteOrderMark(text.toString()));
  }

  private static String withoutByteOrderMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private Optional<JsonNode> parse(String text) {
    if (text.isBlank()) {
      return stop(IssueCode.NOT_JSON, "The document is empty.");
    }
    try (JsonParser parser = FACTORY.createParser(text)) {
      return tree(parser);
    } catch (IOException e) {
      return stop(IssueCode.NOT_JSON, "The document could not be read.");
    }
  }

  private Optional<JsonNode> tree(JsonParser parser) throws IOException {
    try {
      JsonToken first = parser.nextToken();
      JsonNode root = value(parser, first, Pointer.ROOT, 0);
      JsonToken rest = parser.nextToken();
      if (rest != null) {
        return stop(
            IssueCode.NOT_JSON, "Something follows the end of the document" + place(parser) + ".");
      }
      return Optional.of(root);
    } catch (TooDeep e) {
      issues.add(
          IssueCode.TOO_DEEP,
          Pointer.ROOT,
          "",
          "The document is nested deeper than "
              + Limits.NESTING
              + " lists and objects"
              + place(parser)
              + ".");
      return Optional.empty();
    } catch (StreamConstraintsException e) {
      return stop(
          IssueCode.TEXT_TOO_LONG,
          "A field name is longer than " + FIELD_NAME_LENGTH + " characters" + place(parser) + ".");
    } catch (IOException e) {
      return stop(IssueCode.NOT_JSON, "The text is not JSON" + place(parser) + ".");
    }
  }

  private JsonNode value(JsonParser parser, JsonToken token, Pointer at, int depth)
      throws IOException {
    if (token.isStructStart() && depth >= Limits.NESTING) {
      throw new TooDeep();
    }
    return switch (token) {
      case START_OBJECT -> object(parser, at, depth + 1);
      case START_ARRAY -> list(parser, at, depth + 1);
      case VALUE_STRING -> JsonNodeFactory.instance.textNode(parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(parser, at);
      case VALUE_TRUE -> JsonNodeFactory.instance.booleanNode(true);
      case VALUE_FALSE -> JsonNodeFactory.instance.booleanNode(false);
      default -> JsonNodeFactory.instance.nullNode();
    };
  }

  private ObjectNode object(JsonParser parser, Pointer at, int depth) throws IOException {
    ObjectNode object = JsonNodeFactory.instance.objectNode();
    for (JsonToken token = parser.nextToken();
        token == JsonToken.FIELD_NAME;
        token = parser.nextToken()) {
      String name = parser.currentName();
      JsonNode value = value(parser, parser.nextToken(), at.at(name), depth);
      if (object.has(name)) {
        issues.add(
            IssueCode.DUPLICATE_FIELD,
            at.at(name),
            name,
            "The field \"" + Issues.shortened(name) + "\" stands twice in its object.");
      } else {
        object.set(name, value);
      }
    }
    return object;
  }

  private ArrayNode list(JsonParser parser, Pointer at, int depth) throws IOException {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (JsonToken token = parser.nextToken();
        token != JsonToken.END_ARRAY;
        token = parser.nextToken()) {
      list.add(value(parser, token, at.at(list.size()), depth));
    }
    return list;
  }

  /** Exact, as written: no binary fractions. */
  private JsonNode number(JsonParser parser, Pointer at) throws IOException {
    if (parser.getTextLength() <= NUMBER_LENGTH) {
      try {
        return JsonNodeFactory.instance.numberNode(new BigDecimal(parser.getText()));
      } catch (NumberFormatException e) {
        // An exponent beyond what an exact number can hold: out of every range.
      }
    }
    issues.add(
        IssueCode.OUT_OF_RANGE,
        at,
        parser.getText(),
        "The number is beyond every limit here.",
        "Write a plain number within the limits of the field.");
    return JsonNodeFactory.instance.numberNode(BigDecimal.ONE);
  }

  private Optional<JsonNode> stop(IssueCode code, String message) {
    issues.add(code, Pointer.ROOT, "", message);
    return Optional.empty();
  }

  private static String place(JsonParser parser) {
    JsonLocation location = parser.currentLocation();
    return ", at line " + location.getLineNr() + ", column " + location.getColumnNr();
  }

  private static final class TooDeep extends IOException {
    private static final long serialVersionUID = 1L;
  }
}
