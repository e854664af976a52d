package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards, what to do if somebody does not come, and the last look, over HTTP. */
class CardRoutesTest {
  private static final String DOCUMENT =
      """
      {"format": "faircarry-trip/1", "name": "Tarns", "days": 2,
       "hikers": [{"id": "asha", "name": "Asha", "bodyMass": "58.25 kg",
                   "kit": [{"id": "quilt", "name": "Quilt", "mass": "650 g", "stow": "bottom"},
                           {"id": "shoes", "name": "Shoes", "mass": "600 g", "worn": true}]},
                  {"id": "ruth", "name": "Ruth", "bodyMass": "69 kg",
                   "kit": [{"id": "can", "name": "Hard can", "mass": "1 kg",
                            "contains": {"kind": "food", "volume": "9 L"}}]},
                  {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg", "leavesAfterDay": 1}],
       "shared": [{"id": "filter", "name": "Filter", "mass": "99 g", "owner": "asha", "stow": "at-hand"},
                  {"id": "meal", "name": "Meal", "count": 4, "unitMass": "150 g", "unitVolume": "1 L",
                   "goesInto": "food", "use": {"kind": "units-per-day", "perDay": 2}},
                  {"id": "rope", "name": "Rope", "mass": "2.4 kg", "owner": "ruth", "stow": "outside"}]}
      """;

  /** Tomas has the rope and hands it to Asha when he leaves. */
  private static final String FIRST =
      """
      {"format": "faircarry-split/1", "carries": [
        {"hiker": "tomas", "pieces": ["rope"]},
        {"hiker": "ruth", "pieces": ["filter", {"piece": "meal", "units": 4}]}],
       "handoversAtCamp": [{"afterDay": 1, "from": "tomas", "to": "asha", "piece": "rope"}]}
      """;

  private static final String SECOND =
      """
      {"format": "faircarry-split/1", "carries": [
        {"hiker": "asha", "pieces": ["rope"]},
        {"hiker": "ruth", "pieces": ["filter", {"piece": "meal", "units": 4}]}]}
      """;

  @TempDir Path directory;
  private KeptService service;
  private String trip = "";
  private String leader = "";

