package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.path.json.JsonPath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rest of the trip over HTTP, on a real server. */
@ExtendWith(RunningService.class)
class PlanRoutesTest {

  private static String demo(String name) throws IOException {
    return Files.readString(Path.of("demo-data/plans/" + name + ".json"));
  }

  static List<Path> plans() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("demo-data/plans"))) {
      return files.sorted().toList();
    }
  }

  private static String look(String trip) {
    return "{\"trip\":" + trip + "}";
  }

  /** Every question can be asked of every demo trip; the trips in the answers are trips. */
  @ParameterizedTest
  @MethodSource("plans")
  void everyQuestionOfEveryDemoTrip(Path file) throws IOException {
    String trip = Files.readString(file);
    for (String path : List.of("/v1/kit-reports", "/v1/efforts", "/v1/choices")) {
      json(look(trip)).post(path).then().statusCode(200);
    }
    String provided = json(trip).post("/v1/provisions").then().statusCode(200).extract().asString();
    assertEquals(
        "faircarry-trip/1", JsonPath.from(provided).getString("trip.format"), file.toString());
    String split = json(trip).post("/v1/splits").then().statusCode(200).extract().asString();
    json("{\"trip\":" + trip + ",\"split\":" + split + "}")
        .post("/v1/kit-reports")
        .then()
        .statusCode(200);
  }

  /**
   * Per person and day 3100 kcal less the dinner's 700; 100 g of food have 58 x 4 + 14 x 4 + 20 x 9
   * = 468 kcal; 2400 kcal / 4.68 kcal/g = 512.8 g, rounded up.
   */
  @Test
  void rationsFollowFromEnergyAndMix() throws IOException {
    json(demo("whole-trip"))
        .post("/v1/provisions")
        .then()
        .statusCode(200)
        .body("figures.find { it.name == 'rationGrams' }.amount", equalTo(512.821f))
        .body("items.find { it.item.id == 'plan-ration' }.reason", containsString(" 513 g of food"))
        .body("items.item.id", hasItem("plan-ration"))
        .body("trip.shared.id", hasItem("plan-ration"))
        .body("items.find { it.item.id == 'plan-ration' }.followsParty", equalTo(true));
  }

  /** Asked again of its own answer, the same items come out, once each. */
  @Test
  void askingAgainReplaces() throws IOException {
    String once = json(demo("whole-trip")).post("/v1/provisions").then().extract().asString();
    String trip =
        new com.fasterxml.jackson.databind.ObjectMapper().readTree(once).get("trip").toString();
    String twice = json(trip).post("/v1/provisions").then().statusCode(200).extract().asString();
    assertEquals(
        JsonPath.from(once).getList("trip.shared.id"),
        JsonPath.from(twice).getList("trip.shared.id"));
  }

  /** Two shelters for 520.00 pass the budget of 300.00; one, with the lighter pot, is 298.00. */
  @Test
  void theChoiceKeepsTheBudget() throws IOException {
    json("{\"withSplits\":true,\"trip\":" + demo("what-to-take") + "}")
        .post("/v1/choices")
        .then()
        .statusCode(200)
        .body("outcome", equalTo("chosen"))
        .body("budget", equalTo(300))
        .body("chosen.price", equalTo(298))
        .body("complete", equalTo(true))
        .body("effect.after.outcome", equalTo("solved"))
        .body("cautions", not(empty()));
  }

  @Test
  void aBudgetBelowTheCheapestIsAResult() {
    String trip =
        """
        {"format": "faircarry-trip/1", "name": "n", "days": 1,
         "hikers": [{"id": "x", "targetLoad": "10 kg"}],
         "plan": {"taking": {
           "needs": [{"covers": "saw", "atLeast": 1}, {"covers": "pot", "atLeast": "0 L"},
                     {"covers": "sleeping", "atLeast": 0}, {"covers": "flame", "atLeast": 0},
                     {"covers": "water-treatment", "atLeast": 0}, {"covers": "light", "atLeast": 0},
                     {"covers": "first-aid", "atLeast": 0}, {"covers": "repair", "atLeast": 0},
                     {"covers": "navigation", "atLeast": 0}],
           "offers": [{"id": "saw", "mass": "200 g", "price": "30", "covers": [{"need": "saw"}]}],
           "budget": "29.99"}}}
        """;
    json(look(trip))
        .post("/v1/choices")
        .then()
        .statusCode(200)
        .body("outcome", equalTo("over-budget"))
        .body("frontier.price", contains(30))
        .body("frontier[0].bought.offer", contains("saw"));
    json(look(trip.replace("29.99", "30.00")))
        .post("/v1/choices")
        .then()
        .statusCode(200)
        .body("outcome", equalTo("chosen"))
        .body("trip.shared.id", contains("saw"));
  }

  /**
   * Pack 1.31 kg weighed, 1.1 kg claimed; quilt 905 g and 860 g: 210 g and 45 g more. Pack, quilt
   * and mat cost 170, 240 and 60: 330 below the 800 that each may spend.
   */
  @Test
  void whatIsClaimedIsSetAgainstTheScale() throws IOException {
    json(look(demo("own-kit")))
        .post("/v1/kit-reports")
        .then()
        .statusCode(200)
        .body("hikers[0].hiker", equalTo("fay"))
        .body("hikers[0].drifts.driftGrams", contains(210, 45))
        .body("hikers[0].driftGrams", equalTo(255))
        .body("hikers[0].cost", equalTo(470))
        .body("hikers[1].baseGoal.goalGrams", equalTo(7500))
        .body("hikers[0].spendingGoal.goal", equalTo(800))
        .body("hikers[0].spendingGoal.distance", equalTo(-330));
  }

  /** Naismith: 15 km at 5 km/h and 500 m of climb at 600 m/h are 3 h 50 min. */
  @Test
  void walkingTimesAreNaismiths() throws IOException {
    json("{\"walkingTime\":\"naismith\",\"cost\":\"pandolf-santee\",\"trip\":"
            + demo("own-kit")
            + "}")
        .post("/v1/efforts")
        .then()
        .statusCode(200)
        .body("walkingTime.rule", equalTo("naismith"))
        .body("cost.model", equalTo("pandolf-santee"))
        .body("hikers[0].days[0].walkingMinutes", equalTo(230));
  }

  @ParameterizedTest
  @CsvSource({"loads, Loads against target", "makeup, What each load is made of"})
  void pictures(String plot, String title) throws IOException {
    json(look(demo("own-kit")))
        .accept("image/svg+xml")
        .post("/v1/kit-reports?plot=" + plot)
        .then()
        .statusCode(200)
        .contentType("image/svg+xml;charset=utf-8")
        .body(startsWith("<svg"))
        .body(containsString(title));
  }

  @ParameterizedTest
  @CsvSource({
    "/v1/provisions, application/json, '[]', 422",
    "/v1/choices, application/json, 'null', 422",
    "/v1/choices, application/json, '{', 400",
    "/v1/efforts, application/xml, '{}', 406",
    "/v1/kit-reports?plot=ring, image/svg+xml, '{}', 400",
    "/v1/choices?effort=0, application/json, '{}', 400",
    "/v1/choices?effort=5000001, application/json, '{}', 400",
    "/v1/efforts?effort=1, application/json, '{}', 400",
    "/v1/kit-reports, application/json, '{}', 422",
    "/v1/kit-reports, image/svg+xml, '{\"trip\":7}', 422"
  })
  void refused(String path, String accept, String body, int status) {
    json(body).accept(accept).post(path).then().statusCode(status);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'route':[{'day':1,'distance':'0 km'}] | /route/0/distance | out-of-range",
        "'route':[{'day':2,'distance':'5 km'}] | /route/0/day | no-such-day",
        "'route':[{'day':1,'distance':'-5 km'}] | /route/0/distance | negative",
        "'route':[{'day':1,'distance':'5 km','kmPerHour':0}] | /route/0/kmPerHour | out-of-range",
        "'route':[{'day':1,'distance':'5 km','campHeight':'9001 m'}] | /route/0/campHeight | out-of-range",
        "'fuel':{'efficiency':1.01} | /fuel/efficiency | out-of-range",
        "'fuel':{'kind':'coal'} | /fuel/kind | unknown-word",
        "'food':{'kcalPerPersonDay':0} | /food/kcalPerPersonDay | out-of-range",
        "'water':{'perHour':'21 L'} | /water/perHour | out-of-range",
        "'goals':{'hikers':[{'hiker':'y'}]} | /goals/hikers/0/hiker | unknown-hiker",
        "'taking':{'budget':'-1'} | /taking/budget | negative",
        "'taking':{'offers':[{'id':'a','mass':'1 g','available':0}]} | /taking/offers/0/available | out-of-range",
        "'taking':{'keep':['ghost']} | /taking/keep/0 | unknown-thing",
        "'dreams':{} | /dreams | unknown-field"
      })
  void plansThatCannotBe(String plan, String place, String code) {
    String trip =
        "{\"format\":\"faircarry-trip/1\",\"name\":\"n\",\"days\":1,"
            + "\"hikers\":[{\"id\":\"x\",\"targetLoad\":\"10 kg\"}],\"plan\":{"
            + plan.replace('\'', '"')
            + "}}";
    json(trip)
        .post("/v1/provisions")
        .then()
        .statusCode(422)
        .body("issues.pointer", contains("/plan" + place))
        .body("issues.code", contains(code));
    json(look(trip))
        .post("/v1/choices")
        .then()
        .statusCode(422)
        .body("issues.pointer", contains("/trip/plan" + place));
  }

  @Test
  void aWordThatIsNoneIsNamed() throws IOException {
    json("{\"walkingTime\":\"hurry\",\"withSplits\":1,\"trip\":" + demo("own-kit") + "}")
        .post("/v1/efforts")
        .then()
        .statusCode(422)
        .body("issues.pointer", contains("/walkingTime", "/withSplits"));
  }

  @Test
  void otherMethodsAreNotKnown() {
    for (String path : List.of("/v1/provisions", "/v1/kit-reports", "/v1/choices", "/v1/efforts")) {
      request().get(path).then().statusCode(405).header("Allow", "OPTIONS, POST");
    }
  }
}
