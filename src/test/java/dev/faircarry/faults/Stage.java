package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Map;

/**
 * A trip with one of everything, for requests to be about.
 *
 * @param values what may stand for the variables of an address
 */
record Stage(String token, Map<String, String> values) {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Stage", "days": 1,
       "hikers": [{"id": "a", "name": "A", "bodyMass": "60 kg",
                   "kit": [{"id": "kit", "name": "Kit", "mass": "1 kg"}]},
                  {"id": "b", "name": "B", "targetLoad": "15 kg"}],
       "shared": [{"id": "tarp", "name": "Tarp", "mass": "900 g"}],
       "rules": [{"id": "r1", "kind": "barred", "pieces": ["tarp"], "hikers": ["b"]}]}
      """;

  static Stage set(int port) throws IOException {
    try (Wire wire = Wire.to(port)) {
      JsonNode made = done(wire, Request.of("POST", "/v1/trips").json(TRIP));
      String token = made.get("token").asText();
      String trip = made.get("id").asText();
      String path = "/v1/trips/" + trip;
      JsonNode link =
          done(
              wire,
              Request.of("POST", path + "/links").bearer(token).json("{\"role\": \"viewer\"}"));
      String split = split(wire, path, token);
      return new Stage(
          token,
          Map.of(
              "trip",
              trip,
              "hiker",
              "a",
              "item",
              "tarp",
              "rule",
              "r1",
              "number",
              "1",
              "revision",
              "1",
              "link",
              link.get("id").asText(),
              "split",
              split,
              "solve",
              split,
              "piece",
              "tarp"));
    }
  }

  private static String split(Wire wire, String path, String token) throws IOException {
    Request request = Request.of("POST", path + "/splits").bearer(token).with("Prefer", "wait=30");
    Wire.Answer answer = wire.send(request.bytes()).read();
    String[] location = answer.header("location").split("/", -1);
    assertEquals(true, answer.status() < 300, answer::text);
    return location[location.length - 1];
  }

  private static JsonNode done(Wire wire, Request request) throws IOException {
    Wire.Answer answer = wire.send(request.bytes()).read();
    assertEquals(201, answer.status(), answer::text);
    return Editor.json(answer);
  }
}
