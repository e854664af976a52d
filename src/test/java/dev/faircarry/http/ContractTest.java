package dev.faircarry.http;

import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.check.IssueCode;
import dev.faircarry.json.PlanAnswers;
import dev.faircarry.solve.take.Chooser;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.plan.PlanLimits;
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
    String effort = "/components/parameters/Effort/schema/";
    assertEquals(ServiceLimits.MIN_EFFORT_STEPS, number(effort + "minimum"));
    assertEquals(ServiceLimits.MAX_EFFORT_STEPS, number(effort + "maximum"));
    assertEquals(ServiceLimits.DEFAULT_EFFORT_STEPS, number(effort + "default"));
    String choice = "/paths/~1v1~1choices/post/parameters/0/schema/";
    assertEquals(PlanAnswers.CHOICE_STEPS, number(choice + "default"));
    assertEquals(PlanAnswers.MAX_CHOICE_STEPS, number(choice + "maximum"));
    assertEquals(Limits.CHANGES, number(schemas + "RebalanceRequest/properties/changes/maxItems"));
    assertEquals(Limits.PIECES, number(schemas + "RebalanceRequest/properties/frozen/maxItems"));
    String text = Contract.document().toString();
    assertTrue(text.contains("2,000,000 bytes, nested " + Limits.NESTING + " deep"));
    assertEquals(2_000_000, Limits.DOCUMENT_BYTES);
    assertEquals(2_000_000, ServiceLimits.REQUEST_BYTES);
  }

  @Test
  void limitsOfAPlanAreThoseOfTheCode() {
    assertEquals(Limits.DAYS, plan("Plan/properties/route/maxItems"));
    assertEquals(PlanLimits.MIN_METERS_PER_HOUR, thousandths("RouteDay/kmPerHour/minimum"));
    assertEquals(PlanLimits.MAX_METERS_PER_HOUR, thousandths("RouteDay/kmPerHour/maximum"));
    assertEquals(PlanLimits.MAX_KCAL_PER_PERSON_DAY, field("Food/kcalPerPersonDay/maximum"));
    assertEquals(PlanLimits.MAX_KCAL_PER_GRAM, field("Food/kcalPerGram/maximum"));
    assertEquals(PlanLimits.MEALS, field("Food/meals/maxItems"));
    String meal = "Food/properties/meals/items/properties/";
    assertEquals(PlanLimits.UNITS_PER_PERSON_DAY, plan(meal + "perPersonDay/maximum"));
    assertEquals(PlanLimits.MAX_KCAL_PER_PERSON_DAY, plan(meal + "kcal/maximum"));
    assertEquals(PlanLimits.PROVISION_ID_LENGTH, plan("ProvisionId/maxLength"));
    assertEquals(PlanLimits.CONTAINERS, field("Fuel/containers/maxItems"));
    assertEquals(
        PlanLimits.MAX_MEGAJOULES_PER_KILOGRAM, field("Fuel/megajoulesPerKilogram/maximum"));
    assertEquals(
        PlanLimits.MIN_EFFICIENCY_MILLIONTHS, 1000 * thousandths("Fuel/efficiency/minimum"));
    assertEquals(
        PlanLimits.MAX_EFFICIENCY_MILLIONTHS, 1000 * thousandths("Fuel/efficiency/maximum"));
    assertEquals(PlanLimits.MAX_SPARE_MILLIONTHS, 1000 * thousandths("Fuel/spare/maximum"));
    String simmer = "Fuel/properties/simmer/properties/";
    assertEquals(PlanLimits.MINUTES_PER_DAY, plan(simmer + "minutesPerDay/maximum"));
    assertEquals(PlanLimits.MAX_SIMMER_WATTS, plan(simmer + "watts/maximum"));
    assertEquals(PlanLimits.BOTTLES_PER_PERSON, field("Water/bottlesPerPerson/maximum"));
    assertEquals(PlanLimits.STRETCHES, field("Water/stretches/maxItems"));
    String stretch = "Water/properties/stretches/items/properties/";
    assertEquals(PlanLimits.MINUTES_PER_DAY, plan(stretch + "walkingMinutes/maximum"));
    assertEquals(Limits.HIKERS, field("Goals/hikers/maxItems"));
    assertEquals(PlanLimits.NEEDS, field("Taking/needs/maxItems"));
    assertEquals(PlanLimits.OFFERS, field("Taking/offers/maxItems"));
    assertEquals(PlanLimits.OFFERS, field("Taking/keep/maxItems"));
    assertEquals(PlanLimits.NEED_COUNT, field("Need/atLeast/oneOf/0/maximum"));
    assertEquals(PlanLimits.NEED_COUNT, field("Need/perParty/maximum"));
    assertEquals(PlanLimits.AVAILABLE, field("Offer/available/maximum"));
    assertEquals(PlanLimits.NAMES_PER_OFFER, plan("Amounts/maxItems"));
    assertEquals(PlanLimits.NAMES_PER_OFFER, field("Offer/makesUnnecessary/maxItems"));
    assertEquals(PlanLimits.NEED_COUNT, plan("Amounts/items/properties/amount/oneOf/0/maximum"));
    assertEquals(Chooser.MAX_POINTS, plan("Choice/oneOf/0/properties/frontier/maxItems"));
    // Limits of what is written with a unit stand in words.
    assertEquals(200_000_000L, PlanLimits.DAY_DISTANCE_MILLIMETERS);
    assertTrue(words("RouteDay/distance").contains("1 m to 200 km"));
    assertEquals(20_000_000L, PlanLimits.DAY_CLIMB_MILLIMETERS);
    assertTrue(words("RouteDay/climb").contains("At most 20 km"));
    assertEquals(-500_000L, PlanLimits.MIN_HEIGHT_MILLIMETERS);
    assertEquals(9_000_000L, PlanLimits.MAX_HEIGHT_MILLIMETERS);
    assertTrue(
        Contract.document()
            .at("/components/schemas/Height/description")
            .asText()
            .contains("-500 m to 9000 m"));
    assertEquals(20_000L, PlanLimits.WATER_PER_PERSON_MILLILITERS);
    for (String field :
        List.of("Fuel/boiledPerPersonDay", "Water/perHour", "Water/campPerPerson")) {
      assertTrue(words(field).contains("At most 20 L"), field);
    }
    assertEquals(100L, PlanLimits.MIN_BOTTLE_MILLILITERS);
    assertTrue(words("Water/bottleCapacity").contains("100 mL to 20 L"));
    assertEquals(60_000L, PlanLimits.MAX_WATER_MILLICELSIUS);
    assertTrue(words("Fuel/startTemperature").contains("0 °C to 60 °C"));
    assertEquals(-60_000L, PlanLimits.MIN_AIR_MILLICELSIUS);
    assertEquals(60_000L, PlanLimits.MAX_AIR_MILLICELSIUS);
    assertTrue(words("Water/temperature").contains("-60 °C to 60 °C"));
    assertEquals(20_000_000L, PlanLimits.OFFERS_PRICE_HUNDREDTHS);
    assertTrue(
        Contract.document()
            .at("/components/schemas/Offer/description")
            .asText()
            .contains("at most 200000.00"));
  }

  private static long plan(String pointer) {
    return number("/components/schemas/" + pointer);
  }

  /** A number at a field, named as schema/field/keyword. */
  private static long field(String path) {
    return plan(path.replaceFirst("/", "/properties/"));
  }

  private static long thousandths(String path) {
    String pointer = "/components/schemas/" + path.replaceFirst("/", "/properties/");
    return Contract.document().at(pointer).decimalValue().movePointRight(3).longValueExact();
  }

  private static String words(String path) {
    String pointer = "/components/schemas/" + path.replaceFirst("/", "/properties/");
    return Contract.document().at(pointer + "/description").asText();
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
