package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who is counted as one and the same. Five requests a minute are few enough to be used up. */
class LimitedTest {
  private static final String NOWHERE = "/v1/trips/000000000000000000";

  @TempDir Path directory;

  private KeptService service(boolean behindProxy) throws IOException {
    return new KeptService(
        directory, Optional.empty(), true, new HttpOptions(List.of(), 5, behindProxy, false));
  }

  /** The first answer that is none of the usual; a hundred requests take no twenty minutes. */
  private static Reply usedUp(IntFunction<Reply> request) {
    Reply reply = request.apply(0);
    for (int i = 1; i < 100 && reply.status() == 404; i++) {
      reply = request.apply(i);
    }
    return reply;
  }

  @Test
  void addressIsTheConnectionsUnlessAProxyStatesIt() throws IOException {
    try (KeptService service = service(false)) {
      Reply refused =
          usedUp(i -> service.send("GET", NOWHERE, "", "", "X-Forwarded-For", "192.0.2." + i));
      assertEquals(429, refused.status());
      assertEquals("too-many-requests", refused.json().path("code").asText());
      String wait = refused.raw().headers().firstValue("Retry-After").orElseThrow();
      assertTrue(Integer.parseInt(wait) >= 1, wait);
    }
  }

  @Test
  void behindAProxyTheLastAddressCounts() throws IOException {
    try (KeptService service = service(true)) {
      Reply refused =
          usedUp(
              i ->
                  service.send(
                      "GET", NOWHERE, "", "", "X-Forwarded-For", "192.0.2." + i + ", 192.0.2.200"));
      assertEquals(429, refused.status(), "what callers add before it does not help");
      Reply other = service.send("GET", NOWHERE, "", "", "X-Forwarded-For", "192.0.2.201");
      assertEquals(404, other.status(), "others are not held up");
    }
  }

  @Test
  void linkIsCountedWhereverItIsUsed() throws IOException {
    try (KeptService service = service(true)) {
      String link = "123456789012345678." + "A".repeat(32);
      Reply refused =
          usedUp(i -> service.send("GET", NOWHERE, link, "", "X-Forwarded-For", "198.51.100." + i));
      assertEquals(429, refused.status());
      Reply other =
          service.send(
              "GET", NOWHERE, "0" + link.substring(1), "", "X-Forwarded-For", "203.0.113.9");
      assertEquals(404, other.status());
    }
  }

  @Test
  void metricsThatAreSwitchedOffAreNotThere() throws IOException {
    try (KeptService service = service(false)) {
      assertEquals(404, service.get("/metrics", "").status());
    }
  }
}
