package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.weigh.WeighLimits;
import io.restassured.response.ValidatableResponse;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weigh-ins over HTTP. Ada: pack 816.466 g (1.8 lb), quilt 600 g. Ben: pack 1.5 kg, tent 2 kg. */
@ExtendWith(RunningService.class)
class WeighInRoutesTest {
  private static final JsonMapper JSON = new JsonMapper();

  private static ObjectNode question() {
    return Contract.document().at("/components/examples/WeighInOfTwo/value").deepCopy();
  }

  private static ValidatableResponse ask(String readings, String rest) {
    try {
      ObjectNode question = question();
      question.set("readings", JSON.readTree(readings));
      question.setAll((ObjectNode) JSON.readTree(rest));
      return json(question.toString()).post("/v1/weigh-ins").then();
    } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
      throw new AssertionError(readings + rest, e);
    }
  }

  /** What the contract shows is what is answered. */
  @Test
  void theExampleIsTheAnswer() throws Exception {
    String answer =
        json(question().toString())
            .post("/v1/weigh-ins")
            .then()
            .statusCode(200)
            .extract()
            .asString();
    JsonNode shown = Contract.document().at("/components/examples/WeighedInOfTwo/value");
    // Through text, so that 700 and 700.0 are compared as they are written.
    assertEquals(JSON.readTree(shown.toString()), JSON.readTree(answer));
  }

  /** 1,043.262 + 600 g are 1,643 g to a gram: with the pack weighed, the whole pack agrees. */
  @Test
  void singleThingsAreUsedForPacksAndTakenOver() {
    ask(
            "[{\"kind\":\"whole-pack\",\"hiker\":\"ada\",\"mass\":\"1643 g\"},"
                + "{\"kind\":\"empty-pack\",\"hiker\":\"ada\",\"mass\":\"2.3 lb\"}]",
            "{\"accept\":\"all\"}")
        .statusCode(200)
        .body("weighed.subject", contains("empty-pack/ada", "whole-pack/ada"))
        .body("weighed.result", contains("replaces", "agrees"))
        .body("trip.hikers[0].pack.mass", equalTo("2.3 lb"))
        .body("trip.hikers[0].pack.massFrom", equalTo("scale"))
        .body("trip.hikers[0].pack.labelMass", equalTo("1.8 lb"))
        .body("trip.hikers[0].kit.id", contains("quilt"))
        .body("notes", empty());
  }

  @Test
  void onlyWhatIsNamedIsTakenOver() {
    ask(
            "[{\"kind\":\"whole-pack\",\"hiker\":\"ben\",\"mass\":\"4.2 kg\"},"
                + "{\"kind\":\"empty-pack\",\"hiker\":\"ada\",\"mass\":\"2.3 lb\"}]",
            "{\"accept\":[\"whole-pack/ben\"]}")
        .statusCode(200)
        .body("changes.kind", contains("pack-weighs", "kit-added"))
        .body("trip.hikers[0].pack.mass", equalTo("1.8 lb"))
        .body("trip.hikers[1].kit[0].id", equalTo("scale-rest"))
        .body("trip.hikers[1].kit[0].mass", equalTo("700 g"));
  }

  /**
   * 3.5 kg read as 3.5 lb is 1,588 g: 2.2 times less. Nothing is changed unless it is confirmed.
   */
  @Test
  void slipsAreQuestionedUntilConfirmed() {
    String slip = "{\"kind\":\"whole-pack\",\"hiker\":\"ben\",\"mass\":\"3.5 lb\"}";
    ask("[" + slip + "]", "{\"accept\":\"all\"}")
        .statusCode(200)
        .body("weighed[0].result", equalTo("questioned"))
        .body("weighed[0].question", containsString("pounds and kilograms"))
        .body("changes", empty())
        .body("trip.hikers[1].kit", nullValue());
    String looked =
        "{\"kind\":\"whole-pack\",\"hiker\":\"ben\",\"mass\":\"3.52 kg\",\"confirmed\":true}";
    ask("[" + slip + "," + looked + "]", "{}")
        .statusCode(200)
        .body("agrees", equalTo(true))
        .body("weighed[0].readings.mass", contains("3.5 lb", "3.52 kg"));
  }

  @Test
  void aToleranceOfOnesOwn() {
    String reading = "[{\"kind\":\"piece\",\"piece\":\"tent\",\"mass\":\"2.03 kg\"}]";
    ask(reading, "{}").body("weighed[0].result", equalTo("agrees"));
    ask(reading, "{\"tolerance\":{\"mass\":\"20 g\"}}")
        .body("weighed[0].result", equalTo("replaces"));
    ask(reading, "{\"tolerance\":{\"mass\":\"20 g\",\"thousandths\":15}}")
        .body("weighed[0].toleranceGrams", equalTo(30))
        .body("weighed[0].result", equalTo("agrees"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "{'kind':'pack','hiker':'ada','mass':'1 kg'}; unknown-word; /readings/0/kind",
        "{'mass':'1 kg'}; missing; /readings/0/kind",
        "{'kind':'kit','hiker':'ada','mass':'1 kg'}; missing; /readings/0/item",
        "{'kind':'kit','hiker':'ada','item':'sofa','mass':'1 kg'}; unknown-thing; /readings/0/item",
        "{'kind':'whole-pack','hiker':'cleo','mass':'1 kg'}; unknown-hiker; /readings/0/hiker",
        "{'kind':'piece','piece':'tarp','mass':'1 kg'}; unknown-piece; /readings/0/piece",
        "{'kind':'piece','piece':'tent/fly','mass':'1 kg'}; unknown-piece; /readings/0/piece",
        "{'kind':'piece','piece':'tent','mass':'0 g'}; out-of-range; /readings/0/mass",
        "{'kind':'piece','piece':'tent','mass':'201 kg'}; out-of-range; /readings/0/mass",
        "{'kind':'piece','piece':'tent','mass':'12'}; no-unit; /readings/0/mass",
        "{'kind':'piece','piece':'tent','mass':'1 kg','at':'\\u0007'}; bad-text; /readings/0/at",
        "{'kind':'piece','piece':'tent','mass':'1 kg','hiker':'ada'}; unknown-field; /readings/0/hiker",
        "7; wrong-type; /readings/0"
      })
  void wrongReadingsAreToldWithTheirPlace(String reading, String code, String place) {
    ask("[" + reading.replace('\'', '"') + "]", "{}")
        .statusCode(422)
        .body("issues.code", contains(code))
        .body("issues.pointer", contains(place));
  }

  @Test
  void whatCannotBeTakenOverIsTold() {
    String readings =
        "[{\"kind\":\"whole-pack\",\"hiker\":\"ben\",\"mass\":\"3.1 kg\"},"
            + "{\"kind\":\"whole-pack\",\"hiker\":\"ada\",\"mass\":\"1416 g\"}]";
    ask(readings, "{\"accept\":[\"whole-pack/ben\",\"kit/ada/quilt\"]}")
        .statusCode(422)
        .body("issues.pointer", contains("/accept/0", "/accept/1"))
        .body("issues.code", contains("contradiction", "unknown-thing"))
        .body("issues[0].message", containsString("left behind"));
    ask(readings, "{\"accept\":\"everything\"}").statusCode(422);
    ask(readings, "{\"tolerance\":{\"mass\":\"6 kg\",\"thousandths\":101}}")
        .statusCode(422)
        .body("issues.pointer", contains("/tolerance/mass", "/tolerance/thousandths"));
  }

  /** A cartridge that leaves 150 g cannot weigh 120 g: the trip it would make is told in words. */
  @Test
  void aTripThatWouldNotDoIsTold() {
    ObjectNode question = question();
    ((com.fasterxml.jackson.databind.node.ArrayNode) question.at("/trip/shared"))
        .addObject()
        .put("id", "gas")
        .put("name", "Gas")
        .put("mass", "160 g")
        .putObject("use")
        .put("kind", "evenly")
        .put("leaves", "150 g");
    question
        .putArray("readings")
        .addObject()
        .put("kind", "piece")
        .put("piece", "gas")
        .put("mass", "120 g");
    question.put("accept", "all");
    json(question.toString())
        .post("/v1/weigh-ins")
        .then()
        .statusCode(422)
        .body("issues.code", contains("leaves-too-much"))
        .body("issues.pointer", contains("/readings"))
        .body("issues[0].message", containsString("/shared/1/use/leaves"));
  }

  /** A split by hand may name what the trip does not have; that is for the check to tell. */
  @Test
  void aSplitThatFitsBadlyIsPassedOver() {
    ObjectNode question = question();
    ((com.fasterxml.jackson.databind.node.ArrayNode) question.at("/split/carries/0/pieces"))
        .add("ghost")
        .add("tent/fly");
    json(question.toString())
        .post("/v1/weigh-ins")
        .then()
        .statusCode(200)
        .body("weighed[1].expectedGrams", equalTo(3500));
  }

  @Test
  void limitsAreThoseOfTheContract() {
    String schemas = "/components/schemas/";
    JsonNode contract = Contract.document();
    assertEquals(WeighLimits.READINGS, contract.at(schemas + "ScaleReadings/maxItems").asInt());
    assertEquals(
        WeighLimits.TEXT_LENGTH,
        contract.at(schemas + "ScaleReading/properties/at/maxLength").asInt());
    assertEquals(
        WeighLimits.TOLERANCE_THOUSANDTHS,
        contract.at(schemas + "Tolerance/properties/thousandths/maximum").asInt());
    String many =
        IntStream.rangeClosed(0, WeighLimits.READINGS)
            .mapToObj(i -> "{\"kind\":\"piece\",\"piece\":\"tent\",\"mass\":\"2 kg\"}")
            .collect(Collectors.joining(",", "[", "]"));
    ask(many, "{}").statusCode(422).body("issues.code", contains("too-many"));
  }

  @Test
  void oddBodies() {
    for (String body : new String[] {"null", "[]", "{}", "\"x\""}) {
      json(body)
          .post("/v1/weigh-ins")
          .then()
          .statusCode(422)
          .body("code", equalTo("invalid-document"));
    }
    json("{}")
        .post("/v1/weigh-ins")
        .then()
        .body("issues.pointer", hasItems("/trip", "/split", "/readings"))
        .body("issues.message", not(empty()));
    json("{").post("/v1/weigh-ins").then().statusCode(400);
    json("{}").post("/v1/weigh-ins?effort=1").then().statusCode(400);
  }
}
