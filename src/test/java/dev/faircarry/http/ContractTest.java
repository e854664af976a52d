package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.check.IssueCode;
import dev.faircarry.trip.Limits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The contract agrees with the code and with itself. */
@ExtendWith(RunningService.class)
class ContractTest {

  private static long number(String pointer) {
    JsonNode node = Contract.document().at(pointer);
    assertTrue(node.isNumber(), pointer);
    return node.asLong();
  }

  @Test
  void limitsAreThoseOfTheCode() {
    String schemas = "/components/schemas/";
    assertEquals(Limits.DAYS, number(schemas + "Trip/properties/days/maximum"));
    assertEquals(Limits.HIKERS, number(schemas + "Trip/properties/hikers/maxItems"));
    assertEquals(Limits.SHARED_ITEMS, number(schemas + "Trip/properties/shared/maxItems"));
    assertEquals(Limits.RULES, number(schemas + "Trip/properties/rules/maxItems"));
    assertEquals(Limits.KIT_ITEMS_PER_HIKER, number(schemas + "Hiker/properties/kit/maxItems"));
    assertEquals(Limits.PARTS_PER_ITEM, number(schemas + "SharedItem/properties/parts/maxItems"));
    assertEquals(Limits.PIECES, number(schemas + "SharedItem/properties/count/maximum"));
    assertEquals(Limits.SLEEPS, number(schemas + "SharedItem/properties/sleeps/maximum"));
    assertEquals(Limits.COVERS_PER_ITEM, number(schemas + "Covers/maxItems"));
    assertEquals(Limits.NAMES_PER_RULE, number(schemas + "Pieces/maxItems"));
    assertEquals(Limits.ID_LENGTH, number(schemas + "Id/maxLength"));
    assertEquals(Limits.ID_LENGTH, number(schemas + "Word/maxLength"));
    assertEquals(2 * Limits.ID_LENGTH + 1, number(schemas + "PieceRef/maxLength"));
    assertEquals(Limits.NAME_LENGTH, number(schemas + "Name/maxLength"));
    assertEquals(Limits.QUANTITY_LENGTH, number(schemas + "Mass/maxLength"));
    assertEquals(Limits.QUANTITY_LENGTH, number(schemas + "Volume/maxLength"));
    assertEquals(Limits.MIN_GRAIN_THOUSANDTHS, number(schemas + "Policy/properties/grain/minimum"));
    assertEquals(Limits.MAX_GRAIN_THOUSANDTHS, number(schemas + "Policy/properties/grain/maximum"));
    assertEquals(Limits.ISSUES, number(schemas + "Problem/properties/issues/maxItems"));
    String effort = "/paths/~1v1~1splits/post/parameters/0/schema/";
    assertEquals(ServiceLimits.MIN_EFFORT_STEPS, number(effort + "minimum"));
    assertEquals(ServiceLimits.MAX_EFFORT_STEPS, number(effort + "maximum"));
    assertEquals(ServiceLimits.DEFAULT_EFFORT_STEPS, number(effort + "default"));
    String text = Contract.document().toString();
    assertTrue(text.contains("2,000,000 bytes, nested " + Limits.NESTING + " deep"));
    assertEquals(2_000_000, Limits.DOCUMENT_BYTES);
    assertEquals(2_000_000, ServiceLimits.REQUEST_BYTES);
  }

  /** Each example of a body is valid under the schema it stands beside. */
  @Test
  void examplesAreValid() {
    List<String> wrong = new ArrayList<>();
    int seen = walk(Contract.document(), "", wrong);
    assertEquals(List.of(), wrong);
    assertTrue(seen >= 19, "only " + seen + " examples");
  }

  private static int walk(JsonNode node, String at, List<String> wrong) {
    int seen = 0;
    if (node.has("schema") && (node.has("example") || node.has("examples"))) {
      List<JsonNode> examples = new ArrayList<>();
      if (node.has("example")) {
        examples.add(node.get("example"));
      }
      node.path("examples").forEach(e -> examples.add(value(e)));
      for (JsonNode example : examples) {
        seen++;
        var errors = Contract.errors(node.get("schema"), example.toString());
        if (!errors.isEmpty()) {
          wrong.add(at + ": " + errors);
        }
      }
    }
    for (Map.Entry<String, JsonNode> child : node.properties()) {
      seen += walk(child.getValue(), at + "/" + child.getKey(), wrong);
    }
    return seen;
  }

  private static JsonNode value(JsonNode example) {
    JsonNode resolved =
        example.has("$ref")
            ? Contract.document().at(example.get("$ref").asText().substring(1))
            : example;
    return resolved.get("value");
  }

  /** What stands as an example of a request is one: the service takes it. */
  @Test
  void exampleRequestsWork() {
    JsonNode trip = Contract.document().at("/components/examples/LakeTrip/value");
    json(trip.toString())
        .post("/v1/splits")
        .then()
        .statusCode(200)
        .body("result", equalTo("split"));
    JsonNode check =
        Contract.document()
            .at(
                "/paths/~1v1~1checks/post/requestBody/content/application~1json/examples/byHand/value");
    json(check.toString())
        .post("/v1/checks")
        .then()
        .statusCode(200)
        .body("keepsRules", equalTo(true))
        .body("worst.targetRatio", equalTo(0.05f));
  }

  /** The schema of a trip takes every demo trip, and refuses one with a field it does not know. */
  @Test
  void demoTripsAreValid() throws IOException {
    JsonNode schema = Contract.document().at("/components/schemas/Trip");
    for (Path file : SplitRoutesTest.demoTrips()) {
      String text = Files.readString(file);
      assertEquals(List.of(), Contract.errors(schema, text), file.toString());
      assertFalse(
          Contract.errors(schema, text.replaceFirst("\\{", "{\"colour\":1,")).isEmpty(),
          file.toString());
    }
  }

  /** A field that is dropped from an answer, or added, is seen. */
  @Test
  void schemasAreClosed() {
    JsonNode schema = Contract.document().at("/components/schemas/FoundSplit");
    JsonNode example = Contract.document().at("/components/examples/SplitOfTwo/value");
    assertEquals(List.of(), Contract.errors(schema, example.toString()));
    for (Map.Entry<String, JsonNode> field : example.properties()) {
      var less = ((com.fasterxml.jackson.databind.node.ObjectNode) example.deepCopy());
      less.remove(field.getKey());
      assertFalse(Contract.errors(schema, less.toString()).isEmpty(), "without " + field.getKey());
    }
    var more =
        ((com.fasterxml.jackson.databind.node.ObjectNode) example.deepCopy()).put("extra", 1);
    assertFalse(Contract.errors(schema, more.toString()).isEmpty());
  }

  @Test
  void pagesAndListsAreThere() {
    request()
        .get("/v1/issue-codes")
        .then()
        .statusCode(200)
        .body("issueCodes.size()", equalTo(IssueCode.values().length))
        .body(
            "issueCodes.find { it.code == 'unknown-field' }.sample",
            containsString("faircarry-trip/1"));
    request()
        .accept("text/html")
        .get("/v1/issue-codes")
        .then()
        .statusCode(200)
        .body(containsString("unknown-field"));
    request().get("/openapi.yaml").then().statusCode(200).body(containsString("openapi: 3.1.0"));
    request().get("/docs").then().statusCode(200);
    request().get("/problems").then().statusCode(200).body(containsString("invalid-document"));
    request().get("/").then().statusCode(200);
    request().get("/health/ready").then().statusCode(200);
  }
}
