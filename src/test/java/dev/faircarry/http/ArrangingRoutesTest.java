package dev.faircarry.http;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Moving pieces of a stored trip about: Asha has a body mass, Tomas a target load. */
class ArrangingRoutesTest {
  /** Two people, two days, one meal each a day: four meals. Gas loses half of 200 g a day. */
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Tarns", "days": 2,
       "hikers": [{"id": "asha", "name": "Asha", "bodyMass": "50 kg",
                   "pack": {"mass": "1.2 kg"}},
                  {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"}],
       "shared": [{"id": "pot", "name": "Pot", "mass": "400 g"},
                  {"id": "gas", "name": "Gas", "mass": "300 g", "use": {"kind": "evenly", "leaves": "100 g"}},
                  {"id": "soup", "name": "Soup", "mass": "1 kg", "onDays": [2]},
                  {"id": "meal", "name": "Meal", "perPerson": {"countPerDay": 1}, "unitMass": "150 g",
                   "use": {"kind": "units-per-day", "leaves": "10 g"}}],
       "rules": [{"id": "r1", "kind": "pinned", "pieces": ["pot"], "hiker": "asha"}]}
      """;

  @TempDir private Path directory;
  private KeptService service;
  private String trip = "";
  private String leader = "";

  @BeforeEach
  void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
    KeptService.Reply made = service.send("POST", "/v1/trips", "", TRIP);
    trip = made.location();
    leader = made.json().path("token").asText();
  }

  @AfterEach
  void end() {
    service.close();
  }

  private String link(String body) {
    return service.send("POST", trip + "/links", leader, body).json().path("token").asText();
  }

  private ValidatableResponse check(String token, String withAsha, String withTomas) {
    return service
        .request(token)
        .contentType("application/json")
        .body(
            """
            {"format": "faircarry-split/1", "carries": [
              {"hiker": "asha", "pieces": [%s]}, {"hiker": "tomas", "pieces": [%s]}]}
            """
                .formatted(withAsha, withTomas))
        .post(trip + "/checks")
        .then();
  }

  @Test
  void piecesAreListedWithTheirMassOnEachMorning() {
    service
        .request(leader)
        .get(trip + "/pieces")
        .then()
        .statusCode(200)
        .body("pieces.piece", contains("pot", "gas", "soup", "meal"))
        .body("pieces.units", contains(1, 1, 1, 4))
        .body("pieces[0].unitGrams", contains(400, 400))
        .body("pieces[1].unitGrams", contains(300, 200))
        .body("pieces[2].unitGrams", contains(0, 1000))
        .body("pieces[3].usedOn", contains(2, 2))
        .body("pieces[3].leavesGrams", equalTo(10));
  }

  @Test
  void piecesAreReadAgainOnlyWhenTheTripHasChanged() {
    String tag = service.request(leader).get(trip + "/pieces").header("ETag");
    service
        .request(leader)
        .header("If-None-Match", tag)
        .get(trip + "/pieces")
        .then()
        .statusCode(304);
  }

  /** Asha: pack 1200 g, pot 400 g: 1600 g of 20 % of 50 kg. */
  @Test
  void splitIsJudgedAgainstTheStoredTrip() {
    check(leader, "\"pot\"", "\"gas\", \"soup\", {\"piece\": \"meal\", \"units\": 4}")
        .statusCode(200)
        .body("keepsRules", equalTo(true))
        .body("hikers[0].targetGrams", equalTo(10000))
        .body("hikers[0].mornings[0].loadGrams", equalTo(1600))
        .body("hikers[0].mornings[0].targetRatio", equalTo(0.16f));
  }

  @Test
  void brokenRuleIsToldAndNothingIsKept() {
    check(leader, "\"gas\"", "\"pot\", \"soup\", {\"piece\": \"meal\", \"units\": 4}")
        .statusCode(200)
        .body("keepsRules", equalTo(false))
        .body("findings.rules.flatten()", hasItem("r1"));
    assertEquals(0, service.get(trip + "/splits", leader).json().path("items").size());
  }

  /** Tomas' own link may not learn Asha's target, whatever he has her carry. */
  @Test
  void nothingThatFollowsFromAHiddenBodyMassIsTold() {
    String tomas = link("{\"role\": \"hiker\", \"hiker\": \"tomas\"}");
    check(tomas, "\"pot\"", "\"gas\", \"soup\", {\"piece\": \"meal\", \"units\": 4}")
        .statusCode(200)
        .body("hikers[0].mornings[0].loadGrams", equalTo(1600))
        .body("hikers[0].targetGrams", nullValue())
        .body("hikers[0].mornings[0].targetRatio", nullValue())
        .body("hikers[0].mornings[0].withinTarget", nullValue())
        .body("opened", nullValue())
        .body("worst", nullValue())
        .body("hikers[1].targetGrams", equalTo(15000));
  }

  @Test
  void othersAreTurnedAway() {
    check("nonsense", "", "").statusCode(404).body("code", equalTo("not-found"));
    service.request("nonsense").get(trip + "/pieces").then().statusCode(404);
    service
        .request(leader)
        .contentType("application/json")
        .body("{\"format\": \"faircarry-split/1\"}")
        .post(trip + "/checks")
        .then()
        .statusCode(422);
  }
}
