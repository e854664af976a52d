package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Somebody who changes one trip, again and again, and remembers what was acknowledged. The name of
 * the trip tells its revisions apart.
 */
final class Editor {
  private static final JsonMapper JSON = new JsonMapper();
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "%s", "days": 1,
       "hikers": [{"id": "a", "name": "A", "bodyMass": "60 kg"},
                  {"id": "b", "name": "B", "targetLoad": "15 kg"}],
       "shared": [{"id": "tarp", "name": "Tarp", "mass": "900 g"}]}
      """;

  private final String address;
  private final String path;
  private final String token;
  private final List<String> acknowledged = new ArrayList<>();
  private String underWay = "";

  private Editor(String address, String path, String token, String first) {
    this.address = address;
    this.path = path;
    this.token = token;
    acknowledged.add(first);
  }

  /**
   * Makes a trip to change.
   *
   * @param address from where; requests are counted by it
   */
  static Editor begin(String address, int port, String name) throws IOException {
    try (Wire wire = Wire.from(address, port)) {
      Wire.Answer made =
          wire.send(Request.of("POST", "/v1/trips").json(TRIP.formatted(name)).bytes()).read();
      assertEquals(201, made.status(), made::text);
      JsonNode body = json(made);
      return new Editor(
          address, "/v1/trips/" + body.get("id").asText(), body.get("token").asText(), name);
    }
  }

  static JsonNode json(Wire.Answer answer) {
    try {
      return JSON.readTree(answer.body());
    } catch (IOException e) {
      throw new AssertionError(answer.text(), e);
    }
  }

  Request request(String method, String below) {
    return Request.of(method, path + below).bearer(token);
  }

  Wire connect(int port) throws IOException {
    return Wire.from(address, port);
  }

  /** The request that changes the newest revision known. */
  Request change(String name) {
    return request("PATCH", "").ifMatch(acknowledged.size()).json("{\"name\": \"" + name + "\"}");
  }

  /** Changes the trip; ends with an exception if the answer does not come. */
  Wire.Answer change(Wire wire, String name) throws IOException {
    underWay = name;
    Wire.Answer answer = wire.send(change(name).bytes()).read();
    if (answer.status() == 200) {
      acknowledged.add(name);
      underWay = "";
    }
    return answer;
  }

  int acknowledged() {
    return acknowledged.size();
  }

  /**
   * Holds everything acknowledged against what the service has now: no revision is missing, none
   * too many but the one whose answer did not come, and those from one on have their own document.
   */
  void verify(int port, int readFrom) throws IOException {
    try (Wire wire = connect(port)) {
      Wire.Answer state = wire.send(request("GET", "/state").bytes()).read();
      assertEquals(200, state.status(), state::text);
      int head = json(state).get("revision").asInt();
      if (head == acknowledged.size() + 1 && !underWay.isEmpty()) {
        acknowledged.add(underWay);
      }
      assertEquals(acknowledged.size(), head, "revisions of " + path);
      underWay = "";
      chainIsWhole(wire, head);
      for (int number = Math.max(1, readFrom); number <= head; number++) {
        Wire.Answer then = wire.send(request("GET", "/history/" + number).bytes()).read();
        assertEquals(200, then.status(), then::text);
        JsonNode sent = JSON.readTree(TRIP.formatted(acknowledged.get(number - 1)));
        JsonNode kept = json(then);
        for (Map.Entry<String, JsonNode> field : sent.properties()) {
          assertEquals(field.getValue(), kept.get(field.getKey()), "revision " + number);
        }
      }
    }
  }

  private void chainIsWhole(Wire wire, int head) throws IOException {
    int next = head;
    while (next > 0) {
      Wire.Answer page = wire.send(request("GET", "/history?before=" + (next + 1)).bytes()).read();
      assertEquals(200, page.status(), page::text);
      JsonNode lines = json(page).get("items");
      assertTrue(lines.size() > 0, "history ends at " + next);
      for (JsonNode line : lines) {
        assertEquals(next, line.get("number").asInt(), page::text);
        next--;
      }
    }
  }

  /** What the newest revision is called. */
  String newest() {
    return acknowledged.get(acknowledged.size() - 1);
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
