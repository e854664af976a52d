package dev.faircarry.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeType;
import dev.faircarry.check.IssueCode;
import dev.faircarry.check.Issues;
import dev.faircarry.check.Pointer;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One object of a document while it is read. Every fault of a field is noted with its place, and a
 * neutral stand-in is given back, so that reading goes on and all faults are found at once. Fields
 * nobody asked for are unknown.
 */
final class Entry {
  private static final int INT_DIGITS = 9;

  private final JsonNode node;
  private final Pointer at;
  private final Issues issues;
  private final Set<String> asked = new LinkedHashSet<>();
  private final Set<String> passed = new LinkedHashSet<>();

  private Entry(JsonNode node, Pointer at, Issues issues) {
    this.node = node;
    this.at = at;
    this.issues = issues;
  }

  /** The object at a place; what is no object is noted. */
  static Optional<Entry> of(JsonNode node, Pointer at, Issues issues) {
    if (!node.isObject()) {
      // Without the value: a body mass may stand here by mistake.
      wrongType(node, at, "an object", false, issues);
      return Optional.empty();
    }
    return Optional.of(new Entry(node, at, issues));
  }

  Pointer at() {
    return at;
  }

  Issues issues() {
    return issues;
  }

  /** Whether the field stands there, with whatever value. */
  boolean has(String field) {
    return node.has(field);
  }

  /** The field's value, and the note that the field is known. */
  Optional<JsonNode> find(String field) {
    asked.add(field);
    return Optional.ofNullable(node.get(field));
  }

  /** A text, or what can be made of the value to stand in for it. */
  Optional<String> text(String field) {
    return find(field).map(value -> textOf(value, at.at(field)));
  }

  /** A text that must be there. */
  String neededText(String field) {
    return text(field).orElseGet(() -> missing(field, ""));
  }

  private String textOf(JsonNode value, Pointer place) {
    if (!value.isTextual()) {
      wrongType(value, place, "a text", true, issues);
    }
    return value.asText();
  }

  /** A truth, false unless stated. */
  boolean flag(String field) {
    Optional<JsonNode> value = find(field);
    if (value.isPresent() && !value.get().isBoolean()) {
      wrongType(value.get(), at.at(field), "true or false", true, issues);
    }
    return value.isPresent() && value.get().asBoolean();
  }

  /** A whole number; its limits are judged later. */
  OptionalInt whole(String field, int standIn) {
    Optional<JsonNode> value = find(field);
    return value.isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(wholeOf(value.get(), at.at(field), standIn));
  }

  /** A whole number that must be there. */
  int neededWhole(String field, int standIn) {
    return whole(field, standIn).orElseGet(() -> missing(field, standIn));
  }

  int wholeOf(JsonNode value, Pointer place, int standIn) {
    if (!value.isNumber()) {
      wrongType(value, place, "a whole number", true, issues);
      return standIn;
    }
    BigDecimal number = value.decimalValue();
    if ((long) number.precision() - number.scale() > INT_DIGITS) {
      issues.add(
          IssueCode.OUT_OF_RANGE,
          place,
          value.asText(),
          "The number is beyond every limit here.",
          "Write a whole number within the limits of the field.");
      return standIn;
    }
    if (number.signum() != 0 && number.stripTrailingZeros().scale() > 0) {
      issues.add(
          IssueCode.WRONG_TYPE,
          place,
          value.asText(),
          "The number is not whole.",
          "Write a whole number.");
      return standIn;
    }
    return number.intValue();
  }

  /** One of the words of a field. */
  <E> Optional<E> word(String field, Map<String, E> words, E standIn) {
    Optional<JsonNode> value = find(field);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (!value.get().isTextual()) {
      wrongType(value.get(), at.at(field), "a text", true, issues);
      return Optional.of(standIn);
    }
    E meant = words.get(value.get().asText());
    if (meant == null) {
      issues.add(
          IssueCode.UNKNOWN_WORD,
          at.at(field),
          value.get().asText(),
          "\"" + field + "\" does not know this word.",
          "Use one of " + String.join(", ", words.keySet()) + ".");
      return Optional.of(standIn);
    }
    return Optional.of(meant);
  }

  /** A list's values; of a list longer than {@code most} only so many, and that is noted. */
  Optional<List<JsonNode>> list(String field, int most) {
    Optional<JsonNode> value = find(field);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    List<JsonNode> values = new ArrayList<>();
    if (!value.get().isArray()) {
      wrongType(value.get(), at.at(field), "a list", false, issues);
      return Optional.of(values);
    }
    int size = value.get().size();
    if (size > most) {
      issues.add(
          IssueCode.TOO_MANY,
          at.at(field),
          String.valueOf(size),
          "The list has " + size + " entries; at most " + most + " are allowed.",
          "Shorten the list to at most " + most + " entries.");
    }
    for (int i = 0; i < Math.min(size, most); i++) {
      values.add(value.get().get(i));
    }
    return Optional.of(values);
  }

  /** A list of texts. */
  Optional<List<String>> texts(String field, int most) {
    return list(field, most)
        .map(
            values -> {
              List<String> texts = new ArrayList<>();
              for (int i = 0; i < values.size(); i++) {
                texts.add(textOf(values.get(i), at.at(field).at(i)));
              }
              return texts;
            });
  }

  /** A list of texts that must be there. */
  List<String> neededTexts(String field, int most) {
    return texts(field, most).orElseGet(() -> missing(field, List.of()));
  }

  /** A list of whole numbers. */
  Optional<List<Integer>> wholes(String field, int most, int standIn) {
    return list(field, most)
        .map(
            values -> {
              List<Integer> numbers = new ArrayList<>();
              for (int i = 0; i < values.size(); i++) {
                numbers.add(wholeOf(values.get(i), at.at(field).at(i), standIn));
              }
              return numbers;
            });
  }

  /** An object below this one. */
  Optional<Entry> child(String field) {
    return find(field).flatMap(value -> of(value, at.at(field), issues));
  }

  /** Notes that a field is missing; gives the stand-in back. */
  <T> T missing(String field, T standIn) {
    asked.add(field);
    issues.add(
        IssueCode.MISSING,
        at.at(field),
        "",
        "The field \"" + field + "\" is needed and not there.",
        "Add \"" + field + "\".");
    return standIn;
  }

  /** Knows these fields, whatever stands in them. */
  void pass(Set<String> fields) {
    passed.addAll(fields);
  }

  /** Notes every field that was not asked for. To be called when all others are read. */
  void done() {
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!asked.contains(name) && !passed.contains(name)) {
                // The name stands for the value, which may be a body mass under a wrong name.
                issues.add(
                    IssueCode.UNKNOWN_FIELD,
                    at.at(name),
                    name,
                    "The field \"" + Issues.shortened(name) + "\" is not known here.",
                    "Fields known here: " + String.join(", ", asked) + ".");
              }
            });
  }

  /** Notes that a value is of another kind than needed. */
  static void wrongType(
      JsonNode value, Pointer place, String needed, boolean showValue, Issues issues) {
    boolean plain = value.isValueNode();
    issues.add(
        IssueCode.WRONG_TYPE,
        place,
        showValue && plain ? value.asText() : "",
        "Here stands " + kind(value.getNodeType()) + " instead of " + needed + ".",
        "Write " + needed + ".");
  }

  private static String kind(JsonNodeType type) {
    return switch (type) {
      case ARRAY -> "a list";
      case OBJECT -> "an object";
      case STRING -> "a text";
      case NUMBER -> "a number";
      case BOOLEAN -> "true or false";
      default -> "null";
    };
  }
}
