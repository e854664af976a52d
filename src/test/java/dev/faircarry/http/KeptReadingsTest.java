package dev.faircarry.http;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.ValidatableResponse;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Asha: pack 1.2 kg, quilt 650 g, stove 95 g; Tomas: shelter 1.9 kg. */
class KeptReadingsTest {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Tarns", "days": 2,
       "hikers": [{"id": "asha", "name": "Asha", "bodyMass": "58.25 kg", "pack": {"mass": "1.2 kg"},
                   "kit": [{"id": "quilt", "name": "Quilt", "mass": "650 g", "massFrom": "scale"}]},
                  {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"}],
       "shared": [{"id": "stove", "name": "Stove", "mass": "95 g"},
                  {"id": "shelter", "name": "Shelter", "mass": "1.9 kg"}]}
      """;
  private static final String SPLIT =
      """
      {"format": "faircarry-split/1", "carries": [
        {"hiker": "asha", "pieces": ["stove"]}, {"hiker": "tomas", "pieces": ["shelter"]}]}
      """;
  private static final String OTHER_WAY =
      """
      {"format": "faircarry-split/1", "carries": [
        {"hiker": "asha", "pieces": ["shelter"]}, {"hiker": "tomas", "pieces": ["stove"]}]}
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
    agree(SPLIT);
  }

  @AfterEach
  void end() {
    service.close();
  }

  private void agree(String split) {
    String id =
        service.send("POST", trip + "/splits", leader, split).json().at("/kept/id").asText();
    KeptService.Reply agreed =
        service.send(
            "PUT", trip + "/agreed-split", leader, "{\"split\": \"" + id + "\"}", "If-Match", "*");
    assertEquals(204, agreed.status(), agreed.body());
  }

  private String link(String body) {
    return service.send("POST", trip + "/links", leader, body).json().path("token").asText();
  }

  private ValidatableResponse add(String token, String... readings) {
    return service
        .request(token)
        .contentType("application/json")
        .body("{\"readings\": [" + String.join(",", readings) + "]}")
        .post(trip + "/readings")
        .then();
  }

  private ValidatableResponse weighIn(String token, String body) {
    return service
        .request(token)
        .contentType("application/json")
        .header("If-Match", "*")
        .body(body)
        .post(trip + "/weigh-ins")
        .then();
  }

  private ValidatableResponse look(String token) {
    return service.request(token).get(trip + "/weigh-ins").then();
  }

  private static String pack(String hiker, String mass) {
    return "{\"kind\":\"whole-pack\",\"hiker\":\"%s\",\"mass\":\"%s\"}".formatted(hiker, mass);
  }

  private static final String EMPTY_PACK =
      "{\"kind\":\"empty-pack\",\"hiker\":\"asha\",\"mass\":\"3 lb\",\"at\":\"07:40\",\"source\":\"hook\"}";

  @Test
  void readingsAreAppendedAndRead() {
    add(leader, EMPTY_PACK, pack("tomas", "1.9 kg"))
        .statusCode(201)
        .body("items.reading.mass", contains("3 lb", "1.9 kg"))
        .body("items.by.role", contains("leader", "leader"));
    add(leader, pack("asha", "2 kg")).statusCode(201);
    String cursor =
        service
            .request(leader)
            .get(trip + "/readings?limit=2")
            .then()
            .statusCode(200)
            .body("items.reading.mass", contains("2 kg", "1.9 kg"))
            .extract()
            .path("next");
    service
        .request(leader)
        .get(trip + "/readings?before=" + cursor)
        .then()
        .statusCode(200)
        .body("items", hasSize(1))
        .body("items[0].reading.at", equalTo("07:40"))
        .body("items[0].reading.source", equalTo("hook"))
        .body("next", nullValue());
    service.request(leader).get(trip + "/readings?limit=0").then().statusCode(400);
  }

  private ValidatableResponse table(String token, String kind, String text) {
    return service.request(token).contentType(kind).body(text).post(trip + "/readings").then();
  }

