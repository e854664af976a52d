package dev.faircarry.http;

import static dev.faircarry.http.RunningService.json;
import static dev.faircarry.http.RunningService.request;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.csv.Table;
import dev.faircarry.demo.DemoTrips;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables over HTTP, nothing kept. */
@ExtendWith(RunningService.class)
class TableRoutesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> OF_A_TRIP = List.of("hikers", "kit", "shared");

  private static RequestSpecification csv(String text) {
    return request()
        .contentType("text/csv; charset=utf-8")
        .body(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String table(String name, String document) {
    return json(document)
        .accept("text/csv")
        .post("/v1/tables/" + name)
        .then()
        .statusCode(200)
        .contentType(startsWith("text/csv"))
        .header("Content-Disposition", "attachment; filename=\"" + name + ".csv\"")
        .extract()
        .asString();
  }

  static List<String> demos() {
    return DemoTrips.names();
  }

  /** The document, taken apart into tables and put together again, is the document read anew. */
  @ParameterizedTest
  @MethodSource("demos")
  void aDemoTripComesBackFromItsTables(String demo) throws IOException {
    String document = Files.readString(DemoTrips.file(demo));
    ObjectNode asked = JSON.createObjectNode();
    ObjectNode frame = (ObjectNode) JSON.readTree(document);
    frame.remove(List.of("hikers", "shared"));
    asked.set("trip", frame);
    OF_A_TRIP.forEach(name -> asked.put(name, table(name, document)));
    ObjectNode same = JSON.createObjectNode();
    same.set("trip", JSON.readTree(document));
    assertEquals(trip(same), trip(asked));
  }

  private static JsonNode trip(ObjectNode asked) throws IOException {
    return JSON.readTree(
        json(asked.toString()).post("/v1/tables").then().statusCode(200).extract().asString());
  }

  @Test
  void issuesOfTablesAndOfTheTripAroundThemAreToldTogether() {
    json("{\"trip\": {\"format\": \"faircarry-trip/1\", \"name\": \"n\", \"days\": 1,"
            + " \"rules\": [{\"kind\": \"together\", \"pieces\": [\"pot\", \"kettle\"]}]},"
            + " \"hikers\": \"id;bodyMass\\nada;58.5 stones\\n\","
            + " \"shared\": \"id,mass\\npot,1 kg\\n\\nstove,95\\n\"}")
        .post("/v1/tables")
        .then()
        .statusCode(422)
        .body("issues.code", contains("unknown-unit", "no-unit", "unknown-piece"))
        .body("issues.table", contains(equalTo("hikers"), equalTo("shared"), nullValue()))
        .body("issues.row", contains(equalTo(2), equalTo(4), nullValue()))
        .body("issues.column", contains(equalTo("bodyMass"), equalTo("mass"), nullValue()))
        .body("issues[0].value", nullValue())
        .body("issues[1].value", equalTo("95"))
        .body("issues[2].pointer", equalTo("/trip/rules/0/pieces/1"))
        .body(not(containsString("58.5")));
  }

  @Test
  void aTableByItselfBecomesWhatItHolds() {
    csv("name;bodyMass\nÜnal;60 kg\n")
        .post("/v1/tables/hikers")
        .then()
        .statusCode(200)
        .body("hikers.name", contains("Ünal"))
        .body("hikers.bodyMass", contains("60 kg"));
    csv("hiker,name,mass\nAda B,Cup,1 oz\nben,Mug,2 oz\nAda B,Bowl,3 oz\n")
        .post("/v1/tables/kit")
        .then()
        .statusCode(200)
        .body("kits.hiker", contains("Ada B", "ben"))
        .body("kits[0].kit.name", contains("Cup", "Bowl"));
    csv("id,part,mass,owner,goesInto,onDays\ntarp,fly,1 kg,,,\npot,,1 kg,zoe,bear-box,4|9\n")
        .post("/v1/tables/shared")
        .then()
        .statusCode(200)
        .body("shared.id", contains("pot", "tarp"));
    csv("hiker,piece,units\nada,dinner,5\nada,tarp/fly,\n")
        .post("/v1/tables/split")
        .then()
        .statusCode(200)
        .body("carries[0].pieces[0].units", equalTo(5))
        .body("carries[0].pieces[1]", equalTo("tarp/fly"));
    csv("kind,hiker,piece,mass,confirmed\nwhole-pack,ada,,12.4 kg,yes\npiece,,pot,14 oz,\n")
        .post("/v1/tables/readings")
        .then()
        .statusCode(200)
        .body("readings.kind", contains("whole-pack", "piece"))
        .body("readings[0].confirmed", equalTo(true));
  }

  @ParameterizedTest
  @ValueSource(strings = {"hikers", "kit", "shared", "split", "readings"})
  void whatIsWrongWithATableIsToldByItsCell(String name) {
    csv("nonsense\n1\n")
        .post("/v1/tables/" + name)
        .then()
        .statusCode(422)
        .body("issues[0].code", equalTo("unknown-field"))
        .body("issues[0].table", equalTo(name))
        .body("issues[0].row", equalTo(1))
        .body("issues[0].remedy", containsString(Table.of(name).orElseThrow().columns().get(0)));
    csv("")
        .post("/v1/tables/" + name)
        .then()
        .statusCode(400)
        .body("issues[0].code", equalTo("not-csv"));
  }

  @Test
  void readingsComeBackFromTheirTable() {
    String document =
        "{\"readings\": [{\"kind\": \"kit\", \"hiker\": \"ada\", \"item\": \"cup\", \"mass\": \"2 oz\","
            + " \"at\": \"-5 °C, 7:10\", \"source\": \"=hook\"}]}";
    String table = table("readings", document);
    assertEquals(
        List.of(
            "kind,hiker,item,piece,mass,at,source,confirmed",
            "kit,ada,cup,,2 oz,\"'-5 °C, 7:10\",'=hook,"),
        table.lines().toList());
    csv(table)
        .post("/v1/tables/readings")
        .then()
        .statusCode(200)
        .body("readings[0].at", equalTo("-5 °C, 7:10"))
        .body("readings[0].source", equalTo("=hook"));
  }

  /** The answer to a search as a table, back as a document, is judged like the answer itself. */
  @Test
  void aSplitIsAnsweredAsATableAndCheckedAgain() throws IOException {
    String trip = Files.readString(DemoTrips.file("early-leaver"));
    String table =
        json(trip)
            .accept("text/csv")
            .post("/v1/splits")
            .then()
            .statusCode(200)
            .contentType(startsWith("text/csv"))
            .body(startsWith("kind,hiker,hikerName,piece,pieceName,units,day,to\r\n"))
            .body(containsString("hands-over,pat,Pat,stove,Stove,1,1,quinn\r\n"))
            .extract()
            .asString();
    ObjectNode asked = JSON.createObjectNode();
    asked.set("trip", JSON.readTree(trip));
    asked.set("split", JSON.readTree(csv(table).post("/v1/tables/split").asString()));
    json(asked.toString())
        .post("/v1/checks")
        .then()
        .statusCode(200)
        .body("keepsRules", equalTo(true))
        .body("worst.targetRatio", equalTo(0.9f));
  }

  @Test
  void thatThereIsNoSplitIsToldAsJsonWhateverWasWanted() throws IOException {
    json(Files.readString(DemoTrips.file("impossible-rules")))
        .accept("text/csv")
        .post("/v1/splits")
        .then()
        .statusCode(200)
        .body("result", equalTo("impossible"));
  }

  @Test
  void kindsAreNegotiated() {
    csv("name,mass\na,1 g\n").accept("text/csv").post("/v1/tables/shared").then().statusCode(406);
    json("{}").accept("application/json").post("/v1/tables/shared").then().statusCode(406);
    json("{}").post("/v1/tables/shared").then().statusCode(422);
    request().contentType("text/plain").body("x").post("/v1/tables/shared").then().statusCode(415);
    request()
        .contentType("text/csv; charset=iso-8859-1")
        .body("name,mass\na,1 g\n")
        .post("/v1/tables/shared")
        .then()
        .statusCode(415);
    csv("name\na\n").post("/v1/tables/rules").then().statusCode(404);
    request().get("/v1/tables").then().statusCode(405).header("Allow", "OPTIONS, POST");
    csv("x".repeat(2_000_001)).post("/v1/tables/shared").then().statusCode(413);
    json("{}").post("/v1/tables").then().statusCode(422).body("issues.pointer", contains("/trip"));
  }
}
