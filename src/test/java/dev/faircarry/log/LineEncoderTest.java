package dev.faircarry.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.LoggingEvent;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.slf4j.event.KeyValuePair;

class LineEncoderTest {
  private static LoggingEvent event(String message, Throwable thrown) {
    LoggerContext context = new LoggerContext();
    LoggingEvent event =
        new LoggingEvent(
            "", context.getLogger("dev.faircarry.Some"), Level.WARN, message, thrown, null);
    event.setInstant(Instant.parse("2026-01-02T03:04:05.006Z"));
    event.setMDCPropertyMap(Map.of("request", "r1", "trace", "t1"));
    event.setKeyValuePairs(
        List.of(new KeyValuePair("status", 200), new KeyValuePair("route", "/v1/{x}")));
    return event;
  }

  @Test
  void textForPeople() {
    assertEquals(
        "2026-01-02T03:04:05.006Z WARN Some request=r1 trace=t1 all well",
        LineEncoder.asText(event("all well", null)));
  }

  @Test
  void jsonForMachines() {
    assertEquals(
        "{\"time\":\"2026-01-02T03:04:05.006Z\",\"level\":\"WARN\",\"logger\":\"Some\","
            + "\"request\":\"r1\",\"trace\":\"t1\",\"message\":\"all well\","
            + "\"status\":200,\"route\":\"/v1/{x}\"}",
        LineEncoder.asJson(event("all well", null)));
  }

  @Test
  void anythingIsOneLine() throws Exception {
    String odd = "a\"b\\c\nd\re\tf\u0000g\u2028h\ud83c\udfd4i\ud83cj ä";
    String json = LineEncoder.asJson(event(odd, null));
    assertEquals(1, json.lines().count());
    JsonNode read = new JsonMapper().readTree(json.getBytes(StandardCharsets.UTF_8));
    assertEquals(odd, read.path("message").asText());
    String text = LineEncoder.asText(event("one\nWARN two\u2028three", null));
    assertEquals(1, text.lines().count());
    assertTrue(text.endsWith("one WARN two three"), text);
  }

  /** Messages of exceptions may quote a document. */
  @Test
  void ofExceptionsKindsAndPlacesOnly() {
    Exception thrown =
        new IllegalStateException(
            "cannot read 58.25 kg", new NumberFormatException("For input 58.25 kg"));
    for (String line :
        List.of(LineEncoder.asText(event("no", thrown)), LineEncoder.asJson(event("no", thrown)))) {
      assertFalse(line.contains("58.25"), line);
      assertTrue(line.contains("java.lang.IllegalStateException"), line);
      assertTrue(line.contains("java.lang.NumberFormatException"), line);
      assertTrue(line.contains("LineEncoderTest.ofExceptionsKindsAndPlacesOnly"), line);
      assertEquals(1, line.lines().count());
    }
  }
}