  @Test
  void aTableIsReadToo() {
    String text = "\ufeffkind;hiker;mass;source\r\nempty-pack;Asha;3 lb;\"hook; left\"\r\n";
    table(leader, "text/csv; charset=utf-8", text)
        .statusCode(201)
        .body("items.reading.kind", contains("empty-pack"))
        .body("items.reading.hiker", contains("asha"))
        .body("items.reading.mass", contains("3 lb"))
        .body("items.reading.source", contains("hook; left"));
    table(leader, "text/csv; charset=utf-8", "kind,hiker,mass\nwhole-pack,tomas,1.9 kg\n")
        .statusCode(201);
    look(leader).body("weighed.subject", contains("empty-pack/asha", "whole-pack/tomas"));
    String asha = link("{\"role\": \"hiker\", \"hiker\": \"asha\"}");
    table(asha, "text/csv; charset=utf-8", "kind,hiker,mass\nwhole-pack,tomas,1.9 kg\n")
        .statusCode(403);
  }

  @Test
  void whatIsWrongWithATableIsToldByItsCells() {
    table(
            leader,
            "text/csv; charset=utf-8",
            "kind,hiker,mass\nempty-pack,asha,3 lb\nempty-pack,nobody,3 stones\n")
        .statusCode(422)
        .body("issues.table", contains("readings", "readings"))
        .body("issues.row", contains(3, 3))
        .body("issues.column", containsInAnyOrder("hiker", "mass"));
    table(leader, "text/csv; charset=utf-8", "kind,hiker,mass\n\"empty-pack").statusCode(400);
    table(leader, "text/plain; charset=utf-8", "kind,hiker,mass\nempty-pack,asha,3 lb\n")
        .statusCode(415);
    service.request(leader).get(trip + "/readings").then().body("items", empty());
  }

  /** 3 lb = 1,360.777 g for 1,200 g: with quilt and stove 2,105.777 g. */
  @Test
  void acceptingMakesARevision() {
    add(leader, EMPTY_PACK, pack("asha", "2.11 kg"));
    look(leader)
        .statusCode(200)
        .body("weighed.result", contains("replaces", "agrees"))
        .body("weighed[1].expectedGrams", equalTo(2105.777f))
        .body("trip", nullValue());
    weighIn(leader, "{\"accept\":\"all\"}")
        .statusCode(200)
        .header("ETag", containsString("\"3."))
        .body("trip.hikers[0].pack.mass", equalTo("3 lb"))
        .body("trip.hikers[0].pack.labelMass", equalTo("1.2 kg"));
    service
        .request(leader)
        .get(trip + "/weigh-ins")
        .then()
        .body("agrees", equalTo(true))
        .body("changes", empty());
    var lines = service.get(trip + "/history", leader).json().path("items");
    assertEquals("readings accepted", lines.path(0).path("what").asText());
    // Undo is one step, as for any change; the readings are still there.
    service.send("POST", trip + "/history/2/undo", leader, "", "If-Match", "*");
    look(leader).body("weighed.result", contains("replaces", "agrees"));
  }

  @Test
  void aPackCountsOnlyAsItWasPacked() {
    add(
        leader,
        pack("asha", "1945 g"),
        "{\"kind\":\"piece\",\"piece\":\"stove\",\"mass\":\"95 g\"}");
    look(leader)
        .body("agrees", equalTo(true))
        .body("weighed", hasSize(2))
        .body("notCounted", nullValue());
    agree(OTHER_WAY);
    look(leader).body("weighed.kind", contains("piece")).body("notCounted", hasSize(1));
    add(leader, pack("asha", "3750 g"));
    look(leader)
        .body("weighed.kind", contains("piece", "whole-pack"))
        .body("agrees", equalTo(true));
    service.send("DELETE", trip + "/agreed-split", leader, "", "If-Match", "*");
    look(leader).body("weighed.kind", contains("piece")).body("notCounted", hasSize(2));
    service.send("DELETE", trip + "/shared/stove", leader, "", "If-Match", "*");
    look(leader).body("weighed", empty()).body("notCounted", hasSize(3));
  }

