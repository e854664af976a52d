package dev.faircarry.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.http.Header;
import io.restassured.http.Headers;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Holds every answer of the running service against openapi/openapi.yaml: the path, the method and
 * the status must be there, the kind of body and the headers too, and a JSON body must be valid
 * under its schema. What the service took must be a request that the contract knows.
 */
public final class Contract implements Filter {
  private static final JsonNode DOCUMENT = read();
  private static final SchemaRegistry SCHEMAS =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final Map<String, Schema> READ = new ConcurrentHashMap<>();

  /** Headers of an answer that a client acts on. */
  private static final Set<String> TOLD =
      Set.of("etag", "location", "retry-after", "preference-applied", "allow");

  /**
   * A request and its answer, by whatever client.
   *
   * @param asked headers of the request, names in lower case
   * @param sent body of the request; empty where there is none or it is no text
   * @param told headers of the answer, names in lower case
   */
  record Exchange(
      String method,
      URI target,
      Map<String, String> asked,
      String sent,
      int status,
      Map<String, String> told,
      byte[] body) {
    private String place() {
      return method + " " + target.getPath() + " " + status;
    }

    private String kind() {
      return told.getOrDefault("content-type", "").split(";", 2)[0];
    }

    private String text() {
      return new String(body, StandardCharsets.UTF_8);
    }
  }

  private static JsonNode read() {
    try (InputStream in = Contract.class.getResourceAsStream("/openapi/openapi.yaml")) {
      return new ObjectMapper(new YAMLFactory()).readTree(in);
    } catch (IOException e) {
      throw new IllegalStateException("the contract cannot be read", e);
    }
  }

  /** The contract as a tree. */
  public static JsonNode document() {
    return DOCUMENT;
  }

  /** What is wrong with a JSON text under a schema of the contract. */
  public static List<Error> errors(JsonNode schema, String json) {
    return READ.computeIfAbsent(schema.toString(), text -> read(schema))
        .validate(json, InputFormat.JSON);
  }

  private static Schema read(JsonNode schema) {
    ObjectNode whole = schema.deepCopy();
    whole.set("components", DOCUMENT.get("components"));
    return SCHEMAS.getSchema(whole.toString(), InputFormat.JSON);
  }

  @Override
  public Response filter(
      FilterableRequestSpecification request,
      FilterableResponseSpecification responseSpec,
      FilterContext context) {
    Response response = context.next(request, responseSpec);
    check(
        new Exchange(
            request.getMethod(),
            URI.create(request.getURI()),
            headers(request.getHeaders()),
            request.getBody() instanceof String text ? text : "",
            response.statusCode(),
            headers(response.headers()),
            response.asByteArray()));
    return response;
  }

  private static Map<String, String> headers(Headers all) {
    Map<String, String> headers = new HashMap<>();
    for (Header header : all) {
      headers.put(header.getName().toLowerCase(Locale.ROOT), header.getValue());
    }
    return headers;
  }

  /** Ends the test when an answer, or a request that was taken, is none of the contract. */
  static void check(Exchange exchange) {
    if (exchange.target().getPath().matches("/(docs|assets|page)/.*")) {
      // Files that the pages load by themselves are no part of what a client is promised.
      return;
    }
    JsonNode item = pathItem(exchange.target().getPath());
    if (item == null || exchange.status() == 405 || exchange.status() == 501) {
      // Unknown addresses and methods have no operation; what they answer has a schema all the
      // same.
      checkProblem(exchange);
      return;
    }
    if (exchange.method().equals("HEAD") || exchange.method().equals("OPTIONS")) {
      require(exchange.body().length == 0, exchange.place() + " has a body");
      return;
    }
    JsonNode operation = item.get(exchange.method().toLowerCase(Locale.ROOT));
    require(operation != null, exchange.place() + ": the contract has no such operation");
    answer(exchange, operation);
    if (exchange.status() < 300) {
      taken(exchange, operation);
    }
  }

