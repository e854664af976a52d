package dev.faircarry.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.app.ServiceLimits;
import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Clients that send half of what they announce, a byte at a time, or do not read their answers:
 * there are more of them than the service has threads, and others are answered all the same.
 */
@Tag("slow")
class SlowClientsTest {
  private static final int MANY = 2 * ServiceLimits.REQUEST_THREADS;
  private static final String DOCUMENT =
      """
      {"format": "faircarry-trip/1", "name": "Slow", "days": 1,
       "hikers": [{"id": "a", "name": "A", "targetLoad": "15 kg"}], "shared": []}
      """;

  @TempDir Path folder;
  private Service service;
  private final List<Wire> slow = new ArrayList<>();

  @BeforeEach
  void begin() throws Exception {
    service =
        new Service(Stores.sqlite(folder.resolve("trips.db"), Seal.ofKeyset(Seal.newKeyset())));
  }

  @AfterEach
  void end() {
    slow.forEach(Wire::close);
    service.close();
  }

  private void othersAreAnswered() throws IOException {
    for (int i = 0; i < 5; i++) {
      try (Wire wire = Wire.to(service.port())) {
        byte[] request = Request.of("POST", "/v1/splits?effort=1000").json(DOCUMENT).bytes();
        assertEquals(200, wire.send(request).read().status());
      }
    }
  }

  private Wire slowOne() throws IOException {
    Wire wire = Wire.to(service.port());
    slow.add(wire);
    return wire;
  }

  @Test
  void halfBodiesHoldNobodyUp() throws IOException {
    byte[] whole = Request.of("POST", "/v1/splits").json(DOCUMENT).bytes();
    for (int i = 0; i < MANY; i++) {
      slowOne().send(Arrays.copyOf(whole, whole.length - 20));
    }
    othersAreAnswered();
    // Those who break off are done with; the others can still say the rest.
    for (Wire wire : slow.subList(0, MANY / 2)) {
      wire.close();
    }
    for (Wire wire : slow.subList(MANY / 2, MANY)) {
      wire.send(Arrays.copyOfRange(whole, whole.length - 20, whole.length));
      assertEquals(200, wire.read().status());
    }
    othersAreAnswered();
  }

  @Test
  void halfHeadersHoldNobodyUp() throws IOException {
    for (int i = 0; i < MANY; i++) {
      slowOne().send("GET /health/live HTTP/1.1\r\nHost: 127.");
    }
    othersAreAnswered();
    for (Wire wire : slow) {
      wire.send("0.0.1\r\n\r\n");
      assertEquals(200, wire.read().status());
    }
  }

  @Test
  void bytesOneAtATimeHoldNobodyUp() throws IOException {
    byte[] whole = Request.of("POST", "/v1/provisions").json(DOCUMENT).bytes();
    for (int i = 0; i < MANY; i++) {
      slowOne();
    }
    for (int at = 0; at < whole.length; at++) {
      for (Wire wire : slow) {
        wire.send(new byte[] {whole[at]});
      }
      if (at % 100 == 0) {
        othersAreAnswered();
      }
    }
    for (Wire wire : slow) {
      assertEquals(200, wire.read().status());
    }
  }

  @Test
  void unreadAnswersHoldNobodyUp() throws IOException {
    // The largest answers there are, asked for again and again on one connection.
    byte[] ask =
        "GET /docs/bundle.js HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n"
            .repeat(40)
            .getBytes(StandardCharsets.US_ASCII);
    for (int i = 0; i < MANY; i++) {
      slowOne().send(ask);
    }
    othersAreAnswered();
    for (Wire wire : slow.subList(0, 4)) {
      assertEquals(200, wire.read().status());
    }
  }
}
