package dev.faircarry.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.Issue;
import dev.faircarry.check.TripIssues;
import dev.faircarry.split.Split;
import dev.faircarry.trip.Limits;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever is done to a document, the answer is a trip or issues, never an exception. */
class MutatedDocumentsTest {
  private static final byte[] BASE = Documents.resource("/trips/each-kind-once.json");
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();

  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "0",
          "-1",
          "1e308",
          "1e-400",
          "2147483647",
          "0.5",
          "\"\"",
          "\"-1 kg\"",
          "\"5\"",
          "\"1 lb 12 oz\"",
          "\"asha\"",
          "\"dinner\"",
          "\"shelter/fly\"",
          "\"food\"",
          "\"\\ud800\"",
          "[]",
          "[1]",
          "[\"asha\", \"asha\"]",
          "{}",
          "{\"kind\": \"evenly\"}",
          "{\"id\": \"asha\"}",
          "[[[]]]",
          "\"evenly\"",
          "\"units-per-day\"",
          "\"9999999 kg\"");
  private static final List<String> FIELDS =
      List.of("id", "mass", "count", "unitMass", "parts", "use", "onDays", "kind", "pieces", "x");

  /** A field or entry that something can be done to. */
  private record Spot(JsonNode parent, String field, int index) {
    void set(JsonNode value) {
      if (parent instanceof ObjectNode object) {
        object.set(field, value);
      } else {
        ((ArrayNode) parent).set(index, value);
      }
    }

    JsonNode remove() {
      return parent instanceof ObjectNode object
          ? object.remove(field)
          : ((ArrayNode) parent).remove(index);
    }

    JsonNode get() {
      return parent instanceof ObjectNode ? parent.get(field) : parent.get(index);
    }
  }

  private static void spots(JsonNode node, List<Spot> spots) {
    node.fieldNames().forEachRemaining(name -> spots.add(new Spot(node, name, 0)));
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      spots.add(new Spot(node, "", i));
    }
    node.forEach(child -> spots(child, spots));
  }

  private static byte[] mutated(byte[] base, SplittableRandom random) {
    JsonNode root;
    try {
      root = MAPPER.readTree(base);
      for (int n = 1 + random.nextInt(3); n > 0; n--) {
        mutate(root, random);
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    byte[] bytes = root.toString().getBytes(StandardCharsets.UTF_8);
    if (random.nextInt(4) == 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return random.nextInt(20) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
  }

  private static void mutate(JsonNode root, SplittableRandom random) throws IOException {
    List<Spot> spots = new ArrayList<>();
    spots(root, spots);
    Spot spot = spots.get(random.nextInt(spots.size()));
    Spot other = spots.get(random.nextInt(spots.size()));
    switch (random.nextInt(4)) {
      case 0 -> spot.set(other.get().deepCopy());
      case 1 -> spot.remove();
      case 2 -> {
        if (spot.parent() instanceof ObjectNode object) {
          object.set(pick(FIELDS, random), object.remove(spot.field()));
        } else {
          ((ArrayNode) spot.parent()).add(spot.get().deepCopy());
        }
      }
      default -> spot.set(MAPPER.readTree(pick(VALUES, random)));
    }
  }

  private static String pick(List<String> list, SplittableRandom random) {
    return list.get(random.nextInt(list.size()));
  }

  @Test
  void answerIsATripOrIssues() {
    int good = 0;
    int bad = 0;
    for (int seed = 0; seed < 4000; seed++) {
      byte[] document = mutated(BASE, new SplittableRandom(seed));
      String where = "seed " + seed + ": " + new String(document, StandardCharsets.UTF_8);
      Reading<Trip> reading;
      try {
        reading = TripReader.read(document);
      } catch (RuntimeException | StackOverflowError e) {
        throw new AssertionError(where, e);
      }
      if (reading instanceof Reading.Read<Trip> read) {
        good++;
        assertEquals(List.of(), TripIssues.of(read.value()), where);
        assertEquals(read.value(), Documents.trip(TripWriter.write(read.value())), where);
      } else {
        bad++;
        issuesAreWellFormed(((Reading.Bad<Trip>) reading).issues(), where);
      }
    }
    assertTrue(good > 150 && bad > 2000, good + " good, " + bad + " bad");
  }

  private static void issuesAreWellFormed(List<Issue> issues, String where) {
    assertFalse(issues.isEmpty(), where);
    assertTrue(issues.size() <= Limits.ISSUES, where);
    for (Issue issue : issues) {
      assertTrue(issue.pointer().isEmpty() || issue.pointer().startsWith("/"), where);
      assertTrue(issue.value().length() <= 61, where);
      assertTrue(issue.message().endsWith("."), where + issue.message());
      assertTrue(issue.remedy().endsWith("."), where + issue.remedy());
      assertFalse(issue.message().contains("java") || issue.message().contains("jackson"), where);
      // The body masses and the target load of the document.
      for (String hidden : List.of("58 kg", "152 lb", "15 kg")) {
        boolean itsPlace =
            issue.pointer().endsWith("Mass") || issue.pointer().endsWith("targetLoad");
        assertFalse(itsPlace && issue.toString().contains(hidden), where);
      }
    }
    assertEquals(new HashSet<>(issues).size(), issues.size(), where);
  }

  @Test
  void splitsToo() {
    String split =
        """
        {"format": "faircarry-split/1",
         "carries": [
           {"hiker": "asha", "pieces": ["filter", {"piece": "dinner", "units": 5}]},
           {"hiker": "ruth", "pieces": ["gas"]}],
         "opened": [{"day": 1, "piece": "dinner", "hiker": "asha", "units": 2}],
         "handoversAtCamp": [{"afterDay": 2, "from": "tomas", "to": "ruth", "piece": "gas"}]}
        """;
    int good = 0;
    for (int seed = 0; seed < 3000; seed++) {
      byte[] document = mutated(split.getBytes(StandardCharsets.UTF_8), new SplittableRandom(seed));
      String where = "seed " + seed + ": " + new String(document, StandardCharsets.UTF_8);
      Reading<Split> reading = SplitReader.read(document);
      if (reading instanceof Reading.Read<Split> read) {
        good++;
        assertEquals(
            read.value(),
            Documents.value(SplitReader.read(SplitWriter.write(read.value()))),
            where);
      } else {
        issuesAreWellFormed(((Reading.Bad<Split>) reading).issues(), where);
      }
    }
    assertTrue(good > 100 && good < 2000, good + " good");
  }
}
