package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the contract shows as examples is what happens: a request sent to the running service gets
 * the answer that stands beside it under the same name.
 */
@ExtendWith(RunningService.class)
class ContractExamplesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** How much searching an answer took, and what of the proof needed none, may change. */
  private static final Set<String> MAY_DIFFER = Set.of("effortSteps", "provedByBound");

  /** An example of a request to an address that needs no stored trip. */
  record Example(String path, String name, JsonNode request, JsonNode answer) {
    @Override
    public String toString() {
      return path + " " + name;
    }
  }

  static List<Example> examples() {
    List<Example> all = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : Contract.document().path("paths").properties()) {
      JsonNode post = path.getValue().path("post");
      JsonNode answers = post.at("/responses/200/content/application~1json/examples");
      for (Map.Entry<String, JsonNode> request :
          post.at("/requestBody/content/application~1json/examples").properties()) {
        if (!path.getKey().startsWith("/v1/trips")) {
          all.add(
              new Example(
                  path.getKey(),
                  request.getKey(),
                  Contract.example(request.getValue()),
                  Contract.example(answers.path(request.getKey()))));
        }
      }
    }
    return all;
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aRequestGetsTheAnswerThatStandsBesideIt(Example example) throws JsonProcessingException {
    assertFalse(example.answer().isMissingNode(), "no answer has the name of the request");
    String answer =
        json(example.request().toString())
            .post(example.path())
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertEquals(plain(example.answer()), plain(JSON.readTree(answer)));
  }

  /** Without what may differ, and with the first caution for all of them. */
  private static JsonNode plain(JsonNode node) throws JsonProcessingException {
    JsonNode plain = JSON.readTree(node.toString());
    drop(plain);
    return plain;
  }

  private static void drop(JsonNode node) {
    if (node instanceof ObjectNode object) {
      object.remove(MAY_DIFFER);
      if (object.path("cautions") instanceof ArrayNode cautions) {
        while (cautions.size() > 1) {
          cautions.remove(1);
        }
      }
    }
    node.forEach(ContractExamplesTest::drop);
  }

  /** Every address that reads a body shows a request. */
  @Test
  void noAddressIsWithoutAnExample() {
    List<String> without = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : Contract.document().path("paths").properties()) {
      for (JsonNode operation : path.getValue()) {
        for (JsonNode content : operation.at("/requestBody/content")) {
          if (!content.has("example") && !content.has("examples")) {
            without.add(path.getKey());
          }
        }
        for (Map.Entry<String, JsonNode> answer : operation.path("responses").properties()) {
          for (Map.Entry<String, JsonNode> content :
              Contract.resolve(answer.getValue()).path("content").properties()) {
            boolean json = content.getKey().endsWith("json");
            if (json && !content.getValue().has("example") && !content.getValue().has("examples")) {
              without.add(path.getKey() + " " + answer.getKey());
            }
          }
        }
      }
    }
    assertEquals(List.of(), without);
    assertTrue(examples().size() >= 14, "only " + examples().size() + " requests");
  }
}
