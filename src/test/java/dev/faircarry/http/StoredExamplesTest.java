package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The examples of requests about stored trips, each sent to a trip just made from the contract's
 * own example: the answer is the one that stands beside it under the same name, but for ids, times
 * and how much searching it took.
 */
class StoredExamplesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final List<String> FROM_THE_AGREED_SPLIT =
      List.of("/rebalances", "/takers", "/departure-checks");

  @TempDir private static Path directory;
  private static Optional<KeptService> service = Optional.empty();

  /** An example of a request. */
  record Example(String method, String path, String name, JsonNode request, JsonNode answers) {
    @Override
    public String toString() {
      return method + " " + path + " " + name;
    }
  }

  @BeforeAll
  static void start() throws IOException {
    service = Optional.of(new KeptService(directory, Optional.empty(), false));
  }

  @AfterAll
  static void stop() {
    service.orElseThrow().close();
  }

  static List<Example> examples() {
    List<Example> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : Contract.document().path("paths").properties()) {
      if (path.getKey().startsWith("/v1/trips")) {
        for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
          for (JsonNode content : operation.getValue().at("/requestBody/content")) {
            for (Map.Entry<String, JsonNode> request : content.path("examples").properties()) {
              all.add(
                  new Example(
                      operation.getKey().toUpperCase(Locale.ROOT),
                      path.getKey(),
                      request.getKey(),
                      Contract.example(request.getValue()),
                      operation.getValue().path("responses")));
            }
          }
        }
      }
    }
    return all;
  }

  private static Reply send(String method, String path, String token, JsonNode body) {
    // Making a trip takes nothing to be made from.
    String[] headers =
        path.equals("/v1/trips") || path.endsWith("/links") || path.endsWith("/splits")
            ? new String[0]
            : new String[] {"If-Match", "*"};
    return service.orElseThrow().send(method, path, token, body.toString(), headers);
  }

  private static JsonNode value(String example) {
    return Contract.document().at("/components/examples/" + example + "/value");
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aRequestGetsTheAnswerThatStandsBesideIt(Example example) throws JsonProcessingException {
    Reply made = send("POST", "/v1/trips", "", value("LakeTrip"));
    String token = made.json().path("token").asText();
    JsonNode request = example.request();
    if (example.path().endsWith("/plan")) {
      send("PUT", made.location() + "/plan", token, value("PlanAgain"));
    } else if (example.path().endsWith("/privacy")) {
      token = ownLink(made.location(), token);
    } else if (example.path().endsWith("/agreed-split")) {
      Reply split = send("POST", made.location() + "/splits", token, value("LakeByHand"));
      request = JSON.createObjectNode().put("split", split.json().at("/kept/id").asText());
    }
    if (FROM_THE_AGREED_SPLIT.stream().anyMatch(example.path()::endsWith)) {
      Reply split = send("POST", made.location() + "/splits", token, value("LakeByHand"));
      JsonNode agreed = JSON.createObjectNode().put("split", split.json().at("/kept/id").asText());
      assertEquals(
          204, send("PUT", made.location() + "/agreed-split", token, agreed).status(), "agreed");
    }
    String path =
        example
            .path()
            .replace("/v1/trips/{trip}", made.location())
            .replace("{hiker}", "ada")
            .replace("kit/{item}", "kit/k1")
            .replace("{item}", "stove")
            .replace("{rule}", "r1");
    assertFalse(path.contains("{"), path);
    Reply reply = send(example.method(), path, token, request);
    assertTrue(reply.status() < 300, reply.body());
    JsonNode beside =
        Contract.resolve(example.answers().path(String.valueOf(reply.status())))
            .at("/content/application~1json/examples/" + example.name());
    if (beside.isMissingNode()) {
      assertEquals("", reply.body(), "no answer has the name of the request");
    } else {
      assertEquals(plain(Contract.example(beside)), plain(reply.json()));
    }
  }

  /** A link that the hiker made, which the leader has not seen. */
  private static String ownLink(String trip, String leader) {
    JsonNode wanted = value("LinkForAda");
    String first = send("POST", trip + "/links", leader, wanted).json().path("token").asText();
    return send("POST", trip + "/links", first, wanted).json().path("token").asText();
  }

  private static String plain(JsonNode node) throws JsonProcessingException {
    return JSON.writerWithDefaultPrettyPrinter()
        .writeValueAsString(JSON.readTree(node.toString()))
        .replaceAll("[0-9a-f]{18}\\.[A-Za-z0-9_-]{32}", "TOKEN")
        .replaceAll("\"[0-9a-f]{18}\"", "\"ID\"")
        .replaceAll("\"[0-9-]{10}T[0-9:.]+Z\"", "\"TIME\"")
        .replaceAll("\"effortSteps\" : [0-9]+", "\"effortSteps\"")
        .replaceAll("(?s)\"cautions\" : \\[.*?\\]", "\"cautions\"");
  }
}
