package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts of stored trips as tables, on a real SQLite file. */
class StoredTablesTest {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Tarns", "days": 2,
       "hikers": [{"id": "asha", "name": "Asha", "bodyMass": "58.25 kg",
                   "kit": [{"id": "quilt", "name": "Quilt", "mass": "650 g"}]},
                  {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"},
                  {"id": "ruth", "name": "Ruth", "bodyMass": "69 kg"}],
       "shared": [{"id": "stove", "name": "=Stove", "mass": "95 g"},
                  {"id": "rope", "name": "Rope", "mass": "2.4 kg"}],
       "rules": [{"id": "r1", "kind": "pinned", "pieces": ["stove"], "hiker": "asha"}]}
      """;

  @TempDir Path directory;
  private KeptService service;
  private String trip = "";
  private String leader = "";

  @BeforeEach
  void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
    KeptService.Stored made = service.create(TRIP);
    trip = made.address();
    leader = made.leader();
  }

  @AfterEach
  void end() {
    service.close();
  }

  private String link(String body) {
    return service.link(trip, leader, body);
  }

  private Reply table(String part, String token) {
    return service.send("GET", trip + part, token, "", "Accept", "text/csv");
  }

  private Reply send(String method, String part, String token, String table, String... headers) {
    return service.send(
        method,
        trip + part,
        token,
        table,
        java.util.stream.Stream.concat(
                java.util.stream.Stream.of("Content-Type", "text/csv"),
                java.util.Arrays.stream(headers))
            .toArray(String[]::new));
  }

  private String tag() {
    return service.get(trip, leader).tag();
  }

  @Test
  void tablesAreReadAndPutBackUnchanged() {
    String before = service.get(trip, leader).body();
    for (String part : List.of("/hikers", "/kit", "/shared", "/hikers/asha/kit")) {
      Reply read = table(part, leader);
      assertEquals(200, read.status(), read.body());
      assertTrue(
          read.raw().headers().firstValue("Content-Type").orElseThrow().startsWith("text/csv"));
      Reply put = send("PUT", part, leader, read.body(), "If-Match", read.tag());
      assertEquals(204, put.status(), put.body());
      assertEquals("", put.body());
      assertEquals(
          304,
          service
              .send(
                  "GET", trip + part, leader, "", "Accept", "text/csv", "If-None-Match", put.tag())
              .status());
    }
    assertEquals(before, service.get(trip, leader).body());
    assertTrue(table("/shared", leader).body().contains("'=Stove"), "no formula");
  }

  @Test
  void theTagOfATableIsNotThatOfTheDocument() {
    Reply document = service.get(trip + "/shared", leader);
    Reply table = table("/shared", leader);
    assertNotEquals(document.tag(), table.tag());
    assertEquals(
        200,
        service
            .send(
                "GET",
                trip + "/shared",
                leader,
                "",
                "Accept",
                "text/csv",
                "If-None-Match",
                document.tag())
            .status());
  }

  @Test
  void aPartIsReplacedUnderItsTag() {
    String old = tag();
    assertEquals(428, send("PUT", "/shared", leader, "id,mass\nstove,96 g\n").status());
    Reply put = send("PUT", "/shared", leader, "id,mass\nstove,96 g\nsaw,8 oz\n", "If-Match", old);
    assertEquals(204, put.status(), put.body());
    assertEquals(
        412, send("PUT", "/shared", leader, "id,mass\nstove,1 g\n", "If-Match", old).status());
    assertEquals("8 oz", service.get(trip + "/shared/saw", leader).json().path("mass").asText());
    Reply wrong =
        send("PUT", "/shared", leader, "id,mass\nstove,96\nsaw,8 oz\n", "If-Match", put.tag());
    assertEquals(422, wrong.status(), wrong.body());
    assertEquals("no-unit", wrong.json().at("/issues/0/code").asText());
    assertEquals(2, wrong.json().at("/issues/0/row").asInt());
    Reply dangling = send("PUT", "/shared", leader, "id,mass\nsaw,8 oz\n", "If-Match", put.tag());
    assertEquals("/rules/0/pieces/0", dangling.json().at("/issues/0/pointer").asText());
    assertEquals(
        415,
        service.send("PUT", trip + "/shared", leader, "{}", "If-Match", put.tag()).status(),
        "JSON replaces single entries, or the whole trip");
  }

  @Test
  void rowsAreAppendedOnce() {
    String tag = tag();
    for (int i = 0; i < 2; i++) {
      Reply added =
          send(
              "POST",
              "/shared",
              leader,
              "name,mass\nSaw,8 oz\nAxe,1 lb\n",
              "If-Match",
              tag,
              "Idempotency-Key",
              "key-1");
      assertEquals(204, added.status(), added.body());
    }
    assertEquals(4, service.get(trip + "/shared", leader).json().path("items").size());
    Reply kit =
        send(
            "POST",
            "/kit",
            leader,
            "hiker,name,mass\nRuth,Cup,2 oz\nasha,Mug,3 oz\n",
            "If-Match",
            tag());
    assertEquals(204, kit.status(), kit.body());
    assertEquals(2, service.get(trip + "/hikers/asha/kit", leader).json().path("items").size());
    assertEquals(
        404,
        send("POST", "/hikers/zoe/kit", leader, "hiker,name,mass\n,Cup,1 g\n", "If-Match", tag())
            .status());
  }

  @Test
  void aBodyMassIsAnEmptyCellForThoseWhoDoNotSeeItAndStays() {
    String asha = link("{\"role\": \"hiker\", \"hiker\": \"asha\"}");
    String viewer = link("{\"role\": \"viewer\"}");
    assertTrue(table("/hikers", leader).body().contains("ruth,Ruth,69 kg,"));
    assertTrue(table("/hikers", asha).body().contains("asha,Asha,58.25 kg,"));
    assertTrue(table("/hikers", asha).body().contains("ruth,Ruth,,"));
    String seen = table("/hikers", viewer).body();
    assertFalse(seen.contains("58.25") || seen.contains("69 kg"), seen);
    Reply own =
        send(
            "PUT",
            "/hikers",
            asha,
            table("/hikers", asha).body().replace("58.25 kg", "57 kg"),
            "If-Match",
            tag());
    assertEquals(204, own.status(), own.body());
    assertTrue(table("/hikers", leader).body().contains("asha,Asha,57 kg,"));
    assertTrue(table("/hikers", leader).body().contains("ruth,Ruth,69 kg,"), "kept");
    for (String mass : List.of("69 kg", "70 kg", "x")) {
      Reply stated =
          send(
              "PUT",
              "/hikers",
              asha,
              table("/hikers", asha).body().replace("ruth,Ruth,", "ruth,Ruth," + mass),
              "If-Match",
              tag());
      assertEquals(403, stated.status(), mass);
      assertEquals("body-mass-hidden", stated.json().path("code").asText(), mass);
    }
  }

  @Test
  void aHikerChangesTheOwnKitAndAViewerNothing() {
    String asha = link("{\"role\": \"hiker\", \"hiker\": \"asha\"}");
    String viewer = link("{\"role\": \"viewer\"}");
    String kit = "hiker,name,mass\n,Cup,2 oz\n";
    assertEquals(403, send("PUT", "/hikers/asha/kit", viewer, kit, "If-Match", tag()).status());
    assertEquals(403, send("PUT", "/hikers/ruth/kit", asha, kit, "If-Match", tag()).status());
    assertEquals(
        403, send("PUT", "/shared", asha, "id,mass\nstove,1 g\n", "If-Match", tag()).status());
    assertEquals(204, send("PUT", "/hikers/asha/kit", asha, kit, "If-Match", tag()).status());
    assertEquals(
        "Cup", service.get(trip + "/hikers/asha/kit", viewer).json().at("/items/0/name").asText());
    assertEquals(404, table("/hikers", "nobody").status());
    assertEquals(404, table("/kit", "").status());
  }

  @Test
  void aSplitIsKeptFromATableAndReadAsOne() {
    Reply made = send("POST", "/splits", leader, "hiker,piece\nAsha,stove\nRuth,rope\n");
    assertEquals(201, made.status(), made.body());
    Reply table = service.send("GET", made.location(), leader, "", "Accept", "text/csv");
    assertEquals(
        List.of(
            "kind,hiker,hikerName,piece,pieceName,units,day,to",
            "carries,asha,Asha,stove,'=Stove,1,,",
            "carries,ruth,Ruth,rope,Rope,1,,"),
        table.body().lines().toList());
    assertEquals(201, send("POST", "/splits", leader, table.body()).status());
    assertEquals(
        "split-breaks-rules",
        send("POST", "/splits", leader, "hiker,piece\nruth,stove\nruth,rope\n")
            .json()
            .path("code")
            .asText());
    assertEquals(
        "unknown-field",
        send("POST", "/splits", leader, "who,piece\nruth,stove\n")
            .json()
            .at("/issues/0/code")
            .asText());
  }
}
