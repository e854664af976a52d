package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stored trips over HTTP, on a real SQLite file. */
class KeptTripsTest {
  private static final String HAND =
      """
      {"format": "faircarry-split/1", "carries": [
        {"hiker": "asha", "pieces": ["stove", "pot"]},
        {"hiker": "tomas", "pieces": ["shelter"]}, {"hiker": "ruth", "pieces": ["rope"]}]}
      """;

  @TempDir Path directory;
  private KeptService service;
  private String trip = "";
  private String leader = "";

  @BeforeEach
  void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
    create(document("58.25 kg"));
  }

  @AfterEach
  void end() {
    service.close();
  }

  private static String document(String mass) {
    return """
    {"format": "faircarry-trip/1", "name": "Tarns", "days": 2,
     "hikers": [{"id": "asha", "name": "Asha", "bodyMass": "%s",
                 "pack": {"mass": "1.2 kg"},
                 "kit": [{"id": "quilt", "name": "Quilt", "mass": "650 g"}]},
                {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"},
                {"id": "ruth", "name": "Ruth", "bodyMass": "69 kg"}],
     "shared": [{"id": "stove", "name": "Stove", "mass": "95 g"},
                {"id": "pot", "name": "Pot", "mass": "410 g"},
                {"id": "shelter", "name": "Shelter", "mass": "1.9 kg"},
                {"id": "rope", "name": "Rope", "mass": "2.4 kg"}],
     "rules": [{"id": "r1", "kind": "pinned", "pieces": ["stove"], "hiker": "asha"}]}
    """
        .formatted(mass);
  }

  private void create(String document) {
    Reply made = service.send("POST", "/v1/trips", "", document);
    assertEquals(201, made.status(), made.body());
    trip = made.location();
    leader = made.json().path("token").asText();
  }

  private String link(String body) {
    Reply made = service.send("POST", trip + "/links", leader, body);
    assertEquals(201, made.status(), made.body());
    return made.json().path("token").asText();
  }

  private String hikerLink(String hiker) {
    return link("{\"role\": \"hiker\", \"hiker\": \"" + hiker + "\"}");
  }

  /** A link that a hiker makes with the one the leader gave. */
  private String ownLink(String hiker, String token) {
    Reply made =
        service.send(
            "POST", trip + "/links", token, "{\"role\": \"hiker\", \"hiker\": \"" + hiker + "\"}");
    assertEquals(201, made.status(), made.body());
    assertEquals("hiker", made.json().path("madeBy").asText());
    return made.json().path("token").asText();
  }

  private String tag(String token) {
    return service.get(trip, token).tag();
  }

  @Test
  void changeNeedsTheRevisionItWasMadeFrom() {
    String old = tag(leader);
    assertEquals(428, service.send("PUT", trip, leader, document("58 kg")).status());
    Reply changed = service.send("PATCH", trip, leader, "{\"name\": \"Lakes\"}", "If-Match", old);
    assertEquals(200, changed.status(), changed.body());
    assertEquals("Lakes", changed.json().path("name").asText());
    assertEquals(
        412, service.send("PATCH", trip, leader, "{\"days\": 3}", "If-Match", old).status());
    assertEquals(
        304, service.send("GET", trip, leader, "", "If-None-Match", changed.tag()).status());
    assertEquals("Lakes", service.get(trip, leader).json().path("name").asText());
  }

  @Test
  void partsAreReadAddedChangedAndRemoved() {
    Reply added =
        service.send(
            "POST",
            trip + "/shared",
            leader,
            "{\"name\": \"Saw\", \"mass\": \"210 g\"}",
            "If-Match",
            tag(leader));
    assertEquals(201, added.status(), added.body());
    assertEquals("Saw", service.get(added.location(), leader).json().path("name").asText());
    Reply heavier =
        service.send(
            "PATCH", added.location(), leader, "{\"mass\": \"8 oz\"}", "If-Match", added.tag());
    assertEquals("8 oz", heavier.json().path("mass").asText());
    assertEquals(
        204,
        service.send("DELETE", added.location(), leader, "", "If-Match", heavier.tag()).status());
    assertEquals(404, service.get(added.location(), leader).status());
    Reply dangling =
        service.send("DELETE", trip + "/shared/stove", leader, "", "If-Match", tag(leader));
    assertEquals(422, dangling.status(), "a rule still names it");
    Reply page = service.get(trip + "/shared?limit=2", leader);
    assertEquals(2, page.json().path("items").size());
    Reply rest = service.get(trip + "/shared?after=" + page.json().path("next").asText(), leader);
    assertEquals("shelter", rest.json().path("items").path(0).path("id").asText());
    assertFalse(rest.json().has("next"));
  }

  @Test
  void requestWithAKeyIsDoneOnce() {
    String tag = tag(leader);
    String body = "{\"name\": \"Saw\", \"mass\": \"210 g\"}";
    Reply first =
        service.send(
            "POST", trip + "/shared", leader, body, "If-Match", tag, "Idempotency-Key", "k1");
    Reply again =
        service.send(
            "POST", trip + "/shared", leader, body, "If-Match", tag, "Idempotency-Key", "k1");
    assertEquals(201, again.status(), again.body());
    assertEquals(first.location(), again.location());
    assertEquals(first.body(), again.body());
    Reply other =
        service.send(
            "POST",
            trip + "/shared",
            leader,
            body.replace("Saw", "Axe"),
            "If-Match",
            tag,
            "Idempotency-Key",
            "k1");
    assertEquals("key-reused", other.json().path("code").asText());
    Reply one = service.send("POST", "/v1/trips", "", document("60 kg"), "Idempotency-Key", "new");
    Reply two = service.send("POST", "/v1/trips", "", document("60 kg"), "Idempotency-Key", "new");
    assertEquals(one.location(), two.location());
    assertEquals(200, service.get(two.location(), two.json().path("token").asText()).status());
  }

  @Test
  void everyWrongLinkGetsTheSameAnswer() {
    String home = trip;
    String viewer = link("{\"role\": \"viewer\"}");
    JsonNode links = service.get(trip + "/links", leader).json().path("items");
    String id = links.path(1).path("id").asText();
    assertEquals(204, service.send("DELETE", trip + "/links/" + id, leader, "").status());
    String own = leader;
    create(document("58 kg"));
    String wrong = own.substring(0, own.length() - 1) + (own.endsWith("A") ? "B" : "A");
    Set<String> answers = new HashSet<>();
    for (String token : List.of("", "nonsense", viewer, leader, wrong)) {
      Reply reply = service.get(home, token);
      assertEquals(404, reply.status(), token);
      answers.add(reply.body().replaceAll("\"request\" : \"[^\"]*\"", ""));
    }
    Reply nothing = service.get("/v1/trips/000000000000000000", leader);
    answers.add(nothing.body().replaceAll("\"request\" : \"[^\"]*\"", ""));
    assertEquals(1, answers.size(), answers.toString());
  }

  @Test
  void rolesMayDoWhatTheyMayDo() {
    String asha = hikerLink("asha");
    String viewer = link("{\"role\": \"viewer\"}");
    Reply own =
        service.send(
            "PATCH",
            trip + "/hikers/asha",
            asha,
            "{\"bodyMass\": \"60 kg\"}",
            "If-Match",
            tag(asha));
    assertEquals(200, own.status(), own.body());
    for (String[] no :
        List.of(
            new String[] {asha, "/hikers/ruth", "{\"name\": \"R\"}"},
            new String[] {asha, "/hikers/asha", "{\"minor\": true}"},
            new String[] {asha, "", "{\"days\": 3}"},
            new String[] {viewer, "/hikers/asha", "{\"name\": \"A\"}"})) {
      Reply refused = service.send("PATCH", trip + no[1], no[0], no[2], "If-Match", tag(no[0]));
      assertEquals(403, refused.status(), String.join(" ", no));
    }
    assertEquals(403, service.get(trip + "/links", asha).status());
    assertEquals(403, service.send("POST", trip + "/splits", viewer, "").status());
  }

  @Test
  void privateBodyMassStaysThroughTheLeadersChanges() {
    String asha = ownLink("asha", hikerLink("asha"));
    Reply on =
        service.send(
            "PUT",
            trip + "/hikers/asha/privacy",
            asha,
            "{\"bodyMass\": \"private\"}",
            "If-Match",
            tag(asha));
    assertEquals(204, on.status(), on.body());
    Reply seen = service.get(trip, leader);
    assertFalse(seen.body().contains("58.25"));
    Reply back = service.send("PUT", trip, leader, seen.body(), "If-Match", seen.tag());
    assertEquals(200, back.status(), back.body());
    assertEquals(
        "58.25 kg", service.get(trip + "/hikers/asha", asha).json().path("bodyMass").asText());
    for (String guess : List.of("58.25 kg", "70 kg")) {
      Reply told =
          service.send(
              "PATCH",
              trip + "/hikers/asha",
              leader,
              "{\"bodyMass\": \"" + guess + "\"}",
              "If-Match",
              tag(leader));
      assertEquals("body-mass-hidden", told.json().path("code").asText());
    }
    assertFalse(service.get(trip + "/history/1", leader).body().contains("58.25"));
    assertFalse(service.get(trip + "/export", leader).body().contains("58.25"));
  }

  /**
   * The same trip and split with two body masses: whatever somebody sees who may not know the mass
   * is the same, letter for letter. What somebody sees who may know it differs, so the comparison
   * can fail.
   */
  @Test
  void nothingShownFollowsFromAHiddenBodyMass() {
    List<List<String>> light = everythingSeen("58.25 kg");
    List<List<String>> heavy = everythingSeen("91.5 kg");
    for (int role = 0; role < 3; role++) {
      assertEquals(light.get(role), heavy.get(role));
    }
    assertNotEquals(light.get(3), heavy.get(3));
  }

  /** Answers to the leader, another hiker, a viewer and the hiker, ids and times left out. */
  private List<List<String>> everythingSeen(String mass) {
    create(document(mass));
    String asha = ownLink("asha", hikerLink("asha"));
    List<String> tokens = List.of(leader, hikerLink("tomas"), link("{\"role\": \"viewer\"}"), asha);
    service.send(
        "PUT",
        trip + "/hikers/asha/privacy",
        asha,
        "{\"bodyMass\": \"private\"}",
        "If-Match",
        tag(asha));
    Reply made = service.send("POST", trip + "/splits", leader, HAND);
    assertEquals(201, made.status(), made.body());
    List<List<String>> all = new ArrayList<>();
    for (String token : tokens) {
      List<String> seen = new ArrayList<>();
      for (String path :
          List.of(
              "",
              "/state",
              "/hikers",
              "/hikers/asha",
              "/history",
              "/history/1",
              "/history/2",
              "/splits",
              "/export",
              "/hikers/asha/export")) {
        seen.add(plain(service.get(trip + path, token)));
      }
      seen.add(plain(service.get(made.location(), token)));
      // An error on the way of a change: the text must not tell either.
      seen.add(
          plain(
              service.send(
                  "PATCH",
                  trip + "/hikers/asha",
                  token,
                  "{\"targetFraction\": 7, \"capFraction\": 0}",
                  "If-Match",
                  tag(token))));
      all.add(seen);
    }
    return all;
  }

  private String plain(Reply reply) {
    return reply.status()
        + reply
            .body()
            .replace(trip.substring(trip.lastIndexOf('/') + 1), "TRIP")
            .replaceAll("[0-9a-f]{18}", "ID")
            .replaceAll("[0-9-]{10}T[0-9:.]+Z", "TIME")
            .replaceAll("\"request\" : \"[^\"]*\"", "");
  }

  @Test
  void splitIsSearchedForAgreedOnAndGrowsStale() {
    Reply found =
        service.send("POST", trip + "/splits?effort=200000", leader, "", "Prefer", "wait=30");
    assertEquals(201, found.status(), found.body());
    JsonNode kept = found.json().path("kept");
    assertFalse(kept.path("stale").asBoolean());
    String id = kept.path("id").asText();
    Reply agreed =
        service.send(
            "PUT",
            trip + "/agreed-split",
            leader,
            "{\"split\": \"" + id + "\"}",
            "If-Match",
            tag(leader));
    assertEquals(204, agreed.status(), agreed.body());
    JsonNode after = service.get(found.location(), leader).json().path("kept");
    assertTrue(after.path("agreed").asBoolean());
    assertFalse(after.path("stale").asBoolean(), "agreeing changes no document");
    service.send(
        "PATCH", trip + "/shared/pot", leader, "{\"mass\": \"500 g\"}", "If-Match", tag(leader));
    assertTrue(service.get(found.location(), leader).json().path("kept").path("stale").asBoolean());
    Reply sentBack = service.send("POST", trip + "/splits", leader, found.body());
    assertEquals(201, sentBack.status(), sentBack.body());
    assertEquals(2, service.get(trip + "/splits", leader).json().path("items").size());
  }

  @Test
  void solveBehindTheCallersBackIsFollowedToItsEnd() {
    Reply asked =
        service.send("POST", trip + "/splits?effort=200000", leader, "", "Prefer", "respond-async");
    assertEquals(202, asked.status(), asked.body());
    Reply events =
        service.send(
            "GET", asked.location() + "/events", leader, "", "Accept", "text/event-stream");
    assertTrue(events.body().contains("event: over"), events.body());
    Reply over = service.get(asked.location(), leader);
    assertEquals("done", over.json().path("state").asText());
    assertEquals(200, service.get(over.location(), leader).status());
  }

  @Test
  void everyRevisionCanBeReadAndBroughtBack() {
    String tag = tag(leader);
    service.send("PATCH", trip, leader, "{\"name\": \"Lakes\"}", "If-Match", tag);
    JsonNode lines = service.get(trip + "/history", leader).json().path("items");
    assertEquals("changed the trip", lines.path(0).path("what").asText());
    assertEquals("leader", lines.path(0).path("by").path("role").asText());
    assertEquals("created", lines.path(1).path("what").asText());
    assertEquals("Tarns", service.get(trip + "/history/1", leader).json().path("name").asText());
    Reply undone =
        service.send("POST", trip + "/history/1/undo", leader, "", "If-Match", tag(leader));
    assertEquals(204, undone.status(), undone.body());
    assertEquals("Tarns", service.get(trip, leader).json().path("name").asText());
    assertEquals(404, service.get(trip + "/history/9", leader).status());
  }

  @Test
  void hikerIsExportedAndErasedInOneCallEach() {
    String asha = hikerLink("asha");
    Reply all = service.get(trip + "/hikers/asha/export", asha);
    assertTrue(all.body().contains("58.25 kg"));
    Reply erased =
        service.send("POST", trip + "/hikers/asha/erase", asha, "", "If-Match", tag(asha));
    assertEquals(204, erased.status(), erased.body());
    assertEquals(404, service.get(trip, asha).status());
    String left = service.get(trip + "/export", leader).body();
    assertFalse(left.contains("asha"), left);
    assertEquals(404, service.get(trip + "/history/1", leader).status());
  }

  @Test
  void deletedTripComesBackOrIsErased() {
    String viewer = link("{\"role\": \"viewer\"}");
    Reply deleted = service.send("DELETE", trip, leader, "", "If-Match", tag(leader));
    assertTrue(deleted.json().has("eraseAt"), deleted.body());
    assertEquals(404, service.get(trip, viewer).status());
    assertEquals(200, service.send("POST", trip + "/restore", leader, "").status());
    assertEquals(200, service.get(trip, viewer).status());
    assertEquals(
        204, service.send("POST", trip + "/erase", leader, "", "If-Match", tag(leader)).status());
    assertEquals(404, service.get(trip, leader).status());
  }

  @Test
  void deletedTripTakesNoSplit() {
    service.send("DELETE", trip, leader, "", "If-Match", tag(leader));
    assertEquals(404, service.send("POST", trip + "/splits", leader, HAND).status());
  }

  @Test
  void creationKeyIsNeededWhereThereIsOne(@TempDir Path other) throws IOException {
    try (KeptService closed = new KeptService(other, Optional.of("open sesame"), false)) {
      assertEquals(404, closed.send("POST", "/v1/trips", "", document("60 kg")).status());
      assertEquals(404, closed.send("POST", "/v1/trips", "guess", document("60 kg")).status());
      assertEquals(
          201, closed.send("POST", "/v1/trips", "open sesame", document("60 kg")).status());
    }
  }

  @Test
  void tooManyRequestsAreToldWhenToComeBack(@TempDir Path other) throws IOException {
    try (KeptService limited = new KeptService(other, Optional.empty(), true)) {
      Reply last = limited.get("/v1/trips/x", "");
      for (int i = 0; i < 2000 && last.status() == 404; i++) {
        last = limited.get("/v1/trips/x", "");
      }
      assertEquals(429, last.status());
      assertTrue(last.raw().headers().firstValue("Retry-After").isPresent());
    }
  }
}
