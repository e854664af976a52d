package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * One fault at a time, at every place of a document that has each kind of thing once: each is named
 * with its place, and nothing that merely follows from it is named besides.
 */
class EveryPlaceTest {
  private static final JsonMapper MAPPER = new JsonMapper();
  private static final Set<String> MASSES = Set.of("mass", "unitMass", "capLoad", "loadRating");

  private static ObjectNode document() {
    try {
      ObjectNode root =
          (ObjectNode) MAPPER.readTree(Documents.resource("/trips/each-kind-once.json"));
      // What the example leaves to its defaults.
      ObjectNode asha = (ObjectNode) root.at("/hikers/0");
      asha.put("minor", false).put("capFraction", 0.25);
      ((ObjectNode) asha.at("/pack")).put("massFrom", "scale").put("cost", "210");
      ObjectNode lamp = (ObjectNode) asha.at("/kit/2");
      lamp.putObject("contains").put("kind", "light").put("volume", "1 L");
      ((ObjectNode) root.at("/policy")).put("minorsMayCarryFlameAndFuel", false);
      ((ObjectNode) root.at("/shared/1/parts/1")).put("name", "Pegs").put("massFrom", "label");
      ((ObjectNode) root.at("/shared/3")).put("cost", "64").put("stow", "top");
      ((ObjectNode) root.at("/shared/3/use")).putArray("perDay").add(4).add(4).add(4).add(4);
      return root;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<String> codes(JsonNode document) {
    return Documents.codes(
        Documents.issues(TripReader.read(document.toString().getBytes(StandardCharsets.UTF_8))));
  }

  private static void places(JsonNode node, String at, Map<String, JsonNode> places) {
    if (!at.isEmpty()) {
      places.put(at, node);
    }
    node.fieldNames().forEachRemaining(n -> places(node.get(n), at + "/" + n, places));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      places(node.get(i), at + "/" + i, places);
    }
  }

  private static Map<String, JsonNode> places() {
    Map<String, JsonNode> places = new LinkedHashMap<>();
    places(document(), "", places);
    return places;
  }

  private static String last(String pointer) {
    return pointer.substring(pointer.lastIndexOf('/') + 1);
  }

  private static JsonNode with(String pointer, JsonNode value) {
    ObjectNode root = document();
    JsonNode parent = root.at(pointer.substring(0, pointer.lastIndexOf('/')));
    if (parent instanceof ArrayNode list) {
      list.set(Integer.parseInt(last(pointer)), value);
    } else {
      ((ObjectNode) parent).set(last(pointer), value);
    }
    return root;
  }

  private static JsonNode text(String text) {
    return JsonNodeFactory.instance.textNode(text);
  }

  @Test
  void theDocumentItselfIsFine() {
    assertEquals(List.of(), codes(document()));
  }

  @Test
  void anythingElseThanTheKindOfValueNeeded() {
    List<JsonNode> values =
        List.of(
            JsonNodeFactory.instance.nullNode(),
            JsonNodeFactory.instance.objectNode().put("unit", "kg"),
            JsonNodeFactory.instance.arrayNode().add(JsonNodeFactory.instance.arrayNode()),
            JsonNodeFactory.instance.booleanNode(true),
            text("?"));
    List<String> wrong = new ArrayList<>();
    places()
        .forEach(
            (place, right) -> {
              for (JsonNode value : values) {
                if (value.getNodeType() == right.getNodeType()) {
                  continue;
                }
                List<String> codes = codes(with(place, value));
                boolean inside = codes.stream().allMatch(c -> c.contains(" " + place + "/"));
                boolean named = codes.equals(List.of("wrong-type " + place));
                // Objects in place of texts and lists of units per day are looked into.
                if (!named && !(value.isContainerNode() && inside && !codes.isEmpty())) {
                  wrong.add(place + " = " + value + " gave " + codes);
                }
              }
            });
    assertEquals(List.of(), wrong);
  }

  @Test
  void unknownFieldInEveryObject() {
    int objects = 0;
    for (Map.Entry<String, JsonNode> place : places().entrySet()) {
      if (place.getValue().isObject()) {
        ObjectNode root = document();
        ((ObjectNode) root.at(place.getKey())).put("colour", "red");
        assertEquals(List.of("unknown-field " + place.getKey() + "/colour"), codes(root));
        objects++;
      }
    }
    assertTrue(objects > 35, objects + " objects");
  }

  @Test
  void everyQuantityHasItsLimits() {
    int quantities = 0;
    for (Map.Entry<String, JsonNode> place : places().entrySet()) {
      String at = place.getKey();
      String field = last(at);
      String most = MASSES.contains(field) ? "200 kg" : field.endsWith("olume") ? "1000 L" : "";
      String over = MASSES.contains(field) ? "200000001 mg" : "1000001 mL";
      if (place.getValue().isTextual() && !most.isEmpty()) {
        assertEquals(List.of(), codes(with(at, text(most))), at);
        assertEquals(List.of("out-of-range " + at), codes(with(at, text(over))), at);
        assertEquals(List.of("negative " + at), codes(with(at, text("-1 g"))), at);
        quantities++;
      }
    }
    assertTrue(quantities > 30, quantities + " quantities");
  }

  @Test
  void whatIsLeftIsNoMoreThanThereWas() {
    for (String use : List.of("/hikers/0/kit/4", "/shared/3", "/shared/4")) {
      String at = use + "/use/leaves";
      assertEquals(List.of("leaves-too-much " + at), codes(with(at, text("900 g"))), at);
    }
  }

  @Test
  void everyNameAndEveryWordHasItsLength() {
    for (String at : places().keySet()) {
      boolean word = Set.of("party", "goesInto").contains(last(at)) || at.contains("/covers");
      boolean kind = at.endsWith("/contains/kind");
      boolean name = last(at).equals("name");
      if ((word || kind || name) && places().get(at).isTextual()) {
        String tooLong = "n".repeat(name ? 121 : 41);
        assertTrue(codes(with(at, text(tooLong))).contains("text-too-long " + at), at);
        assertTrue(codes(with(at, text("\u0001"))).contains("bad-text " + at), at);
      }
    }
  }

  @Test
  void everyIdIsFitForAnAddressAndItsOwn() {
    int ids = 0;
    for (String at : places().keySet()) {
      if (last(at).equals("id")) {
        assertTrue(codes(with(at, text("a b"))).contains("bad-id " + at), at);
        assertTrue(codes(with(at, text("a".repeat(41)))).contains("text-too-long " + at), at);
        ids++;
      }
    }
    assertTrue(ids > 25, ids + " ids");
    assertTrue(codes(with("/rules/1/id", text("r1"))).contains("duplicate-id /rules/1/id"));
    assertTrue(codes(with("/shared/1/id", text("filter"))).contains("duplicate-id /shared/1/id"));
  }

  @Test
  void everyWholeNumberHasItsLimits() {
    Map<String, List<Integer>> limits =
        Map.of(
            "/policy/grain", List.of(0, 1, 50, 51),
            "/hikers/0/maxPieces", List.of(-1, 0, 1000, 1001),
            "/shared/1/sleeps", List.of(-1, 0, 100, 101),
            "/shared/3/use/perDay/0", List.of(-1, 0, 1000, 1001),
            "/rules/4/atLeast", List.of(0, 1, 1000, 1001));
    limits.forEach(
        (at, values) -> {
          assertEquals(List.of("out-of-range " + at), codes(with(at, number(values.get(0)))));
          assertEquals(List.of(), codes(with(at, number(values.get(1)))), at);
          assertEquals(List.of(), codes(with(at, number(values.get(2)))), at);
          assertEquals(List.of("out-of-range " + at), codes(with(at, number(values.get(3)))));
        });
  }

  @Test
  void policyFractionsHaveTheirLimits() {
    for (String at : List.of("/policy/targetFraction", "/policy/capFraction")) {
      JsonNode small = JsonNodeFactory.instance.numberNode(new java.math.BigDecimal("0.009"));
      assertEquals(List.of("out-of-range " + at), codes(with(at, small)));
    }
  }

  private static JsonNode number(int number) {
    return JsonNodeFactory.instance.numberNode(number);
  }
}
