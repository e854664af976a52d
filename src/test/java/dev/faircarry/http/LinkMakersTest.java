package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who made a link is told, because the leader has seen the tokens of the leader's. */
class LinkMakersTest {
  private static final String ADA = "{\"role\": \"hiker\", \"hiker\": \"ada\"}";
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "One night", "days": 1,
       "hikers": [{"id": "ada", "name": "Ada", "bodyMass": "60 kg"},
                  {"id": "ben", "name": "Ben", "targetLoad": "15 kg"}],
       "shared": [{"id": "tent", "name": "Tent", "mass": "2 kg"}]}
      """;

  @TempDir Path directory;
  private KeptService service;
  private Reply created;

  @BeforeEach
  void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
    created = service.send("POST", "/v1/trips", "", TRIP);
    assertEquals(201, created.status(), created.body());
  }

  @AfterEach
  void end() {
    service.close();
  }

  private Reply link(String token, String body) {
    Reply made = service.send("POST", created.location() + "/links", token, body);
    assertEquals(201, made.status(), made.body());
    return made;
  }

  @Test
  void theMakerStandsOnEveryLink() {
    String leader = created.json().path("token").asText();
    Reply given = link(leader, ADA);
    Reply viewer = link(leader, "{\"role\": \"viewer\"}");
    Reply own = link(given.json().path("token").asText(), ADA);
    Map<String, String> expected = new HashMap<>();
    expected.put(created.json().path("link").path("id").asText(), "leader");
    expected.put(given.json().path("id").asText(), "leader");
    expected.put(viewer.json().path("id").asText(), "leader");
    expected.put(own.json().path("id").asText(), "hiker");
    assertEquals(4, expected.size());
    for (Reply made : new Reply[] {given, viewer, own}) {
      String id = made.json().path("id").asText();
      assertEquals(expected.get(id), made.json().path("madeBy").asText());
    }
    Map<String, String> listed = new HashMap<>();
    for (JsonNode each : service.get(created.location() + "/links", leader).json().path("items")) {
      listed.put(each.path("id").asText(), each.path("madeBy").asText());
    }
    assertEquals(expected, listed);
  }

  @Test
  void privacyIsNotSetWithALinkTheLeaderHasSeen() {
    String leader = created.json().path("token").asText();
    String given = link(leader, ADA).json().path("token").asText();
    String own = link(given, ADA).json().path("token").asText();
    String path = created.location() + "/hikers/ada/privacy";
    String hide = "{\"bodyMass\": \"private\"}";
    String tag = service.get(created.location(), given).tag();
    Reply refused = service.send("PUT", path, given, hide, "If-Match", tag);
    assertEquals(403, refused.status(), refused.body());
    assertEquals("link-not-own", refused.json().path("code").asText());
    Reply hidden = service.send("PUT", path, own, hide, "If-Match", tag);
    assertEquals(204, hidden.status(), hidden.body());
  }
}
