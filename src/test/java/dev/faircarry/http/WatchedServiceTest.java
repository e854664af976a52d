package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.LoggerFactory;

/** What whoever runs the service sees of it: metrics, the log, health. */
class WatchedServiceTest {
  private static final String DOCUMENT =
      """
      {"format": "faircarry-trip/1", "name": "Quiet valley", "days": 1,
       "hikers": [{"id": "asha", "name": "Asha Quick", "bodyMass": "58.25 kg"},
                  {"id": "tomas", "name": "Tomas", "targetLoad": "15 kg"}],
       "shared": [{"id": "stove", "name": "Stove", "mass": "95 g"}]}
      """;

  private static final Pattern SAMPLE =
      Pattern.compile("[a-zA-Z_:][a-zA-Z0-9_:]*(\\{[^}]*(?:\\{[^}]*}[^}]*)*})? (\\S+)");

  private static final List<String> OURS = List.of("request", "dev.faircarry");

  @TempDir Path directory;
  private KeptService service;
  private final List<ILoggingEvent> logged = Collections.synchronizedList(new ArrayList<>());

  private final AppenderBase<ILoggingEvent> listening =
      new AppenderBase<>() {
        @Override
        protected void append(ILoggingEvent event) {
          event.prepareForDeferredProcessing();
          logged.add(event);
        }
      };

