package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sixty-four people change one trip at once, each from what they read last. The history must be a
 * line in which every accepted change stands once, and each on the one it was made from.
 */
@Tag("slow")
abstract class ManyEditorsContract {
  private static final int EDITORS = 64;
  private static final int CHANGES = 2;
  private static final long PATIENCE_SECONDS = 300;
  private static final JsonMapper JSON = new JsonMapper();

  @TempDir Path folder;

  /** Services that share one store. */
  abstract List<Service> services() throws Exception;

  /** A change that was accepted: the revision it was made from, and the one it became. */
  private record Accepted(String item, int from, int became) {}

  @Test
  void historyIsOneLine() throws Exception {
    List<Service> services = services();
    try {
      Editor trip = Editor.begin("127.0.0.1", services.get(0).port(), "one for all");
      List<Accepted> accepted = changes(services, trip);
      assertEquals(EDITORS * CHANGES, accepted.size());
      TreeMap<Integer, Accepted> line = new TreeMap<>();
      for (Accepted each : accepted) {
        assertEquals(each.from() + 1, each.became(), each::toString);
        assertEquals(null, line.put(each.became(), each), "two changes became one revision");
      }
      assertEquals(2, line.firstKey());
      assertEquals(1 + EDITORS * CHANGES, line.lastKey());
      try (Wire wire = trip.connect(services.get(0).port())) {
        Set<String> before = items(wire, trip, 1);
        for (Accepted each : line.values()) {
          Set<String> expected = new TreeSet<>(before);
          expected.add(each.item());
          Set<String> then = items(wire, trip, each.became());
          assertEquals(expected, then, each::toString);
          before = then;
        }
      }
    } finally {
      services.forEach(Service::close);
    }
  }

  private static List<Accepted> changes(List<Service> services, Editor trip) throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(EDITORS);
    CyclicBarrier together = new CyclicBarrier(EDITORS);
    try {
      List<Future<List<Accepted>>> all = new ArrayList<>();
      for (int i = 0; i < EDITORS; i++) {
        int number = i;
        int port = services.get(i % services.size()).port();
        all.add(
            pool.submit(
                () -> {
                  try (Wire wire = trip.connect(port)) {
                    together.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
                    return edit(wire, trip, number);
                  }
                }));
      }
      List<Accepted> accepted = new ArrayList<>();
      for (Future<List<Accepted>> each : all) {
        accepted.addAll(each.get(PATIENCE_SECONDS, TimeUnit.SECONDS));
      }
      return accepted;
    } finally {
      pool.shutdownNow();
    }
  }

  private static List<Accepted> edit(Wire wire, Editor trip, int number) throws Exception {
    List<Accepted> accepted = new ArrayList<>();
    while (accepted.size() < CHANGES) {
      String item = "e" + number + "-" + accepted.size();
      Wire.Answer read = wire.send(trip.request("GET", "").bytes()).read();
      if (read.status() == 503) {
        continue;
      }
      assertEquals(200, read.status(), read::text);
      int from = revision(read);
      Request change =
          change(trip, number % 3, item, JSON.readTree(read.body()))
              .with("If-Match", read.header("etag"));
      Wire.Answer answer = wire.send(change.bytes()).read();
      if (answer.status() == 412 || answer.status() == 503) {
        continue;
      }
      assertTrue(answer.status() == 200 || answer.status() == 201, answer::text);
      accepted.add(new Accepted(item, from, revision(answer)));
    }
    return accepted;
  }

  /** The same change in three ways: the document anew, a patch of it, a new entry of a list. */
  private static Request change(Editor trip, int way, String id, JsonNode read) {
    ObjectNode item = JsonNodeFactory.instance.objectNode();
    item.put("id", id).put("name", id).put("mass", "10 g");
    if (way == 0) {
      return trip.request("POST", "/shared").json(item.toString());
    }
    ArrayNode shared = ((ArrayNode) read.get("shared")).add(item);
    if (way == 1) {
      return trip.request("PUT", "").json(((ObjectNode) read).set("shared", shared).toString());
    }
    ObjectNode patch = JsonNodeFactory.instance.objectNode();
    return trip.request("PATCH", "").json(patch.set("shared", shared).toString());
  }

  private static int revision(Wire.Answer answer) {
    return Integer.parseInt(answer.header("etag").substring(1).split("\\.", 2)[0]);
  }

  private static Set<String> items(Wire wire, Editor trip, int revision) throws Exception {
    Wire.Answer then = wire.send(trip.request("GET", "/history/" + revision).bytes()).read();
    assertEquals(200, then.status(), then::text);
    Set<String> items = new TreeSet<>();
    new JsonMapper()
        .readTree(new String(then.body(), StandardCharsets.UTF_8))
        .get("shared")
        .forEach(item -> items.add(item.get("id").asText()));
    return items;
  }
}
