package dev.faircarry.faults;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Breaks bodies: their values, their fields, and the text itself. */
final class BrokenBodies {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final String[] TEXTS = {
    "",
    " ",
    "x",
    "\u0000",
    "-1 g",
    "1e9 kg",
    "99999999999999999999 g",
    "\u202e\ufeff",
    "../../x",
    "'; --",
    "<b>",
    "%00",
    "\ud83e\udd8a".repeat(300),
    "a".repeat(70_000),
    "1 kg 1 kg",
    "NaN",
    "null"
  };
  private static final String[] NUMBERS = {
    "-1",
    "0",
    "1.5",
    "-0.0",
    "2147483648",
    "-9223372036854775809",
    "1e400",
    "1e-400",
    "99999999999999999999"
  };

  private final Random random;

  BrokenBodies(Random random) {
    this.random = random;
  }

  byte[] broken(JsonNode example) {
    return switch (random.nextInt(4)) {
      case 0, 1 -> bytes(withOtherValue(example.deepCopy()));
      case 2 -> bytes(withOtherFields(example.deepCopy()));
      default -> text(example.toString());
    };
  }

  private static byte[] bytes(JsonNode node) {
    // Numbers that no Java type holds stand as marked texts in the tree.
    return node.toString().replaceAll("\"number:([^\"]+)\"", "$1").getBytes(StandardCharsets.UTF_8);
  }

  private JsonNode other() {
    return switch (random.nextInt(9)) {
      case 0 -> JSON.nullNode();
      case 1 -> JSON.booleanNode(random.nextBoolean());
      case 2, 3 -> JSON.textNode("number:" + NUMBERS[random.nextInt(NUMBERS.length)]);
      case 4 -> JSON.arrayNode();
      case 5 -> JSON.objectNode();
      case 6 -> JSON.arrayNode().add(JSON.arrayNode().add(JSON.nullNode()));
      default -> JSON.textNode(TEXTS[random.nextInt(TEXTS.length)]);
    };
  }

  private JsonNode withOtherValue(JsonNode whole) {
    List<ContainerNode<?>> all = containers(whole, new ArrayList<>());
    if (all.isEmpty() || random.nextInt(20) == 0) {
      return other();
    }
    ContainerNode<?> at = all.get(random.nextInt(all.size()));
    if (at instanceof ObjectNode object) {
      object.set(anyName(object), other());
    } else {
      ((ArrayNode) at).set(random.nextInt(at.size()), other());
    }
    return whole;
  }

  private JsonNode withOtherFields(JsonNode whole) {
    List<ContainerNode<?>> all = containers(whole, new ArrayList<>());
    if (all.isEmpty()) {
      return other();
    }
    ContainerNode<?> at = all.get(random.nextInt(all.size()));
    if (at instanceof ArrayNode array) {
      JsonNode again = array.get(random.nextInt(array.size()));
      int times = random.nextBoolean() ? 1 : 3_000;
      for (int i = 0; i < times; i++) {
        array.add(again);
      }
      return whole;
    }
    ObjectNode object = (ObjectNode) at;
    String name = anyName(object);
    switch (random.nextInt(3)) {
      case 0 -> object.remove(name);
      case 1 -> object.set(name.toUpperCase(java.util.Locale.ROOT), object.get(name));
      default -> object.set(TEXTS[random.nextInt(TEXTS.length)], other());
    }
    return whole;
  }

  private String anyName(ObjectNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names.get(random.nextInt(names.size()));
  }

  /** All objects and lists that hold something. */
  private static List<ContainerNode<?>> containers(JsonNode node, List<ContainerNode<?>> found) {
    if (node instanceof ContainerNode<?> container && !container.isEmpty()) {
      found.add(container);
      container.forEach(each -> containers(each, found));
    }
    return found;
  }

  private byte[] text(String json) {
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    int at = random.nextInt(bytes.length);
    return switch (random.nextInt(10)) {
      case 0 -> Arrays.copyOf(bytes, at);
      case 1 -> joined(bytes, new byte[] {(byte) 0xff, (byte) 0xfe});
      case 2 -> joined(new byte[] {(byte) 0xef, (byte) 0xbb, (byte) 0xbf}, bytes);
      case 3 -> json.getBytes(StandardCharsets.UTF_16);
      case 4 -> "[".repeat(20_000).getBytes(StandardCharsets.UTF_8);
      case 5 -> joined(bytes, bytes);
      case 6 ->
          json.replaceFirst("\\{(\"[^\"]+\":)", "{$1 null, $1").getBytes(StandardCharsets.UTF_8);
      case 7 -> new byte[0];
      case 8 -> json.replace("\"", "'").getBytes(StandardCharsets.UTF_8);
      default -> {
        bytes[at] = (byte) random.nextInt(256);
        yield bytes;
      }
    };
  }

  static byte[] joined(byte[] first, byte[] second) {
    byte[] all = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    return all;
  }
}