  @BeforeEach
  void begin() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
    listening.start();
    logger(org.slf4j.Logger.ROOT_LOGGER_NAME).addAppender(listening);
    for (String name : OURS) {
      // The tests are quiet by default.
      logger(name).setLevel(Level.DEBUG);
      logger(name).setAdditive(false);
      logger(name).addAppender(listening);
    }
  }

  @AfterEach
  void end() {
    logger(org.slf4j.Logger.ROOT_LOGGER_NAME).detachAppender(listening);
    for (String name : OURS) {
      logger(name).detachAppender(listening);
      logger(name).setAdditive(true);
      logger(name).setLevel(null);
    }
    service.close();
  }

  private static Logger logger(String name) {
    return (Logger) LoggerFactory.getLogger(name);
  }

  private String metrics() {
    Reply reply = service.get("/metrics", "");
    assertEquals(200, reply.status());
    assertEquals(
        "text/plain; version=0.0.4; charset=utf-8",
        reply.raw().headers().firstValue("Content-Type").orElseThrow().replaceAll(";(?! )", "; "));
    return reply.body();
  }

  private static double value(String metrics, String name) {
    return metrics
        .lines()
        .filter(line -> line.startsWith(name + " "))
        .mapToDouble(line -> Double.parseDouble(line.substring(name.length() + 1)))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " is not in\n" + metrics));
  }

  private String trip() {
    Reply made = service.send("POST", "/v1/trips", "", DOCUMENT);
    assertEquals(201, made.status(), made.body());
    String trip = made.location();
    String leader = made.json().path("token").asText();
    assertEquals(200, service.get(trip, leader).status());
    assertEquals(404, service.get(trip, "nonsense").status());
    assertEquals(
        201,
        service
            .send("POST", trip + "/splits?effort=20000", leader, "", "Prefer", "wait=30")
            .status());
    return leader;
  }

  @Test
  void requestsSolvesQueueAndStoreAreCounted() {
    trip();
    String metrics = metrics();
    String requests = "faircarry_http_requests_seconds_count";
    assertEquals(
        1, value(metrics, requests + "{method=\"POST\",route=\"/v1/trips\",status=\"201\"}"));
    String read = requests + "{method=\"GET\",route=\"/v1/trips/{trip}\",status=";
    assertEquals(1, value(metrics, read + "\"200\"}"));
    assertEquals(1, value(metrics, read + "\"404\"}"));
    assertEquals(1, value(metrics, "faircarry_store_up"));
    assertEquals(0, value(metrics, "faircarry_jobs_open"));
    assertEquals(0, value(metrics, "faircarry_pool_running"));
    assertEquals(0, value(metrics, "faircarry_pool_waiting"));
    assertEquals(0, value(metrics, "faircarry_store_troubles_total{kind=\"unavailable\"}"));
    service.send("POST", "/v1/splits", "", DOCUMENT);
    service.send("POST", "/v1/splits", "", DOCUMENT.replace("\"asha\"", "\"a\", \"x\": 1"));
    // One thing and two hikers: whoever stays lowest takes it, and that is proved.
    String after = metrics();
    assertEquals(1, value(after, "faircarry_solves_total{end=\"proved\"}"));
    assertEquals(0, value(after, "faircarry_solves_total{end=\"failed\"}"));
    assertEquals(
        1, value(after, requests + "{method=\"POST\",route=\"/v1/splits\",status=\"422\"}"));
  }

  @Test
  void everyLineOfTheMetricsIsWellFormed() {
    trip();
    for (String line : metrics().split("\n", -1)) {
      if (!line.isEmpty() && !line.startsWith("# HELP ") && !line.startsWith("# TYPE ")) {
        Matcher sample = SAMPLE.matcher(line);
        assertTrue(sample.matches(), line);
        assertFalse(Double.isInfinite(Double.parseDouble(sample.group(2))), line);
      }
    }
  }

  /** Neither what was sent nor what opens it is in the metrics or in the log. */
  @Test
  void nothingPersonalIsCountedOrLogged() {
    String leader = trip();
    service.send("BREW", "/v1/trips/58.25", leader, "");
    service.get("/nowhere/Asha?token=" + leader, leader);
    String everything =
        metrics()
            + logged.stream()
                .map(e -> e.getFormattedMessage() + e.getMDCPropertyMap() + e.getKeyValuePairs())
                .toList();
    String[] parts = leader.split("\\.", 2);
    for (String secret :
        List.of("58.25", "Asha", "Quiet valley", parts[0], parts[1], "nowhere", "nonsense")) {
      assertFalse(everything.contains(secret), secret + " is in " + everything);
    }
    assertTrue(everything.contains("GET - 404"), everything);
  }

  private Map<String, String> contextOf(String path) {
    return logged.stream()
        .filter(e -> e.getFormattedMessage().startsWith("GET " + path + " "))
        .reduce((first, second) -> second)
        .orElseThrow()
        .getMDCPropertyMap();
  }

  @Test
  void lineOfARequestHasItsIdAndItsTrace() {
    Reply traced =
        service.send(
            "GET",
            "/health/live",
            "",
            "",
            "traceparent",
            "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
            "X-Request-Id",
            "mine-1");
    assertEquals("mine-1", traced.raw().headers().firstValue("X-Request-Id").orElseThrow());
    assertEquals(
        Map.of(
            "request", "mine-1",
            "trace", "4bf92f3577b34da6a3ce929d0e0e4736",
            "parent", "00f067aa0ba902b7"),
        contextOf("/health/live"));
    Reply plain = service.send("GET", "/health/live", "", "", "X-Request-Id", "no, thanks");
    String given = plain.raw().headers().firstValue("X-Request-Id").orElseThrow();
    assertTrue(given.matches("[0-9a-f]{16}"), given);
    assertEquals(Map.of("request", given), contextOf("/health/live"));
  }

  /** The first is of a later version that has more to say; the others are not valid. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "01-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01-more",
        "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01-more",
        "ff-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
        "00-00000000000000000000000000000000-00f067aa0ba902b7-01",
        "00-4bf92f3577b34da6a3ce929d0e0e4736-0000000000000000-01",
        "00-4BF92F3577B34DA6A3CE929D0E0E4736-00f067aa0ba902b7-01",
        "Asha 58.25 kg"
      })
  void traceThatIsNoneIsPassedOver(String stated) {
    assertEquals(200, service.send("GET", "/health/live", "", "", "traceparent", stated).status());
    assertEquals(stated.startsWith("01"), contextOf("/health/live").containsKey("trace"));
  }

  @Test
  void serviceWithoutItsStoreIsNotReadyAndSaysSo() {
    assertEquals(200, service.get("/health/ready", "").status());
    Reply made = service.send("POST", "/v1/trips", "", DOCUMENT);
    service.loseStore();
    Reply ready = service.get("/health/ready", "");
    assertEquals(503, ready.status());
    assertEquals("down", ready.json().path("status").asText());
    assertEquals(200, service.get("/health/live", "").status());
    Reply read = service.get(made.location(), made.json().path("token").asText());
    assertEquals(503, read.status(), read.body());
    assertEquals("store-unavailable", read.json().path("code").asText());
    assertTrue(read.raw().headers().firstValue("Retry-After").isPresent());
    assertEquals(0, value(metrics(), "faircarry_store_up"));
    assertEquals(1, value(metrics(), "faircarry_store_troubles_total{kind=\"unavailable\"}"));
    assertTrue(Double.isNaN(value(metrics(), "faircarry_jobs_open")));
    // What needs no store goes on.
    assertEquals(200, service.send("POST", "/v1/splits", "", DOCUMENT).status());
  }
}
