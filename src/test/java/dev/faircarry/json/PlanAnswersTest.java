package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.app.Checked;
import dev.faircarry.app.ChooseGear;
import dev.faircarry.app.Judge;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions about the rest of a trip, from bytes to bytes. */
class PlanAnswersTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final byte[] DOCUMENT = Documents.resource("/trips/plan-everything.json");

  private static final Judge JUDGE = new Checked();
  private static final PlanAnswers ANSWERS =
      new PlanAnswers(new ChooseGear(SplitSolver::solve, JUDGE), JUDGE);

  private static JsonNode tree(byte[] body) throws IOException {
    return MAPPER.readTree(body);
  }

  private static byte[] look(byte[] trip, String more) throws IOException {
    ObjectNode root = (ObjectNode) MAPPER.readTree("{" + more.replace('\'', '"') + "}");
    root.set("trip", MAPPER.readTree(trip));
    return MAPPER.writeValueAsBytes(root);
  }

  private static JsonNode choice(byte[] body) throws IOException {
    return tree(
        Documents.value(
                ANSWERS.choice(LookReader.read(body), PlanAnswers.CHOICE_STEPS, 0, () -> false))
            .body());
  }

  /** 700 g a day less the 158 g eaten of the dinner are 542 g, and 30 g of packaging. */
  @Test
  void provisionsComeWithReasonsFiguresAndTheTrip() throws IOException {
    JsonNode answer = tree(Documents.value(ANSWERS.provisions(DOCUMENT)).body());
    List<String> ids = new ArrayList<>();
    answer.get("items").forEach(i -> ids.add(i.get("item").get("id").asText()));
    assertEquals("plan-meal-dinner", ids.get(0));
    assertEquals("plan-ration", ids.get(1));
    assertTrue(ids.contains("plan-water-1"), ids.toString());
    JsonNode ration = answer.get("items").get(1);
    assertEquals("572 g", ration.get("item").get("unitMass").asText());
    assertTrue(ration.get("followsParty").asBoolean());
    for (JsonNode figure : answer.get("figures")) {
      boolean given = figure.get("origin").asText().equals("given");
      assertTrue(given || figure.get("source").asText().length() > 5, figure.toString());
    }
    Trip after = Documents.trip(MAPPER.writeValueAsBytes(answer.get("trip")));
    assertEquals(8 + ids.size(), after.shared().size());
    JsonNode again =
        tree(
            Documents.value(ANSWERS.provisions(MAPPER.writeValueAsBytes(answer.get("trip"))))
                .body());
    assertEquals(answer, again);
  }

  @Test
  void choiceWithinTheBudget() throws IOException {
    JsonNode answer = choice(look(DOCUMENT, ""));
    assertEquals("chosen", answer.get("outcome").asText());
    assertEquals("2745", answer.get("chosen").get("massGrams").asText());
    assertEquals("240", answer.get("chosen").get("price").asText());
    assertEquals(6, answer.get("frontier").size());
    assertTrue(answer.get("complete").asBoolean());
    assertEquals("shelter", answer.get("swaps").get(0).get("offer").asText());
    // 1,880 g for 210.00 are 8.95 g for one, half up to a tenth.
    assertEquals("9", answer.get("swaps").get(0).get("savedGramsPerMoney").asText());
    assertEquals("first-aid", answer.get("doubles").get(0).get("covers").asText());
    Documents.trip(MAPPER.writeValueAsBytes(answer.get("trip")));
  }

  @ParameterizedTest
  @CsvSource({"250.00, chosen", "0, chosen", "10000, chosen"})
  void budgets(String budget, String outcome) throws IOException {
    ObjectNode trip = (ObjectNode) MAPPER.readTree(DOCUMENT);
    ((ObjectNode) trip.at("/plan/taking")).put("budget", budget);
    assertEquals(outcome, choice(look(MAPPER.writeValueAsBytes(trip), "")).get("outcome").asText());
  }

  /** Without the tent only the bought shelter is a roof, for 210.00: a budget of 100 lies below. */
  @Test
  void budgetBelowTheCheapestSet() throws IOException {
    ObjectNode trip = (ObjectNode) MAPPER.readTree(DOCUMENT);
    ((ArrayNode) trip.get("shared")).remove(0);
    ((ObjectNode) trip.at("/plan/taking")).put("budget", "100.00");
    JsonNode answer = choice(look(MAPPER.writeValueAsBytes(trip), ""));
    assertEquals("over-budget", answer.get("outcome").asText());
    JsonNode frontier = answer.get("frontier");
    assertEquals("210", frontier.get(frontier.size() - 1).get("price").asText());
    assertTrue(answer.path("chosen").isMissingNode());
    assertTrue(answer.path("trip").isMissingNode());
  }

  @Test
  void impossibleNeeds() throws IOException {
    ObjectNode trip = (ObjectNode) MAPPER.readTree(DOCUMENT);
    ((ObjectNode) trip.at("/plan/taking/needs/0")).put("atLeast", 9);
    JsonNode answer = choice(look(MAPPER.writeValueAsBytes(trip), ""));
    assertEquals("unmeetable", answer.get("outcome").asText());
    assertEquals("light", answer.get("conflict").get(0).asText());
    assertEquals(9, answer.get("shortfalls").get(0).get("asked").asInt());
    assertEquals(2, answer.get("shortfalls").get(0).get("met").asInt());
  }

  @Test
  void noTimeNoAnswer() throws IOException {
    JsonNode answer =
        tree(
            Documents.value(
                    ANSWERS.choice(LookReader.read(look(DOCUMENT, "")), 1000, 0, () -> true))
                .body());
    assertEquals("undecided", answer.get("outcome").asText());
    assertTrue(answer.get("cutByClock").asBoolean());
  }

  /** Issues of the parts stand at their places in the whole, all at once. */
  @Test
  void issuesOfAllParts() {
    String body =
        "{'trip':{'format':'faircarry-trip/1','name':'n','days':-1,'hikers':[]},'split':{'carries':7},'cost':'guess','wish':1}";
    assertEquals(
        List.of(
            "unknown-word /cost",
            "wrong-type /split/carries",
            "missing /split/format",
            "out-of-range /trip/days",
            "empty-group /trip/hikers",
            "unknown-field /wish"),
        Documents.codes(
                Documents.issues(
                    ANSWERS.efforts(
                        LookReader.read(body.replace('\'', '"').getBytes(StandardCharsets.UTF_8)))))
            .stream()
            .sorted(Comparator.comparing(s -> s.substring(s.indexOf(' '))))
            .toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"null", "[]", "7", "\"x\"", "{}", "{\"trip\":null}", "{\"trip\":[]}", "''"})
  void oddBodies(String body) {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    assertTrue(!Documents.issues(ANSWERS.kitReport(LookReader.read(bytes))).isEmpty(), body);
    assertTrue(!Documents.issues(ANSWERS.loadPlot(LookReader.read(bytes))).isEmpty(), body);
    assertTrue(!Documents.issues(ANSWERS.provisions(bytes)).isEmpty(), body);
    assertTrue(
        !Documents.issues(ANSWERS.choice(LookReader.read(bytes), 1, 0, () -> false)).isEmpty(),
        body);
  }
}