  private static void answer(Exchange exchange, JsonNode operation) {
    String place = exchange.place();
    JsonNode answer = resolve(operation.path("responses").path(String.valueOf(exchange.status())));
    require(!answer.isMissingNode(), place + ": the contract has no such status");
    answerHeaders(exchange, answer);
    if (!answer.has("content")) {
      require(exchange.body().length == 0, place + " has a body the contract does not know");
      return;
    }
    JsonNode content = answer.path("content").path(exchange.kind());
    require(!content.isMissingNode(), place + ": the contract does not know " + exchange.kind());
    if (exchange.kind().endsWith("json")) {
      List<Error> errors = errors(content.get("schema"), exchange.text());
      require(errors.isEmpty(), place + ": " + errors + "\n" + exchange.text());
    }
  }

  /** Headers that mean something here are declared; those that are always there are there. */
  private static void answerHeaders(Exchange exchange, JsonNode answer) {
    Set<String> declared = new HashSet<>();
    for (Map.Entry<String, JsonNode> header : answer.path("headers").properties()) {
      String name = header.getKey().toLowerCase(Locale.ROOT);
      declared.add(name);
      JsonNode resolved = resolve(header.getValue());
      String value = exchange.told().get(name);
      require(
          value != null || !resolved.path("required").asBoolean(),
          exchange.place() + " lacks " + header.getKey());
      String pattern = resolved.at("/schema/pattern").asText();
      require(
          value == null || value.matches(pattern.isEmpty() ? ".*" : pattern + ".*"),
          exchange.place() + ": " + header.getKey() + " " + value);
    }
    for (String name : exchange.told().keySet()) {
      require(
          !TOLD.contains(name) || declared.contains(name),
          exchange.place() + ": the contract does not know the header " + name);
    }
  }

  /** A request that was taken has only parameters and a body that the contract knows. */
  private static void taken(Exchange exchange, JsonNode operation) {
    String place = exchange.place();
    Set<String> known = new HashSet<>();
    operation
        .path("parameters")
        .forEach(p -> known.add(resolve(p).path("name").asText().toLowerCase(Locale.ROOT)));
    String query = exchange.target().getQuery();
    for (String parameter : query == null ? new String[0] : query.split("&", -1)) {
      String name = parameter.split("=", 2)[0];
      require(known.contains(name.toLowerCase(Locale.ROOT)), place + " took ?" + name);
    }
    String kind = exchange.asked().getOrDefault("content-type", "").split(";", 2)[0];
    JsonNode content = operation.path("requestBody").path("content");
    if (!exchange.sent().isEmpty() && kind.endsWith("json") && content.has(kind)) {
      List<Error> errors = errors(content.get(kind).get("schema"), exchange.sent());
      require(errors.isEmpty(), place + " took what the contract refuses: " + errors);
    }
  }

  private static void checkProblem(Exchange exchange) {
    require(
        List.of(404, 405, 501).contains(exchange.status()), exchange.place() + ": unknown address");
    if (exchange.body().length > 0) {
      require(
          exchange.kind().equals("application/problem+json"),
          exchange.place() + ": " + exchange.kind());
      JsonNode schema =
          DOCUMENT.at("/components/responses/NotFound/content/application~1problem+json/schema");
      List<Error> errors = errors(schema, exchange.text());
      require(errors.isEmpty(), exchange.place() + ": " + errors);
    }
  }

  /** The exact path, or the template with the fewest variables that fits it. */
  private static JsonNode pathItem(String path) {
    JsonNode best = DOCUMENT.path("paths").get(path);
    int fewest = best == null ? Integer.MAX_VALUE : 0;
    for (Map.Entry<String, JsonNode> entry : DOCUMENT.path("paths").properties()) {
      int variables = entry.getKey().split("\\{", -1).length;
      boolean fits = path.matches(entry.getKey().replaceAll("\\{[^}]+}", "[^/]+"));
      if (fits && variables < fewest) {
        fewest = variables;
        best = entry.getValue();
      }
    }
    return best;
  }

  /** What stands as the value of an example, which may be a reference. */
  static JsonNode example(JsonNode example) {
    return resolve(example).path("value");
  }

  /** What a reference names, or the node itself. */
  static JsonNode resolve(JsonNode node) {
    return node.has("$ref") ? DOCUMENT.at(node.get("$ref").asText().substring(1)) : node;
  }

  private static void require(boolean holds, String message) {
    if (!holds) {
      throw new AssertionError(message);
    }
  }
}
