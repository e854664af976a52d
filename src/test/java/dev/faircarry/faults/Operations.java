package dev.faircarry.faults;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.http.Contract;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The operations of the contract, whatever they are, with bodies that would be accepted. */
final class Operations {
  private static final Set<String> METHODS = Set.of("get", "put", "post", "patch", "delete");

  private Operations() {}

  /**
   * One operation.
   *
   * @param query names of what may stand in the query
   * @param kind the media type of its body; empty if it takes none
   * @param bodies examples of its body
   */
  record Operation(
      String id,
      String method,
      String path,
      List<String> query,
      String kind,
      List<JsonNode> bodies) {
    boolean takesBody() {
      return !kind.isEmpty();
    }

    /** The address with a value for each of its variables. */
    String target(Map<String, String> values) {
      String target = path;
      for (Map.Entry<String, String> value : values.entrySet()) {
        target = target.replace("{" + value.getKey() + "}", value.getValue());
      }
      return target.replaceAll("\\{[^}]+}", "x1");
    }
  }

  static List<Operation> all() {
    Map<String, Operation> operations = new TreeMap<>();
    for (Map.Entry<String, JsonNode> path : Contract.document().path("paths").properties()) {
      for (Map.Entry<String, JsonNode> each : path.getValue().properties()) {
        if (METHODS.contains(each.getKey())) {
          String method = each.getKey().toUpperCase(Locale.ROOT);
          List<String> query = new ArrayList<>(query(path.getValue().path("parameters")));
          query.addAll(query(each.getValue().path("parameters")));
          Operation operation = operation(method, path.getKey(), query, each.getValue());
          operations.put(operation.id(), operation);
        }
      }
    }
    return List.copyOf(operations.values());
  }

  private static Operation operation(
      String method, String path, List<String> query, JsonNode described) {
    JsonNode content = resolved(described.path("requestBody")).path("content");
    String kind = "";
    List<JsonNode> bodies = new ArrayList<>();
    if (!content.isEmpty()) {
      kind = content.fieldNames().next();
      JsonNode media = content.get(kind);
      if (media.has("example")) {
        bodies.add(media.get("example"));
      }
      media.path("examples").forEach(example -> bodies.add(resolved(example).path("value")));
      if (bodies.isEmpty()) {
        bodies.add(smallest(media.path("schema"), 0));
      }
    }
    return new Operation(method + " " + path, method, path, List.copyOf(query), kind, bodies);
  }

  private static List<String> query(JsonNode parameters) {
    List<String> names = new ArrayList<>();
    for (JsonNode each : parameters) {
      JsonNode parameter = resolved(each);
      if (parameter.path("in").asText().equals("query")) {
        names.add(parameter.get("name").asText());
      }
    }
    return names;
  }

  /** A small value that a schema may allow: what it must have, the first of what it may be. */
  private static JsonNode smallest(JsonNode schema, int depth) {
    JsonNode one = resolved(schema);
    JsonNodeFactory json = JsonNodeFactory.instance;
    if (one.has("const") || one.has("default")) {
      return one.has("const") ? one.get("const") : one.get("default");
    }
    for (String list : List.of("enum", "examples")) {
      if (one.has(list)) {
        return one.get(list).get(0);
      }
    }
    for (String choice : List.of("oneOf", "anyOf", "allOf")) {
      if (one.has(choice) && depth < 8) {
        return smallest(one.get(choice).get(0), depth + 1);
      }
    }
    JsonNode type = one.path("type");
    switch (type.isArray() ? type.get(0).asText() : type.asText()) {
      case "array" -> {
        ArrayNode array = json.arrayNode();
        return depth < 8 ? array.add(smallest(one.path("items"), depth + 1)) : array;
      }
      case "integer", "number" -> {
        return json.numberNode(one.path("minimum").asInt(1));
      }
      case "boolean" -> {
        return json.booleanNode(true);
      }
      case "string" -> {
        return json.textNode("x1");
      }
      default -> {
        ObjectNode object = json.objectNode();
        for (JsonNode name : one.path("required")) {
          JsonNode property = one.path("properties").path(name.asText());
          object.set(name.asText(), depth < 8 ? smallest(property, depth + 1) : json.nullNode());
        }
        return object;
      }
    }
  }

  private static JsonNode resolved(JsonNode node) {
    JsonNode at = node;
    while (at.has("$ref")) {
      at = Contract.document().at(at.get("$ref").asText().substring(1));
    }
    return at;
  }
}
