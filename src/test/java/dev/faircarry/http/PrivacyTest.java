package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two trips that differ in one private body mass and in nothing else are asked the same things by
 * everybody who may not know it. The answers are the same, letter for letter, once the fields of
 * {@link #NOT_INDEPENDENT} are taken out. What the hiker sees differs, so the comparison can fail.
 */
class PrivacyTest {
  /** Fields that depend on a hidden body mass, and why they are shown all the same. */
  private static final Map<String, String> NOT_INDEPENDENT =
      Map.of(
          "withinTarget",
          "whether a load is within the hiker's own target is what everybody is to see",
          "proved",
          "one bit about the whole split: whether a fairer one could exist",
          "complete",
          "one bit about a trade-off curve: whether the search for it came to its end",
          "progress",
          "the phase of a search at some moment, and whether it was over before anybody looked");

  /** What is known of a split by whoever knows who carries what, and the trip without the mass. */
  private static final Set<String> OF_THE_SEARCH = Set.of("kept", "proof");

  private static final String LIGHT = "41.3 kg";

  /** Heavy enough for another split, for no passed cap, and in another unit. */
  private static final String HEAVY = "233 lb";

  private static final List<String> ROLES = List.of("leader", "given", "other", "viewer");

  @TempDir private static Path directory;
  private static KeptService service;

  @BeforeAll
  static void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
  }

  @AfterAll
  static void end() {
    service.close();
  }

  /** Fields of the hiker with the private mass, of the policy, and rules, by what they try. */
  private record Case(String name, String hiker, String policy, String rules) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final String EVERYTHING_PINNED =
      """
      {"id": "r1", "kind": "pinned", "pieces": ["stove", "rope"], "hiker": "asha"},
      {"id": "r2", "kind": "pinned", "pieces": ["pot", "meal"], "hiker": "tomas"},
      {"id": "r3", "kind": "pinned", "pieces": ["shelter"], "hiker": "ruth"}
      """;

  static Stream<Case> cases() {
    String rule =
        "{\"id\": \"r1\", \"kind\": \"barred\", \"pieces\": [\"pot\"],"
            + " \"hikers\": [\"asha\"]}";
    return Stream.of(
        new Case("plain", "", "", rule),
        new Case("everything pinned", "", "", EVERYTHING_PINNED),
        new Case(
            "own kit over the cap of the light one",
            ", \"kit\": [{\"id\": \"quilt\", \"name\": \"Bricks\", \"mass\": \"14 kg\"}]",
            "",
            EVERYTHING_PINNED),
        new Case("only shared things counted", "", "\"basis\": \"shared\"", EVERYTHING_PINNED),
        new Case("a minor", ", \"minor\": true", "", rule),
        new Case(
            "own fractions",
            ", \"targetFraction\": 0.1, \"capFraction\": 0.11",
            "",
            EVERYTHING_PINNED),
        new Case("a target load beside it", ", \"targetLoad\": \"9 kg\"", "", rule),
        new Case("a cap load beside it", ", \"capLoad\": \"3 kg\"", "\"grain\": 1", rule));
  }

  private static String document(Case one, String mass) {
    String kit =
        one.hiker().contains("\"kit\"")
            ? ""
            : ", \"kit\": [{\"id\": \"quilt\", \"name\": \"Quilt\", \"mass\": \"650 g\"}]";
    return """
        {"format": "faircarry-trip/1", "name": "Tarns", "days": 2, "policy": {%s},
         "hikers": [{"id": "asha", "name": "Asha", "bodyMass": "%s",
                     "pack": {"mass": "1.2 kg", "volume": "50 L", "loadRating": "16 kg"} %s%s},
                    {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"},
                    {"id": "ruth", "name": "Ruth", "bodyMass": "69 kg",
                     "kit": [{"id": "bag", "name": "Bag", "mass": "3 kg"}]}],
         "shared": [{"id": "stove", "name": "Stove", "mass": "95 g", "covers": ["light"]},
                    {"id": "pot", "name": "Pot", "mass": "410 g"},
                    {"id": "meal", "name": "Meal", "count": 6, "unitMass": "350 g",
                     "use": {"kind": "units-per-day", "perDay": 3}},
                    {"id": "shelter", "name": "Shelter", "mass": "1.9 kg"},
                    {"id": "rope", "name": "Rope", "mass": "2.4 kg"}],
         "rules": [%s]}
        """
        .formatted(one.policy(), mass, one.hiker(), kit, one.rules());
  }

  private static final String HAND =
      """
      {"format": "faircarry-split/1", "carries": [
        {"hiker": "asha", "pieces": ["stove", "rope"]},
        {"hiker": "tomas", "pieces": ["pot", {"piece": "meal", "units": 6}]},
        {"hiker": "ruth", "pieces": ["shelter"]}],
       "opened": [{"day": 1, "piece": "meal", "hiker": "tomas", "units": 3},
                  {"day": 2, "piece": "meal", "hiker": "tomas", "units": 3}]}
      """;

  /** A stored trip with a private body mass, and a link for everybody. */
  private static final class Kept {
    final String trip;
    final Map<String, String> tokens = new LinkedHashMap<>();
    final List<String> splits = new ArrayList<>();
    final List<String> solves = new ArrayList<>();

    Kept(String document) {
      Reply made = service.send("POST", "/v1/trips", "", document);
      assertEquals(201, made.status(), made.body());
      trip = made.location();
      tokens.put("leader", made.json().path("token").asText());
      tokens.put("given", link("leader", "asha"));
      tokens.put("other", link("leader", "tomas"));
      Reply viewer =
          service.send("POST", trip + "/links", tokens.get("leader"), "{\"role\": \"viewer\"}");
      tokens.put("viewer", viewer.json().path("token").asText());
      tokens.put("own", link("given", "asha"));
      Reply on = send("own", "PUT", "/hikers/asha/privacy", "{\"bodyMass\": \"private\"}");
      assertEquals(204, on.status(), on.body());
    }

    private String link(String by, String hiker) {
      Reply made =
          service.send(
              "POST",
              trip + "/links",
              tokens.get(by),
              "{\"role\": \"hiker\", \"hiker\": \"" + hiker + "\"}");
      assertEquals(201, made.status(), made.body());
      return made.json().path("token").asText();
    }

    /** A request made from whatever revision is the newest. */
    Reply send(String role, String method, String path, String body) {
      return service.send(
          method, trip + path, tokens.get(role), body, "If-Match", "*", "Prefer", "wait=30");
    }

    Reply hand(String split) {
      Reply made = send("leader", "POST", "/splits", split);
      assertEquals(201, made.status(), made.body());
      splits.add(id(made.location()));
      return made;
    }

    /** Has a split searched for; the answer to whoever asked. */
    Reply search(String role) {
      Reply found = send(role, "POST", "/splits?effort=20000", "");
      assertTrue(found.status() == 201 || found.status() == 200, found.body());
      if (found.status() == 201) {
        splits.add(id(found.location()));
        solves.add(id(found.location()));
      }
      return found;
    }

    /** The answer without what no two trips have in common: ids and times. */
    String plain(Reply reply) {
      String text = reply.status() + " " + headers(reply) + reply.body();
      text = text.replace(id(trip), "TRIP");
      return text.replaceAll("[0-9a-f]{18}(\\.[A-Za-z0-9_-]{32})?", "ID")
          .replaceAll("[0-9-]{10}T[0-9:.]+Z", "TIME")
          .replaceAll("\"request\" : \"[^\"]*\"", "");
    }

    private String headers(Reply reply) {
      Map<String, List<String>> headers = new TreeMap<>(reply.raw().headers().map());
      // The length follows from the body, and so from fields that are taken out; whether a
      // connection
      // is closed from how much of a request had come when it was refused.
      Set.of("date", "x-request-id", "content-length", "connection").forEach(headers::remove);
      return headers + "\n";
    }
  }

  private static String id(String location) {
    return location.substring(location.lastIndexOf('/') + 1);
  }

  private static String withoutListed(String answer) {
    // Not even its being there: a search may be over before its progress is written down.
    String text = answer.replaceAll(",\\s*\"progress\" : \\{\\s*\"phase\" : \"[a-z]+\"\\s*}", "");
    for (String field : NOT_INDEPENDENT.keySet()) {
      text = text.replaceAll("\"" + field + "\" : (true|false)", "\"" + field + "\"");
    }
    return text;
  }

  /**
   * Who takes what over from somebody absent is a searched split like any other: it depends on
   * every body mass and states none.
   */
  private static final Set<String> SEARCHED = Set.of("/v1/trips/{trip}/absences");

  /** Every path below a trip that can be read, with ids for what stands in braces. */
  private static List<String> readable(Kept kept) {
    List<String> paths = new ArrayList<>();
    service
        .addresses()
        .forEach(
            (path, methods) -> {
              if (path.startsWith("/v1/trips/{trip}")
                  && methods.contains("GET")
                  && !SEARCHED.contains(path)) {
                paths.addAll(filled(path.substring("/v1/trips/{trip}".length()), kept));
              }
            });
    return paths;
  }

  private static List<String> filled(String path, Kept kept) {
    Map<String, List<String>> values =
        Map.of(
            "hiker", List.of("asha", "tomas"),
            "item", List.of(path.contains("/kit/") ? "quilt" : "stove"),
            "rule", List.of("r1"),
            "number", List.of("1", "2", "3"),
            "split", kept.splits,
            "solve", kept.solves,
            "link", List.of("none"));
    int open = path.indexOf('{');
    if (open < 0) {
      return List.of(path);
    }
    String name = path.substring(open + 1, path.indexOf('}'));
    assertTrue(values.containsKey(name), "say what stands for {" + name + "}");
    return values.get(name).stream()
        .flatMap(value -> filled(path.replace("{" + name + "}", value), kept).stream())
        .toList();
  }

  /** Everything that can be read, as this role sees it. */
  private static List<String> everything(Kept kept, String role) {
    List<String> seen = new ArrayList<>();
    for (String path : readable(kept)) {
      for (String accept :
          path.endsWith("/events") ? List.of("text/event-stream") : List.of("*/*", "text/csv")) {
        Reply reply =
            service.send("GET", kept.trip + path, kept.tokens.get(role), "", "Accept", accept);
        assertTrue(reply.status() < 500, path + reply.body());
        seen.add(path.replaceAll("[0-9a-f]{18}", "ID") + " " + kept.plain(reply));
      }
    }
    return seen;
  }

  /** Every answer that can be a table, as this role gets it. */
  private static Map<String, String> tables(Kept kept, String role) {
    Map<String, String> tables = new TreeMap<>();
    for (String path : readable(kept)) {
      if (path.endsWith("/events")) {
        continue;
      }
      Reply reply =
          service.send("GET", kept.trip + path, kept.tokens.get(role), "", "Accept", "text/csv");
      if (reply.status() == 200) {
        tables.put(path.replaceAll("[0-9a-f]{18}", "ID"), reply.body());
      }
    }
    return tables;
  }

  /** The hiker's own tables do have the mass: those of the others could have had it. */
  @Test
  void noTableOfTheOthersHasTheMass() {
    Case one = cases().findFirst().orElseThrow();
    Kept kept = new Kept(document(one, LIGHT));
    kept.hand(HAND);
    Map<String, String> own = tables(kept, "own");
    assertEquals(
        Set.of("/hikers", "/hikers/asha/kit", "/hikers/tomas/kit", "/kit", "/shared", "/splits/ID"),
        own.keySet());
    assertTrue(own.get("/hikers").contains(LIGHT), own::toString);
    // A fifth of 41.3 kg is 8.26 kg: no target, and no ratio to it, in any table of another.
    for (String role : ROLES) {
      Map<String, String> seen = tables(kept, role);
      assertEquals(own.keySet(), seen.keySet(), role);
      seen.forEach(
          (path, text) -> {
            assertFalse(text.contains("41.3"), role + path);
            assertFalse(text.contains("8.26") || text.contains("8260"), role + path);
          });
      assertEquals(own.get("/splits/ID"), seen.get("/splits/ID"), "who carries what, no more");
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void whatCanBeReadIsIndependentOfTheMass(Case one) {
    Kept light = new Kept(document(one, LIGHT));
    Kept heavy = new Kept(document(one, HEAVY));
    boolean pinned = one.rules().equals(EVERYTHING_PINNED);
    for (Kept kept : List.of(light, heavy)) {
      kept.hand(HAND);
      kept.send("own", "PATCH", "/hikers/asha", "{\"maxPieces\": 12}");
      kept.hand(HAND);
      if (pinned) {
        kept.search("other");
      }
      String agreed = "{\"split\": \"" + kept.splits.get(1) + "\"}";
      assertEquals(204, kept.send("leader", "PUT", "/agreed-split", agreed).status());
    }
    for (String role : ROLES) {
      List<String> seenOfLight = everything(light, role);
      List<String> seenOfHeavy = everything(heavy, role);
      assertEquals(seenOfLight.size(), seenOfHeavy.size());
      for (int i = 0; i < seenOfLight.size(); i++) {
        assertEquals(withoutListed(seenOfLight.get(i)), withoutListed(seenOfHeavy.get(i)), role);
        assertFalse(seenOfLight.get(i).contains("41.3"), role);
        assertFalse(seenOfHeavy.get(i).contains("233"), role);
      }
    }
    assertNotEquals(everything(light, "own"), everything(heavy, "own"));
  }

  /** The listed fields do differ: the list is not longer than it must be. */
  @Test
  void whatIsListedDoesDepend() {
    Case one = cases().filter(c -> c.name().startsWith("own kit")).findFirst().orElseThrow();
    String light = new Kept(document(one, LIGHT)).hand(HAND).body();
    String heavy = new Kept(document(one, HEAVY)).hand(HAND).body();
    // 14 kg of kit and more: above a fifth of 41.3 kg, within a fifth of 233 lb, 21.1 kg.
    assertTrue(light.contains("\"withinTarget\" : false"), light);
    assertFalse(heavy.contains("\"withinTarget\" : false"), heavy);
    assertEquals(
        Set.of("withinTarget", "proved", "complete", "progress"), NOT_INDEPENDENT.keySet());
  }

  /**
   * A searched split depends on every body mass, or it would not be fair. Beside who carries what
   * it tells nothing: the same split made by hand in the other trip gets the same answer.
   */
  @Test
  void searchedSplitTellsNoMoreThanWhoCarriesWhat() {
    Case one = new Case("free", "", "", "");
    Kept light = new Kept(document(one, LIGHT));
    Kept heavy = new Kept(document(one, HEAVY));
    for (String role : List.of("leader", "given", "other")) {
      JsonNode fromLight = light.search(role).json();
      JsonNode fromHeavy = heavy.search(role).json();
      assertNotEquals(carried(fromLight), carried(fromHeavy), "the masses make no difference");
      assertEquals(stripped(fromLight), stripped(byHand(heavy, role, fromLight)), role);
      assertEquals(stripped(fromHeavy), stripped(byHand(light, role, fromHeavy)), role);
      assertEquals(keys(fromLight.path("proof")), Set.of("proved"));
      assertEquals(keys(fromHeavy.path("proof")), Set.of("proved"));
    }
  }

  private static JsonNode byHand(Kept kept, String role, JsonNode split) {
    Reply made = kept.send(role, "POST", "/splits", split.toString());
    assertEquals(201, made.status(), made.body());
    return made.json();
  }

  private static List<String> carried(JsonNode split) {
    List<String> all = new ArrayList<>();
    split.path("carries").forEach(c -> all.add(c.path("hiker") + " " + c.path("pieces")));
    return all;
  }

  private static String stripped(JsonNode answer) {
    ObjectNode copy = answer.deepCopy();
    copy.remove(OF_THE_SEARCH);
    return withoutListed(copy.toPrettyString());
  }

  private static Set<String> keys(JsonNode object) {
    Set<String> keys = new TreeSet<>();
    object.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  @Test
  void rulesThatCannotAllHoldAreToldWithoutTheMass() {
    String rules =
        EVERYTHING_PINNED
            + ", {\"id\": \"r4\", \"kind\": \"apart\", \"pieces\": [\"stove\", \"rope\"]}";
    Case one = new Case("impossible", "", "", rules);
    for (String role : List.of("leader", "given", "other")) {
      Kept light = new Kept(document(one, LIGHT));
      Kept heavy = new Kept(document(one, HEAVY));
      Reply no = light.search(role);
      assertEquals("impossible", no.json().path("result").asText());
      assertEquals(light.plain(no), heavy.plain(heavy.search(role)));
      assertEquals(Set.of("result", "conflict", "irreducible"), keys(no.json()));
    }
  }

  /**
   * Every change that can be asked for, by every role, with bodies of no use, of some use, and
   * wrong ones: what is answered, and what the trip looks like afterwards.
   */
  @Test
  void whatIsSaidToChangesIsIndependentOfTheMass() {
    Case one = cases().findFirst().orElseThrow();
    Kept light = new Kept(document(one, LIGHT));
    Kept heavy = new Kept(document(one, HEAVY));
    light.hand(HAND);
    heavy.hand(HAND);
    int compared = 0;
    List<String> last = new ArrayList<>();
    for (var address : service.addresses().entrySet()) {
      String path = address.getKey();
      if (!path.startsWith("/v1/trips/{trip}")) {
        continue;
      }
      String below = path.substring("/v1/trips/{trip}".length());
      for (String method : address.getValue()) {
        boolean ends = method.equals("DELETE") || below.endsWith("/erase");
        if (ends) {
          last.add(method + " " + below);
        } else if (!method.equals("GET")) {
          compared += compare(light, heavy, method, below);
        }
      }
    }
    for (String each : last) {
      compared += compare(light, heavy, each.split(" ", 2)[0], each.split(" ", 2)[1]);
    }
    assertTrue(compared > 150, "only " + compared);
  }

  /**
   * Changes of plans where the rules leave no choice that depends on the mass: what is answered,
   * and what can be read when they are taken over.
   */
  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void changesOfPlansAreIndependentOfTheMass(Case given) {
    Case one = new Case(given.name(), given.hiker(), given.policy(), EVERYTHING_PINNED);
    String lost = "{%s\"changes\": [{\"kind\": \"item-gone\", \"piece\": \"shelter\"}]}";
    List<List<String>> told = new ArrayList<>();
    for (String mass : List.of(LIGHT, HEAVY)) {
      Kept kept = new Kept(document(one, mass));
      kept.hand(HAND);
      kept.send("leader", "PUT", "/agreed-split", "{\"split\": \"" + kept.splits.get(0) + "\"}");
      List<String> answers = new ArrayList<>();
      answers.add(said(kept, "/rebalances", lost.formatted("")));
      answers.add(said(kept, "/takers", "{\"item\": {\"name\": \"Saw\", \"mass\": \"1 kg\"}}"));
      answers.add(said(kept, "/departure-checks", ""));
      answers.add(said(kept, "/departure-checks", "{\"personalEssentials\": []}"));
      // Whoever stays without Asha carries what she leaves, whatever she weighs.
      JsonNode without = kept.send("leader", "POST", "/drop-outs", "").json().at("/dropOuts/0");
      assertEquals("asha", without.path("hiker").asText());
      answers.add(without.toPrettyString());
      Reply taken =
          kept.send("leader", "POST", "/rebalances", lost.formatted("\"accept\": true, "));
      assertEquals(201, taken.status(), taken.body());
      kept.splits.add(id(taken.location()));
      answers.add(withoutListed(kept.plain(taken)));
      for (String role : ROLES) {
        everything(kept, role).forEach(seen -> answers.add(withoutListed(seen)));
      }
      told.add(answers);
    }
    assertEquals(told.get(0), told.get(1));
  }

  private static String said(Kept kept, String path, String body) {
    Reply reply = kept.send("leader", "POST", path, body);
    assertEquals(200, reply.status(), path + reply.body());
    return withoutListed(kept.plain(reply));
  }

  /** Of what to do without somebody else, only what a split tells too. */
  @Test
  void whatIsToldOfASearchAfterAChangeIsListed() {
    Kept kept = new Kept(document(new Case("free", "", "", ""), LIGHT));
    kept.hand(HAND);
    kept.send("leader", "PUT", "/agreed-split", "{\"split\": \"" + kept.splits.get(0) + "\"}");
    JsonNode cases = kept.send("leader", "POST", "/drop-outs", "").json().path("dropOuts");
    assertEquals(3, cases.size());
    for (JsonNode each : List.of(cases.get(1), cases.get(2))) {
      assertEquals(
          Set.of("hiker", "text", "result", "notes", "reason", "complete", "points"), keys(each));
      assertFalse(each.path("text").asText().contains("%"), each.path("text").asText());
      JsonNode point = each.at("/points/0");
      assertEquals(
          Set.of("handovers", "people", "movedGrams", "list", "proof", "split"), keys(point));
      assertEquals(Set.of("proved"), keys(point.path("proof")));
    }
    assertTrue(cases.get(0).path("text").asText().contains("% of target"), "nothing is hidden");
  }

  private static int compare(Kept light, Kept heavy, String method, String path) {
    int compared = 0;
    List<String> ones = filled(path, light);
    List<String> others = filled(path, heavy);
    for (int i = 0; i < ones.size(); i++) {
      for (String body : bodies(method, path)) {
        // The leader comes last: what a leader asks for is mostly done.
        for (String role : List.of("other", "given", "leader")) {
          Reply one = light.send(role, method, ones.get(i), body);
          Reply other = heavy.send(role, method, others.get(i), body);
          String what = role + " " + method + " " + ones.get(i) + " " + body;
          assertTrue(one.status() < 500, what + one.body());
          assertEquals(withoutListed(light.plain(one)), withoutListed(heavy.plain(other)), what);
          compared++;
        }
      }
      assertEquals(
          light.plain(service.get(light.trip, light.tokens.get("leader"))),
          heavy.plain(service.get(heavy.trip, heavy.tokens.get("leader"))));
    }
    return compared;
  }

  private static List<String> bodies(String method, String path) {
    List<String> bodies =
        new ArrayList<>(
            List.of(
                "",
                "{\"bodyMass\": \"41.3 kg\"}",
                "{\"bodyMass\": \"8000 kg\", \"name\": 3}",
                "{\"id\": \"asha\", \"name\": \"Asha\", \"capFraction\": 9}"));
    if (path.endsWith("/hikers/{hiker}")) {
      bodies.add("{\"targetFraction\": 0.25}");
      bodies.add("{\"targetLoad\": null, \"bodyMass\": null, \"capLoad\": \"2 kg\"}");
    }
    if (path.endsWith("/privacy")) {
      bodies.add("{\"bodyMass\": \"leader\"}");
    }
    if (path.endsWith("/links")) {
      bodies.add("{\"role\": \"hiker\", \"hiker\": \"asha\"}");
    }
    if (path.endsWith("/splits")) {
      // Without a body it is a search; searchedSplitTellsNoMoreThanWhoCarriesWhat compares those.
      bodies.remove("");
      bodies.add(HAND);
    }
    return method.equals("DELETE") ? List.of("") : bodies;
  }

  @Test
  void aLinkTheLeaderHasSeenDoesNotShowAPrivateMass() {
    Kept kept = new Kept(document(cases().findFirst().orElseThrow(), LIGHT));
    String path = kept.trip + "/hikers/asha";
    assertEquals(LIGHT, service.get(path, kept.tokens.get("own")).json().path("bodyMass").asText());
    assertFalse(service.get(path, kept.tokens.get("given")).json().has("bodyMass"));
    // Neither an older nor a newer link by the leader's hand makes one that does.
    String newer = kept.link("leader", "asha");
    for (String token : List.of(newer, kept.tokens.get("given"))) {
      Reply refused =
          service.send(
              "POST", kept.trip + "/links", token, "{\"role\": \"hiker\", \"hiker\": \"asha\"}");
      assertEquals("link-not-own", refused.json().path("code").asText());
      Reply open =
          service.send(
              "PUT",
              path + "/privacy",
              token,
              "{\"bodyMass\": \"leader\"}",
              "If-Match",
              service.get(kept.trip, token).tag());
      assertEquals("link-not-own", open.json().path("code").asText());
    }
  }

  @Test
  void goingPrivateEndsOtherLinksOfTheHikersOwn() {
    Kept kept = new Kept(document(cases().findFirst().orElseThrow(), LIGHT));
    Reply open = kept.send("own", "PUT", "/hikers/asha/privacy", "{\"bodyMass\": \"leader\"}");
    assertEquals(204, open.status(), open.body());
    String made = kept.link("given", "asha");
    assertEquals(200, service.get(kept.trip, made).status());
    kept.send("own", "PUT", "/hikers/asha/privacy", "{\"bodyMass\": \"private\"}");
    assertEquals(404, service.get(kept.trip, made).status());
    assertEquals(200, service.get(kept.trip, kept.tokens.get("own")).status());
  }

  /** Removing a hiker, stating a guess and going back must not tell whether the guess was right. */
  @Test
  void goingBackDoesNotCompareHiddenMasses() {
    List<String> told = new ArrayList<>();
    for (String guess : List.of(LIGHT, "50 kg")) {
      Kept kept = new Kept(document(new Case("free", "", "", ""), LIGHT));
      kept.send("leader", "DELETE", "/hikers/asha", "");
      String hiker =
          service
              .get(kept.trip + "/history/2", kept.tokens.get("leader"))
              .json()
              .path("hikers")
              .path(0)
              .toString()
              .replaceFirst("\\{", "{\"bodyMass\": \"" + guess + "\", ");
      Reply again = kept.send("leader", "POST", "/hikers", hiker);
      assertEquals(201, again.status(), again.body());
      kept.hand(HAND);
      kept.send("leader", "POST", "/history/2/undo", "");
      told.add(kept.plain(service.get(kept.trip + "/splits", kept.tokens.get("leader"))));
      assertTrue(told.get(0).contains("\"stale\" : true"), told.get(0));
    }
    assertEquals(told.get(0), told.get(1));
  }

  @Test
  void hikerMakesOnlySoManyLinks() {
    Kept kept = new Kept(document(cases().findFirst().orElseThrow(), LIGHT));
    String body = "{\"role\": \"hiker\", \"hiker\": \"asha\"}";
    Reply made = service.send("POST", kept.trip + "/links", kept.tokens.get("own"), body);
    for (int i = 0; i < 30 && made.status() == 201; i++) {
      made = service.send("POST", kept.trip + "/links", kept.tokens.get("own"), body);
    }
    assertEquals("limit-reached", made.json().path("code").asText());
    Reply others = service.send("POST", kept.trip + "/links", kept.tokens.get("other"), body);
    assertEquals("forbidden", others.json().path("code").asText());
  }
}
