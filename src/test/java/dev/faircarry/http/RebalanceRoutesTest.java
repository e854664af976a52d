package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Changes of plans over HTTP. Three hikers of 10 kg target; a has 6 kg, b 6 kg, c 5 kg and 1 kg.
 * When a does not come, 18 kg are left for two. One handover is forced: 12 and 6 kg, worst ratio
 * 1.2. With a second, 11 and 7 kg, worst 1.1, and no division of 6, 6, 5, 1 is better.
 */
@ExtendWith(RunningService.class)
class RebalanceRoutesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "n", "days": 1,
       "hikers": [{"id": "a", "name": "Ana", "targetLoad": "10 kg"},
                  {"id": "b", "name": "Bo", "targetLoad": "10 kg"},
                  {"id": "c", "name": "Cy", "targetLoad": "10 kg"}],
       "shared": [{"id": "p1", "mass": "6 kg"}, {"id": "p2", "mass": "6 kg"},
                  {"id": "p3", "mass": "5 kg"}, {"id": "p4", "mass": "1 kg"}]}
      """;
  static final String SPLIT =
      """
      {"format": "faircarry-split/1", "carries": [{"hiker": "a", "pieces": ["p1"]},
       {"hiker": "b", "pieces": ["p2"]}, {"hiker": "c", "pieces": ["p3", "p4"]}]}
      """;
  private static final String A_OUT = "'changes':[{'kind':'drops-out','hiker':'a'}]";

  private static ValidatableResponse ask(String rest) {
    return json("{\"trip\":" + TRIP + ",\"split\":" + SPLIT + "," + rest.replace('\'', '"') + "}")
        .post("/v1/rebalances")
        .then();
  }

  @Test
  void theCurveOfADropOut() {
    ask(A_OUT)
        .statusCode(200)
        .body("result", equalTo("curve"))
        .body("trip.hikers.id", contains("b", "c"))
        .body("complete", equalTo(true))
        .body("points.handovers", contains(1, 2))
        .body("points.worst.targetRatio", contains(1.2f, 1.1f))
        .body("points.worst.steps", contains(240, 220))
        .body("points[0].movedGrams", equalTo(6000))
        .body("points[0].list[0].from", equalTo("a"))
        .body("points[0].list[0].words", startsWith("Ana gives “p1” to "))
        .body("points.proof.proved", contains(true, true))
        .body("recommended", equalTo(1))
        .body("chosen", equalTo(1))
        .body("cautions[0]", containsString("not medical advice"));
  }

  /** Trip and split of a point go into the check as they are, and weigh there what they do here. */
  @Test
  void aPointIsAcceptedUnchanged() throws IOException {
    JsonNode answer = JSON.readTree(ask(A_OUT).extract().asString());
    for (JsonNode point : answer.path("points")) {
      json("{\"trip\":" + answer.get("trip") + ",\"split\":" + point.get("split") + "}")
          .post("/v1/checks")
          .then()
          .statusCode(200)
          .body("keepsRules", equalTo(true))
          .body("worst.steps", equalTo(point.at("/worst/steps").asInt()));
    }
    assertEquals(2, answer.path("points").size());
  }

  @Test
  void aBoundPicksAPoint() {
    ask(A_OUT + ",'maxHandovers':1")
        .statusCode(200)
        .body("chosen", equalTo(0))
        .body("recommended", equalTo(1))
        .body("reason", equalTo("The fairest with at most 1 handover."));
    ask(A_OUT + ",'maxHandovers':0").statusCode(200).body("chosen", equalTo(0));
  }

  /** All but p1 packed: p1 to b makes 12 and 6, to c 6 and 12; nothing else may move. */
  @Test
  void whatIsPackedStays() {
    ask(A_OUT + ",'frozen':['p2','p3','p4']")
        .statusCode(200)
        .body("points.handovers", contains(1))
        .body("points.worst.targetRatio", contains(1.2f));
  }

  @Test
  void nothingChangedMeansNothingMoves() {
    ask("'changes':[]")
        .statusCode(200)
        .body("points.handovers", contains(0))
        .body("points[0].list.size()", equalTo(0))
        .body("points[0].worst.targetRatio", equalTo(0.6f));
  }

  @Test
  void rulesThatCannotHoldAfterwardsAreNamed() {
    ask("'changes':[{'kind':'rule-added','rule':{'id':'no','kind':'barred','pieces':['p1'],"
            + "'hikers':['a','b','c']}}]")
        .statusCode(200)
        .body("result", equalTo("impossible"))
        .body("conflict.id", contains("no"))
        .body("irreducible", equalTo(true));
    ask("'changes':[{'kind':'rule-added','rule':{'id':'no','kind':'barred','pieces':['p1'],"
            + "'hikers':['a']}}],'frozen':['p1']")
        .statusCode(200)
        .body("result", equalTo("impossible"))
        .body("conflict.kind", contains("barred", "frozen"));
  }

  @Test
  void tooLittleEffortIsNoError() {
    json("{\"trip\":" + TRIP + ",\"split\":" + SPLIT + "}")
        .post("/v1/rebalances?effort=1")
        .then()
        .statusCode(200)
        .body("effortSteps", not(equalTo(0)));
  }

  @Test
  void everyKindOfChangeIsRead() {
    ask("""
        'changes':[
          {'kind':'joins','hiker':{'id':'d','name':'Dee','targetLoad':'10 kg'}},
          {'kind':'can-carry','hiker':'b','targetLoad':'8 kg','capLoad':'9 kg','maxPieces':3},
          {'kind':'days-added','days':2},
          {'kind':'leaves-after','hiker':'c','day':2},
          {'kind':'item-added','item':{'id':'saw','mass':'300 g'}},
          {'kind':'item-weighs','piece':'p2','mass':'5.5 kg','massFrom':'scale'},
          {'kind':'item-replaced','item':'p4','by':{'id':'p5','mass':'900 g'}},
          {'kind':'item-gone','piece':'p3'},
          {'kind':'kit-added','hiker':'a','item':{'id':'hat','mass':'90 g'}},
          {'kind':'kit-weighs','hiker':'a','item':'hat','mass':'4 oz'},
          {'kind':'kit-gone','hiker':'a','item':'hat'},
          {'kind':'rule-added','rule':{'id':'r','kind':'pinned','pieces':['saw'],'hiker':'d'}},
          {'kind':'rule-removed','rule':'r'},
          {'kind':'pack-weighs','hiker':'a','mass':'1 kg'},
          {'kind':'drops-out','hiker':'a'}]
        """
            .strip())
        .statusCode(200)
        .body("trip.days", equalTo(3))
        .body("trip.hikers.id", contains("b", "c", "d"))
        .body("trip.shared.id", contains("p1", "p2", "p5", "saw"))
        .body("trip.rules.size()", equalTo(0))
        .body("trip.hikers[1].leavesAfterDay", equalTo(2));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'changes':[{'kind':'drops-out','hiker':'ghost'}] | /changes/0/hiker | unknown-hiker",
        "'changes':[{'kind':'drops-out','hiker':'a'},{'kind':'drops-out','hiker':'a'}] | /changes/1/hiker | unknown-hiker",
        "'changes':[{'kind':'flies'}] | /changes/0/kind | unknown-word",
        "'changes':[{}] | /changes/0/kind | missing",
        "'changes':[7] | /changes/0 | wrong-type",
        "'changes':{} | /changes | wrong-type",
        "'changes':[{'kind':'days-added','days':-1}] | /changes/0/days | out-of-range",
        "'changes':[{'kind':'days-added','days':30}] | /changes/0/days | out-of-range",
        "'changes':[{'kind':'leaves-after','hiker':'a','day':2}] | /changes/0/day | no-such-day",
        "'changes':[{'kind':'item-gone','piece':'ghost'}] | /changes/0/piece | unknown-piece",
        "'changes':[{'kind':'item-gone','piece':'p1','units':1}] | /changes/0/units | contradiction",
        "'changes':[{'kind':'item-weighs','piece':'p1','mass':'-1 kg'}] | /changes/0/mass | negative",
        "'changes':[{'kind':'item-weighs','piece':'p1','mass':'300 kg'}] | /changes | out-of-range",
        "'changes':[{'kind':'kit-gone','hiker':'a','item':'ghost'}] | /changes/0/item | unknown-thing",
        "'changes':[{'kind':'rule-removed','rule':'ghost'}] | /changes/0/rule | unknown-thing",
        "'changes':[{'kind':'joins','hiker':{'id':'a','targetLoad':'1 kg'}}] | /changes/0/hiker/id | duplicate-id",
        "'changes':[{'kind':'drops-out','hiker':'a','why':'rain'}] | /changes/0/why | unknown-field",
        "'frozen':['ghost'] | /frozen/0 | unknown-piece",
        "'frozen':[7] | /frozen/0 | wrong-type",
        "'maxHandovers':-1 | /maxHandovers | out-of-range",
        "'maxHandovers':0.5 | /maxHandovers | wrong-type",
        "'maxHandovers':'few' | /maxHandovers | wrong-type",
        "'colour':1 | /colour | unknown-field"
      })
  void whatCannotBe(String rest, String place, String code) {
    ask(rest)
        .statusCode(422)
        .body("issues.pointer", contains(place))
        .body("issues.code", contains(code));
  }

  @Test
  void everybodyGoneIsAnIssueOfTheChanges() {
    ask("'changes':[{'kind':'drops-out','hiker':'a'},{'kind':'drops-out','hiker':'b'},"
            + "{'kind':'drops-out','hiker':'c'}]")
        .statusCode(422)
        .body("issues.pointer", contains("/changes"))
        .body("issues.code", contains("empty-group"));
  }

  @Test
  void fiftyOneChangesAreTooMany() {
    String one = "{'kind':'days-added','days':1},";
    ask("'changes':[" + one.repeat(50) + one.substring(0, one.length() - 1) + "]")
        .statusCode(422)
        .body("issues.code", hasItem("too-many"));
  }

  @Test
  void aBodyMassIsNotRepeatedWhenItIsWrong() {
    ask("'changes':[{'kind':'can-carry','hiker':'a','bodyMass':'61.37 stones'}]")
        .statusCode(422)
        .body("issues.pointer", contains("/changes/0/bodyMass"))
        .body(not(containsString("61.37")));
    ask("'changes':[{'kind':'can-carry','hiker':'a','bodyMass':'461.37 kg'}]")
        .statusCode(422)
        .body(not(containsString("461.37")));
  }

  @ParameterizedTest
  @CsvSource({
    "'{', 400",
    "null, 422",
    "'[]', 422",
    "'{}', 422",
    "'{\"trip\":{},\"split\":{}}', 422"
  })
  void bodiesThatAreNone(String body, int status) {
    json(body).post("/v1/rebalances").then().statusCode(status);
  }

  @Test
  void methodsKindsAndParameters() {
    request().get("/v1/rebalances").then().statusCode(405).header("Allow", "OPTIONS, POST");
    json("{}").accept("text/html").post("/v1/rebalances").then().statusCode(406);
    json("{}").post("/v1/rebalances?effort=500000001").then().statusCode(400);
    json("{}").post("/v1/rebalances?plot=loads").then().statusCode(400);
    request().contentType("text/csv").body("a").post("/v1/rebalances").then().statusCode(415);
  }
}