  @BeforeEach
  void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
    KeptService.Stored made = service.create(DOCUMENT);
    trip = made.address();
    leader = made.leader();
  }

  @AfterEach
  void end() {
    service.close();
  }

  private String link(String token, String body) {
    return service.link(trip, token, body);
  }

  private String link(String hiker) {
    return link(leader, "{\"role\": \"hiker\", \"hiker\": \"" + hiker + "\"}");
  }

  private String agree(String split) {
    Reply made = service.send("POST", trip + "/splits", leader, split, "If-Match", "*");
    assertEquals(201, made.status(), made.body());
    String id = made.location().substring(made.location().lastIndexOf('/') + 1);
    Reply agreed =
        service.send(
            "PUT", trip + "/agreed-split", leader, "{\"split\": \"" + id + "\"}", "If-Match", "*");
    assertEquals(204, agreed.status(), agreed.body());
    return id;
  }

  /** An answer that is valid under the contract. */
  private JsonNode read(String path, String token, String schema) {
    Reply reply = service.get(trip + path, token);
    assertEquals(200, reply.status(), reply.body());
    assertEquals("no-store", reply.raw().headers().firstValue("Cache-Control").orElse(""));
    assertEquals(
        List.of(),
        Contract.errors(Contract.document().at("/components/schemas/" + schema), reply.body()),
        reply.body());
    return reply.json();
  }

  private String text(String path, String token) {
    Reply reply = service.send("GET", trip + path, token, "", "Accept", "text/plain");
    assertEquals(200, reply.status(), reply.body());
    return reply.body();
  }

  private static List<String> texts(JsonNode list, String pointer) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(e -> e.at(pointer).asText())
        .toList();
  }

  @Test
  void cardSaysFromWhomAndWhereAndToWhomItGoesBack() {
    agree(FIRST);
    JsonNode card = read("/hikers/ruth/card", leader, "Card");
    JsonNode filter = card.path("things").get(0);
    assertEquals("Filter", filter.path("name").asText());
    assertEquals("at-hand", filter.path("stow").asText());
    assertEquals("Asha", filter.at("/owner/name").asText());
    assertEquals("Asha", filter.at("/from/0/hiker/name").asText());
    assertEquals("owned", filter.at("/from/0/why").asText());
    JsonNode meals = card.path("things").get(1);
    assertEquals(4, meals.path("units").asInt());
    assertEquals(600, meals.path("grams").asInt());
    assertEquals("Hard can", meals.at("/into/0").asText());
    assertEquals(List.of("Rope"), texts(card.path("gives"), "/name"));
    assertEquals("Tomas", card.at("/gives/0/to/name").asText());
    assertEquals(List.of("1", "2"), texts(card.path("openings"), "/day"));
    // 1000 g can, 99 g filter, 600 g of meals; then two meals less.
    assertEquals(List.of("1699", "1399"), texts(card.path("mornings"), "/loadGrams"));
    assertFalse(card.path("ratiosHidden").asBoolean());

    JsonNode of = read("/hikers/asha/card", leader, "Card");
    assertEquals(List.of("Filter"), texts(of.path("gives"), "/name"));
    assertEquals("Tomas", of.at("/atCamp/0/from/name").asText());
    assertEquals(1, of.at("/atCamp/0/afterDay").asInt());
    assertEquals(List.of("Quilt", "Shoes"), texts(of.path("kit"), "/name"));
  }

  @Test
  void afterAnotherAgreementThingsComeFromWhoHadThem() {
    String first = agree(FIRST);
    agree(SECOND);
    JsonNode card = read("/hikers/asha/card", leader, "Card");
    assertEquals("Tomas", card.at("/things/0/from/0/hiker/name").asText());
    assertEquals("carried-before", card.at("/things/0/from/0/why").asText());
    assertEquals(List.of(), texts(card.path("gives"), "/name"), "the filter is with Ruth already");
    JsonNode giver = read("/hikers/tomas/card", leader, "Card");
    assertEquals(List.of("Rope"), texts(giver.path("gives"), "/name"));
    // Asked about by its id, the first one is as it was.
    JsonNode then = read("/hikers/tomas/card?split=" + first, leader, "Card");
    assertEquals("Ruth", then.at("/things/0/from/0/hiker/name").asText());
    assertFalse(then.at("/kept/agreed").asBoolean());
  }

  @Test
  void othersSeeNoRatioAndOnesOwnIsSeen() {
    agree(FIRST);
    String asha = link("asha");
    JsonNode own = read("/hikers/asha/card", asha, "Card");
    assertTrue(own.at("/mornings/0/targetRatio").isNumber());
    for (String token : List.of(link("ruth"), link(leader, "{\"role\": \"viewer\"}"))) {
      JsonNode seen = read("/hikers/asha/card", token, "Card");
      assertTrue(seen.path("ratiosHidden").asBoolean());
      assertTrue(seen.path("targetGrams").isMissingNode());
      assertTrue(seen.at("/mornings/0/targetRatio").isMissingNode());
      assertTrue(seen.at("/mornings/0/withinTarget").asBoolean());
      assertFalse(text("/hikers/asha/card", token).contains("%"));
    }
    JsonNode all = read("/cards", link("ruth"), "Cards");
    assertEquals(List.of("true", "false", "false"), texts(all.path("cards"), "/ratiosHidden"));
  }

  @Test
  void textIsAMessage() {
    agree(FIRST);
    String text = text("/hikers/ruth/card", leader);
    assertTrue(text.startsWith("Ruth: what you carry\nTarns, 2 days\n"), text);
    assertTrue(text.contains("- Filter, 0.10 kg, at hand; from Asha; goes back to Asha\n"), text);
    assertTrue(text.contains("- 4 × Meal, 0.60 kg, inside, in “Hard can”\n"), text);
    assertTrue(text.contains("- Rope to Tomas\n"), text);
    assertTrue(text.contains("- day 2, Meal: 2 from you\n"), text);
    // 1.699 kg of a fifth of 69 kg, 13.8 kg: 12.3 %, rounded up.
    assertTrue(text.contains("- day 1: 1.70 kg, 13 % of your target\n"), text);
    // The rope is hers, and without Tomas somebody has to take it.
    assertTrue(text.contains("- without Tomas: "), text);
    assertFalse(text.contains("without Ruth"), text);
    // 1699 g are 3 lb 11.9 oz: 59.93 oz.
    assertTrue(text("/hikers/ruth/card?units=us", leader).contains("day 1: 3 lb 11.9 oz"), text);
    assertTrue(text("/cards", leader).contains("Tomas: what you carry"));
  }

  @Test
  void absencesSayWhatChangesHands() {
    String split = agree(SECOND);
    JsonNode found = read("/absences", link("ruth"), "Absences");
    assertEquals(split, found.path("split").asText());
    assertEquals(List.of("asha", "ruth", "tomas"), texts(found.path("absences"), "/hiker/id"));
    JsonNode withoutAsha = found.at("/absences/0");
    assertEquals("handovers", withoutAsha.path("outcome").asText());
    assertEquals("rope", withoutAsha.at("/handovers/0/piece").asText());
    assertEquals("asha", withoutAsha.at("/handovers/0/from/id").asText());
    // The meals ask for a container, and without Ruth the group has none.
    assertEquals("unfit", found.at("/absences/1/outcome").asText());
    assertEquals(0, found.at("/absences/2/handovers").size());
  }

  @Test
  void departureIsJudgedOnTheTripAsItIsNow() {
    agree(FIRST);
    JsonNode before = read("/departure-check", leader, "StoredDeparture");
    assertTrue(before.has("fairness"));
    assertFalse(texts(before.path("findings"), "/code").contains("stale"));
    Reply added =
        service.send(
            "POST",
            trip + "/shared",
            leader,
            "{\"id\": \"saw\", \"name\": \"Saw\", \"mass\": \"210 g\"}",
            "If-Match",
            "*");
    assertEquals(201, added.status(), added.body());
    JsonNode after = read("/departure-check", leader, "StoredDeparture");
    assertEquals("not-ready", after.path("readiness").asText());
    assertTrue(texts(after.path("findings"), "/code").containsAll(List.of("not-carried", "stale")));
    JsonNode seen = read("/departure-check", link("ruth"), "StoredDeparture");
    assertEquals("not-ready", seen.path("readiness").asText());
    assertEquals("asha", seen.at("/bodyMassHidden/0").asText());
    assertFalse(seen.has("worst") || seen.has("fairness") || seen.has("labels"), seen.toString());
  }

  @Test
  void nothingIsSaidWithoutAnAgreementOrToStrangers() {
    assertEquals(404, service.get(trip + "/hikers/ruth/card", leader).status());
    assertEquals(404, service.get(trip + "/departure-check", leader).status());
    agree(FIRST);
    assertEquals(404, service.get(trip + "/hikers/nobody/card", leader).status());
    assertEquals(404, service.get(trip + "/hikers/ruth/card", "").status());
    assertEquals(404, service.get(trip + "/cards?split=none", leader).status());
    assertEquals(400, service.get(trip + "/cards?units=stone", leader).status());
    assertEquals(400, service.get(trip + "/absences?units=us", leader).status());
    assertEquals(
        406, service.send("GET", trip + "/cards", leader, "", "Accept", "image/png").status());
  }
}