  @Test
  void rolesMayDoWhatTheyMayDo() {
    String asha = link("{\"role\": \"hiker\", \"hiker\": \"asha\"}");
    String viewer = link("{\"role\": \"viewer\"}");
    add(asha, EMPTY_PACK).statusCode(201).body("items[0].by.hiker", equalTo("asha"));
    add(asha, "{\"kind\":\"piece\",\"piece\":\"stove\",\"mass\":\"95 g\"}").statusCode(201);
    add(asha, EMPTY_PACK, pack("tomas", "2 kg")).statusCode(403);
    add(viewer, EMPTY_PACK).statusCode(403);
    add("", EMPTY_PACK).statusCode(404);
    look(viewer).statusCode(200).body("weighed", hasSize(2));
    weighIn(viewer, "{\"tolerance\":{\"mass\":\"5 g\"}}").statusCode(200);
    for (String no : new String[] {asha, viewer}) {
      weighIn(no, "{\"accept\":\"all\"}").statusCode(403);
    }
    weighIn("", "{}").statusCode(404);
  }

  @Test
  void acceptingNeedsTheRevisionItWasSeenFrom() {
    add(leader, EMPTY_PACK);
    String old = service.get(trip + "/weigh-ins", leader).tag();
    service
        .request(leader)
        .header("If-None-Match", old)
        .get(trip + "/weigh-ins")
        .then()
        .statusCode(304);
    service.send("PATCH", trip, leader, "{\"name\": \"Lakes\"}", "If-Match", "*");
    String all = "{\"accept\":\"all\"}";
    var accepting = service.request(leader).contentType("application/json").body(all);
    accepting.header("If-Match", old).post(trip + "/weigh-ins").then().statusCode(412);
    service
        .request(leader)
        .contentType("application/json")
        .body(all)
        .post(trip + "/weigh-ins")
        .then()
        .statusCode(428);
  }

  @Test
  void aRequestWithAKeyIsDoneOnce() {
    for (int i = 0; i < 2; i++) {
      service
          .request(leader)
          .header("Idempotency-Key", "k1")
          .contentType("application/json")
          .body("{\"readings\": [" + EMPTY_PACK + "]}")
          .post(trip + "/readings")
          .then()
          .statusCode(201);
    }
    service.request(leader).get(trip + "/readings").then().body("items", hasSize(1));
  }

  @Test
  void badReadingsAreToldAndNoneIsKept() {
    add(leader, EMPTY_PACK, pack("nobody", "2 kg"), "7")
        .statusCode(422)
        .body("issues.pointer", contains("/readings/2"));
    add(leader, EMPTY_PACK, pack("nobody", "2 kg"))
        .statusCode(422)
        .body("issues.pointer", contains("/readings/1/hiker"));
    weighIn(leader, "{\"accept\":[\"whole-pack/asha\"]}")
        .statusCode(422)
        .body("issues.pointer", contains("/accept/0"));
    service.request(leader).get(trip + "/readings").then().body("items", empty());
  }

  @Test
  void aHikersReadingsAreExportedAndErasedWithThem() {
    add(leader, EMPTY_PACK, pack("tomas", "1.9 kg"));
    assertTrue(service.get(trip + "/hikers/asha/export", leader).body().contains("3 lb"));
    assertTrue(service.get(trip + "/export", leader).body().contains("3 lb"));
    service.send("POST", trip + "/hikers/asha/erase", leader, "", "If-Match", "*");
    service
        .request(leader)
        .get(trip + "/readings")
        .then()
        .body("items.reading.hiker", contains("tomas"));
  }

  @Test
  void aPrivateBodyMassIsNotInTheTripAfterAccepting() {
    String given = link("{\"role\": \"hiker\", \"hiker\": \"asha\"}");
    String own =
        service
            .send("POST", trip + "/links", given, "{\"role\": \"hiker\", \"hiker\": \"asha\"}")
            .json()
            .path("token")
            .asText();
    service.send(
        "PUT", trip + "/hikers/asha/privacy", own, "{\"bodyMass\": \"private\"}", "If-Match", "*");
    add(leader, EMPTY_PACK);
    String answer =
        weighIn(leader, "{\"accept\":\"all\"}")
            .statusCode(200)
            .body("trip.hikers[0].pack.mass", equalTo("3 lb"))
            .body("trip.hikers[0].bodyMass", nullValue())
            .extract()
            .asString();
    assertTrue(!answer.contains("58.25"));
    // It is still there for its owner.
    assertEquals(
        "58.25 kg", service.get(trip + "/hikers/asha", own).json().path("bodyMass").asText());
    look(leader).body("weighed", not(empty()));
  }
}
