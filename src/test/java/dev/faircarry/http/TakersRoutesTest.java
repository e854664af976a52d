package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who takes one more thing, over HTTP. Ana has the tent (3 kg of 10), Bo the pot (1 kg of 5), Cy
 * nothing of 10 kg, and is barred from the rope; the rope of 1 kg is with nobody.
 */
@ExtendWith(RunningService.class)
class TakersRoutesTest {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "n", "days": 1,
       "hikers": [{"id": "a", "name": "Ana", "targetLoad": "10 kg"},
                  {"id": "b", "name": "Bo", "targetLoad": "5 kg"},
                  {"id": "c", "name": "Cy", "targetLoad": "10 kg"}],
       "shared": [{"id": "tent", "mass": "3 kg"}, {"id": "pot", "mass": "1 kg"},
                  {"id": "rope", "mass": "1 kg"},
                  {"id": "box", "parts": [{"id": "lid", "mass": "0 g"}]},
                  {"id": "bread", "count": 4, "unitMass": "500 g"}],
       "rules": [{"id": "no", "kind": "barred", "pieces": ["rope"], "hikers": ["c"]}]}
      """;
  private static final String SPLIT =
      """
      {"format": "faircarry-split/1", "carries": [{"hiker": "a", "pieces": ["tent", "box/lid"]},
       {"hiker": "b", "pieces": ["pot"]}, {"hiker": "c", "pieces": [{"piece": "bread", "units": 3}]}]}
      """;

  private static ValidatableResponse ask(String rest) {
    return json("{\"trip\":" + TRIP + ",\"split\":" + SPLIT + "," + rest.replace('\'', '"') + "}")
        .post("/v1/takers")
        .then();
  }

  /**
   * With Ana the list of ratios is 0.4, 0.2, 0.15; with Bo 0.4, 0.3, 0.15, which is worse at the
   * second place. Cy is barred.
   */
  @Test
  void theBestFirstAndWhyNotTheOthers() {
    ask("'piece':'rope'")
        .statusCode(200)
        .body("takers.hiker", contains("a", "b", "c"))
        .body("takers.can", contains(true, true, false))
        .body("takers[0].rank", equalTo(1))
        .body("takers[0].steps", contains(80, 40, 30))
        .body("takers[1].rank", equalTo(2))
        .body("takers[1].steps", contains(80, 60, 30))
        .body("takers[1].worst.hiker", equalTo("b"))
        .body("takers[2].findings.code", contains("barred"))
        .body("takers[2].findings[0].rules", contains("no"));
  }

  /** 0.5 kg of bread more: Cy 2.0 of 10 leaves 0.3 the worst, as before; Ana 0.35, Bo 0.3 twice. */
  @Test
  void aUnitOfSomethingCounted() {
    ask("'piece':'bread'")
        .statusCode(200)
        .body("takers.hiker", contains("c", "b", "a"))
        .body("takers[0].steps", contains(60, 40, 40))
        .body("takers[0].split.carries.find { it.hiker == 'c' }.pieces[0].units", equalTo(4));
    ask("'piece':'bread','units':2")
        .statusCode(200)
        .body("takers.can", contains(false, false, false))
        .body("takers[0].findings.code", contains("carried-twice"));
  }

  /** A new thing of 2 kg: with Cy 0.35, 0.3, 0.2; with Ana 0.5; with Bo 0.6. */
  @Test
  void aThingTheTripDoesNotHaveYet() throws IOException {
    String answer =
        ask("'item':{'id':'axe','name':'Axe','mass':'2 kg'}")
            .statusCode(200)
            .body("takers.hiker", contains("c", "a", "b"))
            .body("takers.worst.targetRatio", contains(0.35f, 0.5f, 0.6f))
            .extract()
            .asString();
    JsonNode split = new ObjectMapper().readTree(answer).at("/takers/0/split");
    String trip = TRIP.replace("\"shared\": [", "\"shared\": [{\"id\":\"axe\",\"mass\":\"2 kg\"},");
    json("{\"trip\":" + trip + ",\"split\":" + split + "}")
        .post("/v1/checks")
        .then()
        .statusCode(200)
        .body("worst.targetRatio", equalTo(0.35f));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'units':1 | /piece | missing",
        "'piece':'ghost' | /piece | unknown-piece",
        "'piece':'box' | /piece | unknown-piece",
        "'piece':'rope','units':0 | /units | out-of-range",
        "'piece':'bread','units':-3 | /units | out-of-range",
        "'piece':'bread','units':'two' | /units | wrong-type",
        "'piece':7 | /piece | wrong-type",
        "'piece':'rope','item':{'id':'x','mass':'1 g'} | /item | conflicting-fields",
        "'item':{'id':'tent','mass':'1 g'} | /item/id | duplicate-id",
        "'item':{'id':'x','mass':'300 kg'} | /item/mass | out-of-range",
        "'item':{'id':'x','mass':'1 stone'} | /item/mass | unknown-unit",
        "'item':{'id':'x','mass':'1 g','owner':'ghost'} | /item/owner | unknown-hiker",
        "'item':{'id':'x','parts':[{'id':'y','mass':'1 g'}]} | /item | unknown-piece",
        "'item':[] | /item | wrong-type",
        "'piece':'rope','colour':1 | /colour | unknown-field"
      })
  void whatCannotBe(String rest, String place, String code) {
    ask(rest)
        .statusCode(422)
        .body("issues.pointer", contains(place))
        .body("issues.code", contains(code));
  }

  @Test
  void issuesOfTripAndSplitAreToldTogether() {
    json("{\"trip\":{},\"split\":{},\"piece\":\"x\"}")
        .post("/v1/takers")
        .then()
        .statusCode(422)
        .body("issues.pointer", org.hamcrest.Matchers.hasItems("/trip/days", "/split/carries"));
    json("{").post("/v1/takers").then().statusCode(400);
    json("{}").post("/v1/takers?effort=1").then().statusCode(400);
    request().get("/v1/takers").then().statusCode(405).header("Allow", "OPTIONS, POST");
  }
}
