package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What to do if one of the group does not come, over HTTP. */
@ExtendWith(RunningService.class)
class DropOutsRoutesTest {

  /**
   * The 18 kg of {@link RebalanceRoutesTest} on two. Without a or b: 11 and 7 kg, worst 1.1.
   * Without c its 5 and 1 kg go to one each: 11 and 7 kg, with the two forced handovers and no
   * other.
   */
  @Test
  void aCaseForEverybody() {
    json("{\"trip\":" + RebalanceRoutesTest.TRIP + ",\"split\":" + RebalanceRoutesTest.SPLIT + "}")
        .post("/v1/drop-outs")
        .then()
        .statusCode(200)
        .body("dropOuts.hiker", contains("a", "b", "c"))
        .body("dropOuts.result", contains("curve", "curve", "curve"))
        .body("dropOuts.points.flatten().worst.targetRatio", contains(1.1f, 1.1f, 1.1f))
        .body("dropOuts.points.flatten().handovers", contains(2, 2, 2))
        .body("dropOuts[0].text", startsWith("If Ana does not come:\n"))
        .body("dropOuts[0].text", containsString("\nAna gives “p1” to "))
        .body("dropOuts[2].text", containsString("\nCy gives “p3” to "))
        .body("dropOuts[2].text", endsWith(", day 1, 110 % of target."))
        .body("cautions.size()", not(equalTo(0)));
  }

  /** The one who has the flame goes; the other is a minor and may not carry it. */
  @Test
  void aCaseThatCannotBeIsSaidSo() {
    json("""
            {"trip": {"format": "faircarry-trip/1", "name": "n", "days": 1,
              "hikers": [{"id": "a", "name": "Ana", "targetLoad": "10 kg"},
                         {"id": "k", "name": "Kim", "targetLoad": "5 kg", "minor": true}],
              "shared": [{"id": "stove", "name": "Stove", "mass": "300 g", "covers": ["flame"]}]},
             "split": {"format": "faircarry-split/1",
               "carries": [{"hiker": "a", "pieces": ["stove"]}]}}
            """)
        .post("/v1/drop-outs")
        .then()
        .statusCode(200)
        .body("dropOuts.result", contains("impossible", "curve"))
        .body("dropOuts[0].conflict.kind", contains("minor"))
        .body("dropOuts[0].text", containsString("no split that keeps the rules"))
        .body("dropOuts[1].text", containsString("Nothing changes hands."));
  }

  @Test
  void withoutTheOnlyOneThereIsNoTrip() {
    json("""
            {"trip": {"format": "faircarry-trip/1", "name": "n", "days": 1,
              "hikers": [{"id": "a", "targetLoad": "10 kg"}]},
             "split": {"format": "faircarry-split/1", "carries": []}}
            """)
        .post("/v1/drop-outs")
        .then()
        .statusCode(200)
        .body("dropOuts.result", contains("unfit"))
        .body("dropOuts[0].text", containsString("The trip has no hikers."));
  }

  @ParameterizedTest
  @CsvSource({
    "'{', '', 400",
    "'null', '', 422",
    "'{}', '', 422",
    "'{}', '?effort=0', 400",
    "'{}', '?changes=1', 400",
    "'{\"trip\":7,\"split\":7}', '', 422",
    "'{\"trip\":{},\"split\":{},\"changes\":[]}', '', 422"
  })
  void refused(String body, String query, int status) {
    json(body).post("/v1/drop-outs" + query).then().statusCode(status);
  }

  @Test
  void otherMethodsAreNotKnown() {
    request().delete("/v1/drop-outs").then().statusCode(405).header("Allow", "OPTIONS, POST");
  }
}
