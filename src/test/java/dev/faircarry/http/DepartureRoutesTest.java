package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Can we go like this, over HTTP. Ana and Bo have 10 kg of target each. A box of 3 kg covers all
 * ten systems; rope and cord, 1 kg each, cover nothing. All three are weighed.
 */
@ExtendWith(RunningService.class)
class DepartureRoutesTest {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "n", "days": 1,
       "hikers": [{"id": "a", "name": "Ana", "targetLoad": "10 kg"},
                  {"id": "b", "name": "Bo", "targetLoad": "10 kg"}],
       "shared": [{"id": "box", "mass": "3 kg", "massFrom": "scale",
                   "covers": ["map", "sun", "warmth", "light", "first-aid", "flame", "knife",
                              "food", "water", "shelter"]},
                  {"id": "rope", "mass": "1 kg", "massFrom": "scale"},
                  {"id": "cord", "mass": "1 kg", "massFrom": "scale"}]}
      """;

  private static String split(String ana, String bo) {
    return "{'format':'faircarry-split/1','carries':[{'hiker':'a','pieces':["
        + ana
        + "]},{'hiker':'b','pieces':["
        + bo
        + "]}]}";
  }

  private static ValidatableResponse ask(String trip, String split, String rest) {
    return json("{\"trip\":" + trip + (",'split':" + split + rest + "}").replace('\'', '"'))
        .post("/v1/departure-checks")
        .then();
  }

  @Test
  void nothingInTheWay() {
    ask(TRIP, split("'box'", "'rope','cord'"), ",'personalEssentials':[]")
        .statusCode(200)
        .body("readiness", equalTo("ready"))
        .body("findings", hasSize(0))
        .body("fairness.spread", equalTo(0.1f))
        .body("fairness.standings.targetRatio", contains(0.3f, 0.2f))
        .body("fairness.standings.aboveTargetGrams", contains(-7000, -8000))
        .body("fairness.gains", hasSize(0))
        .body("labels.unweighedGrams", equalTo(0))
        .body("labels.couldBeRatio", equalTo(0.3f));
  }

  /** Ana has 5 kg: giving a rope away makes 4 and 1, giving the box 2 and 3, which is best. */
  @Test
  void theHandoverThatGainsMost() {
    ask(TRIP, split("'box','rope','cord'", ""), ",'personalEssentials':[]")
        .statusCode(200)
        .body("fairness.gains.piece", contains("box"))
        .body("fairness.gains.from", contains("a"))
        .body("fairness.gains.worstRatio", contains(0.3f))
        .body("fairness.gains[0].words", equalTo("Ana gives “box” to Bo."));
  }

  @Test
  void everybodysOwnEssentialsAreAskedForUnlessSaidOtherwise() {
    ask(TRIP, split("'box'", "'rope','cord'"), "")
        .statusCode(200)
        .body("readiness", equalTo("ready-with-cautions"))
        .body("findings.severity", hasItem("caution"));
  }

  @Test
  void whatIsWithNobodyStopsTheGroup() {
    ask(TRIP, split("'box'", "'rope'"), ",'personalEssentials':[]")
        .statusCode(200)
        .body("readiness", equalTo("not-ready"))
        .body("findings.code", contains("not-carried"))
        .body("findings[0].pieces", contains("cord"))
        .body("fairness", nullValue());
  }

  @Test
  void aSplitMadeForAnotherTripIsStale() {
    String before = TRIP.replace("\"mass\": \"3 kg\"", "\"mass\": \"2 kg\"");
    ask(
            TRIP,
            split("'box'", "'rope','cord'"),
            ",'personalEssentials':[],'madeFor':" + before.replace('"', '\''))
        .statusCode(200)
        .body("findings.code", hasItem("stale"));
    ask(
            TRIP,
            split("'box'", "'rope','cord'"),
            ",'personalEssentials':[],'madeFor':" + TRIP.replace('"', '\''))
        .statusCode(200)
        .body("readiness", equalTo("ready"));
  }

  /** Labels: 5 kg unweighed, and the box a tenth too light would be 3.3 of 10 kg. */
  @Test
  void massesOfLabelsAreDoubted() {
    ask(
            TRIP.replace(", \"massFrom\": \"scale\"", ""),
            split("'box'", "'rope','cord'"),
            ",'personalEssentials':[]")
        .statusCode(200)
        .body("readiness", equalTo("ready"))
        .body("findings.code", contains("masses-from-labels"))
        .body("findings.severity", contains("advice"))
        .body("labels.unweighedGrams", equalTo(5000))
        .body("labels.worstRatio", equalTo(0.3f))
        .body("labels.couldBeRatio", equalTo(0.33f));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'personalEssentials':['fun'] | /personalEssentials/0 | unknown-word",
        "'personalEssentials':'fire' | /personalEssentials | wrong-type",
        "'madeFor':7 | /madeFor | wrong-type",
        "'ready':true | /ready | unknown-field"
      })
  void whatCannotBe(String rest, String place, String code) {
    ask(TRIP, split("'box'", "'rope','cord'"), "," + rest)
        .statusCode(422)
        .body("issues.pointer", contains(place))
        .body("issues.code", contains(code));
  }

  @Test
  void issuesOfAllPartsAreToldTogether() {
    json("{\"trip\":{},\"split\":{},\"madeFor\":{}}")
        .post("/v1/departure-checks")
        .then()
        .statusCode(422)
        .body("issues.pointer", hasItems("/trip/days", "/split/carries", "/madeFor/hikers"));
    json("[").post("/v1/departure-checks").then().statusCode(400);
    json("{}").post("/v1/departure-checks?effort=1").then().statusCode(400);
    json("{}").accept("text/plain").post("/v1/departure-checks").then().statusCode(406);
    request().put("/v1/departure-checks").then().statusCode(405).header("Allow", "OPTIONS, POST");
  }
}
