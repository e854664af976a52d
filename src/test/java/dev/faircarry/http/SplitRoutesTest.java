package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@ExtendWith(RunningService.class)
class SplitRoutesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  static List<Path> demoTrips() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-data"))) {
      return files.filter(f -> f.toString().endsWith(".json")).sorted().toList();
    }
  }

  /**
   * The answer to a demo trip is valid, and, sent back unchanged, keeps all rules and weighs the
   * same.
   */
  @ParameterizedTest
  @MethodSource("demoTrips")
  void answersAreAcceptedUnchanged(Path file) throws IOException {
    String trip = Files.readString(file);
    String answer =
        json(trip).post("/v1/splits?effort=2000000").then().statusCode(200).extract().asString();
    JsonNode result = JSON.readTree(answer);
    if (result.get("result").asText().equals("split")) {
      ObjectNode question = JSON.createObjectNode();
      question.set("trip", JSON.readTree(trip));
      question.set("split", result);
      String verdict =
          json(question.toString())
              .post("/v1/checks")
              .then()
              .statusCode(200)
              .body("keepsRules", equalTo(true))
              .extract()
              .asString();
      assertEquals(result.get("worst"), JSON.readTree(verdict).get("worst"));
    } else {
      assertEquals("impossible", result.get("result").asText());
    }
  }

  /** 1.2 kg and 0.8 kg for two hikers alike, target 10 kg: 0.120 and 0.080, worked out by hand. */
  @Test
  void loadsAreTold() {
    json(two("{\"id\":\"a\",\"mass\":\"1.2 kg\"},{\"id\":\"b\",\"mass\":\"800 g\"}", ""))
        .post("/v1/splits")
        .then()
        .statusCode(200)
        .body("result", equalTo("split"))
        .body("worst.targetRatio", equalTo(0.12f))
        .body("proof.proved", equalTo(true))
        .body("carries.pieces.flatten()", org.hamcrest.Matchers.containsInAnyOrder("a", "b"))
        .body("carries.mornings.flatten().loadGrams", hasItem(1200))
        .body("cautions", not(hasSize(0)));
  }

  @Test
  void rulesThatCannotHoldAreNamed() {
    String rules =
        "{\"id\":\"in\",\"kind\":\"pinned\",\"pieces\":[\"a\"],\"hiker\":\"x\"},"
            + "{\"id\":\"out\",\"kind\":\"barred\",\"pieces\":[\"a\"],\"hikers\":[\"x\"]}";
    json(two("{\"id\":\"a\",\"mass\":\"1 kg\"}", rules))
        .post("/v1/splits")
        .then()
        .statusCode(200)
        .body("result", equalTo("impossible"))
        .body("conflict.id", contains("in", "out"))
        .body("irreducible", equalTo(true));
  }

  /** One of two meals is eaten each day; x has one more at first, so hers is opened on day 1. */
  @Test
  void aHandMadeSplitNeedNotSayWhoseMealsAreOpenedWhen() {
    String trip =
        two(
                "{\"id\":\"meal\",\"count\":3,\"unitMass\":\"1 kg\","
                    + "\"use\":{\"kind\":\"units-per-day\",\"perDay\":1}}",
                "")
            .replace("\"days\":1", "\"days\":3");
    String split =
        "{\"format\":\"faircarry-split/1\",\"carries\":["
            + "{\"hiker\":\"x\",\"pieces\":[{\"piece\":\"meal\",\"units\":2}]},"
            + "{\"hiker\":\"y\",\"pieces\":[\"meal\"]}]}";
    json("{\"trip\":" + trip + ",\"split\":" + split + "}")
        .post("/v1/checks")
        .then()
        .statusCode(200)
        .body("keepsRules", equalTo(true))
        .body("findings.code", contains("opening-plan-assumed"))
        .body("opened.day", contains(1, 2, 3))
        .body("opened.hiker", contains("x", "x", "y"));
  }

  /** x takes both pinned kilograms, 0.2; without the rule each takes one. */
  @Test
  void whatKeepsASplitFromBeingFairerIsSaid() {
    String shared = "{\"id\":\"a\",\"mass\":\"1 kg\"},{\"id\":\"b\",\"mass\":\"1 kg\"}";
    String rule = "{\"id\":\"in\",\"kind\":\"pinned\",\"pieces\":[\"a\",\"b\"],\"hiker\":\"x\"}";
    json(two(shared, rule))
        .post("/v1/explanations")
        .then()
        .statusCode(200)
        .body("outcome.result", equalTo("split"))
        .body("binding.kind", equalTo("demand"))
        .body("binding.demand.id", equalTo("in"))
        .body("binding.steps", equalTo(20))
        .body("lifted[0].demand.id", equalTo("in"))
        .body("lifted[0].worstSteps", equalTo(20))
        .body("lifted[0].proved", equalTo(true));
  }

  @ParameterizedTest
  @MethodSource("demoTrips")
  void everyDemoTripIsExplained(Path file) throws IOException {
    json(Files.readString(file)).post("/v1/explanations?effort=100000").then().statusCode(200);
  }

  @Test
  void aBadTripIsNotExplained() {
    json(two("{\"id\":\"a\",\"mass\":\"3 stones\"}", ""))
        .post("/v1/explanations")
        .then()
        .statusCode(422)
        .body("issues.pointer", hasItem("/shared/0/mass"));
    json("{}").post("/v1/explanations?effort=none").then().statusCode(400);
  }

  @Test
  void aHandMadeSplitThatBreaksARuleIsToldWhich() {
    String trip =
        two(
            "{\"id\":\"a\",\"mass\":\"1 kg\"}",
            "{\"id\":\"out\",\"kind\":\"barred\",\"pieces\":[\"a\"],\"hikers\":[\"x\"]}");
    String split =
        "{\"format\":\"faircarry-split/1\",\"carries\":[{\"hiker\":\"x\",\"pieces\":[\"a\"]}]}";
    json("{\"trip\":" + trip + ",\"split\":" + split + "}")
        .post("/v1/checks")
        .then()
        .statusCode(200)
        .body("keepsRules", equalTo(false))
        .body("findings.code", contains("barred"))
        .body("findings[0].rules", contains("out"));
  }

  @Test
  void issuesOfTripAndSplitAreToldTogether() {
    String trip = two("{\"id\":\"a\",\"mass\":\"3 stones\"}", "");
    json("{\"trip\":" + trip + ",\"split\":{\"format\":\"faircarry-split/1\",\"carriers\":[]}}")
        .post("/v1/checks")
        .then()
        .statusCode(422)
        .body("issues.pointer", hasItem("/trip/shared/0/mass"))
        .body("issues.pointer", hasItem("/split/carriers"));
  }

  @Test
  void aBodyMassIsNeverRepeated() {
    json("{\"format\":\"faircarry-trip/1\",\"name\":\"n\",\"days\":1,\"hikers\":[{\"id\":\"x\",\"bodyMass\":\"73.21 stones\"}]}")
        .post("/v1/splits")
        .then()
        .statusCode(422)
        .body("issues.pointer", contains("/hikers/0/bodyMass"))
        .body(not(containsString("73.21")));
  }

  /** Two hikers called x and y with target loads of 10 kg. */
  static String two(String shared, String rules) {
    return "{\"format\":\"faircarry-trip/1\",\"name\":\"n\",\"days\":1,\"hikers\":["
        + "{\"id\":\"x\",\"targetLoad\":\"10 kg\"},{\"id\":\"y\",\"targetLoad\":\"10 kg\"}],"
        + "\"shared\":["
        + shared
        + "],\"rules\":["
        + rules
        + "]}";
  }
}
