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
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
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

  /** Headers of a request that change what is done. */
  private static final Set<String> ASKED =
      Set.of("if-match", "if-none-match", "idempotency-key", "prefer");

  /** Headers of an answer that a client acts on. */
  private static final Set<String> TOLD =
      Set.of("etag", "location", "retry-after", "preference-applied", "allow");

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
    String path = URI.create(request.getURI()).getPath();
    String place = request.getMethod() + " " + path + " " + response.statusCode();
    check(place, request.getMethod(), path, response);
    JsonNode item = pathItem(path);
    if (item != null && response.statusCode() < 300) {
      taken(place, item.path(request.getMethod().toLowerCase(Locale.ROOT)), request);
    }
    return response;
  }

  /** A request that was taken has only parameters, headers and a body that the contract knows. */
  private static void taken(
      String place, JsonNode operation, FilterableRequestSpecification request) {
    Set<String> known = new HashSet<>();
    operation
        .path("parameters")
        .forEach(p -> known.add(resolve(p).path("name").asText().toLowerCase(Locale.ROOT)));
    String query = URI.create(request.getURI()).getQuery();
    for (String parameter : query == null ? new String[0] : query.split("&", -1)) {
      String name = parameter.split("=", 2)[0];
      require(known.contains(name.toLowerCase(Locale.ROOT)), place + " took ?" + name);
    }
    for (Header header : request.getHeaders()) {
      String name = header.getName().toLowerCase(Locale.ROOT);
      require(!ASKED.contains(name) || known.contains(name), place + " took " + name);
    }
    JsonNode content = operation.path("requestBody").path("content");
    Object body = request.getBody();
    if (body instanceof String text && content.has("application/json")) {
      List<Error> errors = errors(content.at("/application~1json/schema"), text);
      require(errors.isEmpty(), place + " took what the contract refuses: " + errors);
    }
  }

  private static void check(String place, String method, String path, Response response) {
    JsonNode item = pathItem(path);
    int status = response.statusCode();
    if (item == null || status == 405 || status == 501) {
      // Unknown addresses and methods have no operation; what they answer has a schema all the
      // same.
      checkProblem(place, response);
      return;
    }
    if (method.equals("HEAD") || method.equals("OPTIONS")) {
      require(response.asByteArray().length == 0, place + " has a body");
      return;
    }
    JsonNode operation = item.get(method.toLowerCase(Locale.ROOT));
    require(operation != null, place + ": the contract has no such operation");
    JsonNode answer = resolve(operation.path("responses").path(String.valueOf(status)));
    require(!answer.isMissingNode(), place + ": the contract has no such status");
    headers(place, answer, response);
    if (!answer.has("content")) {
      require(response.asByteArray().length == 0, place + " has a body the contract does not know");
      return;
    }
    String kind = kind(response);
    JsonNode content = answer.path("content").path(kind);
    require(!content.isMissingNode(), place + ": the contract does not know " + kind);
    if (kind.endsWith("json")) {
      List<Error> errors = errors(content.get("schema"), response.asString());
      require(errors.isEmpty(), place + ": " + errors + "\n" + response.asString());
    }
  }

  /** Headers that mean something here are declared; those that are always there are there. */
  private static void headers(String place, JsonNode answer, Response response) {
    Set<String> declared = new HashSet<>();
    for (Map.Entry<String, JsonNode> header : answer.path("headers").properties()) {
      declared.add(header.getKey().toLowerCase(Locale.ROOT));
      boolean needed = resolve(header.getValue()).path("required").asBoolean();
      require(
          !needed || response.headers().hasHeaderWithName(header.getKey()),
          place + " lacks " + header.getKey());
    }
    for (Header header : response.headers()) {
      String name = header.getName().toLowerCase(Locale.ROOT);
      require(
          !TOLD.contains(name) || declared.contains(name),
          place + ": the contract does not know the header " + name);
    }
  }

  private static void checkProblem(String place, Response response) {
    require(List.of(404, 405, 501).contains(response.statusCode()), place + ": unknown address");
    if (response.asByteArray().length > 0) {
      require(kind(response).equals("application/problem+json"), place + ": " + kind(response));
      JsonNode schema =
          DOCUMENT.at("/components/responses/NotFound/content/application~1problem+json/schema");
      List<Error> errors = errors(schema, response.asString());
      require(errors.isEmpty(), place + ": " + errors);
    }
  }

  private static String kind(Response response) {
    return response.contentType().split(";", 2)[0];
  }

  private static JsonNode pathItem(String path) {
    JsonNode exact = DOCUMENT.path("paths").get(path);
    if (exact != null) {
      return exact;
    }
    for (Map.Entry<String, JsonNode> entry : DOCUMENT.path("paths").properties()) {
      if (path.matches(entry.getKey().replaceAll("\\{[^}]+}", "[^/]+"))) {
        return entry.getValue();
      }
    }
    return null;
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
