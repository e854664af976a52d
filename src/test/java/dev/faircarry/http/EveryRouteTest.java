package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.KeptService.Reply;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What holds for each address the service answers, whatever it is for. */
class EveryRouteTest {
  private static final Set<String> METHODS =
      Set.of("GET", "POST", "PUT", "PATCH", "DELETE", "OPTIONS");

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

  private static String filled(String path) {
    return path.replaceAll("\\{[^}]+}", "x").replace("*", "x").replaceAll("<[^>]+>", "x");
  }

  private static List<String> paths() {
    List<String> paths = new ArrayList<>(service.addresses().keySet());
    assertTrue(paths.size() > 40, "only " + paths.size());
    return paths;
  }

  private static String header(Reply reply, String name) {
    return reply.raw().headers().firstValue(name).orElse("");
  }

  /** Right or wrong method, found or not: the answer has them. */
  @Test
  void everyAnswerHasTheSecurityHeaders() {
    List<String> lacking = new ArrayList<>();
    for (String path : paths()) {
      for (String method : METHODS) {
        Reply reply = service.send(method, filled(path), "", "");
        String place = method + " " + path + " " + reply.status();
        assertTrue(reply.status() < 500, place);
        String policy = header(reply, "Content-Security-Policy");
        boolean fine =
            policy.startsWith("default-src 'none'")
                && policy.contains("frame-ancestors 'none'")
                && policy.contains("base-uri 'none'")
                && !script(policy).contains("unsafe")
                && header(reply, "X-Content-Type-Options").equals("nosniff")
                && header(reply, "Referrer-Policy").equals("no-referrer")
                && header(reply, "X-Frame-Options").equals("DENY")
                && header(reply, "Cross-Origin-Resource-Policy").equals("same-origin")
                && header(reply, "Access-Control-Allow-Origin").isEmpty()
                && header(reply, "Server").isEmpty()
                && !header(reply, "X-Request-Id").isEmpty();
        if (!fine) {
          lacking.add(place + " " + reply.raw().headers().map());
        }
      }
    }
    assertEquals(List.of(), lacking);
  }

  /** The part of a policy about scripts; what is not named falls back to the default. */
  private static String script(String policy) {
    for (String part : policy.split(";", -1)) {
      if (part.strip().startsWith("script-src")) {
        return part;
      }
    }
    return "";
  }

  /** A method that an address does not know is refused with those it does. */
  @Test
  void everyOtherMethodIsRefusedWithThoseThatAreKnown() {
    for (Map.Entry<String, Set<String>> address : service.addresses().entrySet()) {
      for (String method : METHODS) {
        if (!address.getValue().contains(method) && !method.equals("OPTIONS")) {
          Reply reply = service.send(method, filled(address.getKey()), "", "");
          assertEquals(405, reply.status(), method + " " + address.getKey());
          for (String known : address.getValue()) {
            assertTrue(header(reply, "Allow").contains(known), address.getKey());
          }
        }
      }
    }
  }

  /** Nothing below a trip answers without a link, whatever is asked. */
  @Test
  void nothingOfATripAnswersWithoutALink() {
    int asked = 0;
    for (Map.Entry<String, Set<String>> address : service.addresses().entrySet()) {
      if (address.getKey().startsWith("/v1/trips/")) {
        for (String method : address.getValue()) {
          for (String token : List.of("", "nonsense", "0".repeat(18) + "." + "A".repeat(32))) {
            Reply reply =
                service.send(
                    method,
                    filled(address.getKey()),
                    token,
                    "",
                    "If-Match",
                    "*",
                    "Accept",
                    address.getKey().endsWith("/events") ? "text/event-stream" : "*/*");
            assertEquals(404, reply.status(), method + " " + address.getKey() + reply.body());
            asked++;
          }
        }
      }
    }
    assertTrue(asked > 100, "only " + asked);
  }

  /** A body that takes no end is cut off by its size, wherever it is sent. */
  @Test
  void bodiesHaveALimitWhereverTheyAreSent() {
    String large = "\"" + "x".repeat(2_100_000) + "\"";
    for (Map.Entry<String, Set<String>> address : service.addresses().entrySet()) {
      if (address.getValue().contains("POST") && !address.getKey().contains("{")) {
        Reply reply = service.send("POST", filled(address.getKey()), "", large);
        assertEquals(413, reply.status(), address.getKey());
        assertFalse(reply.body().contains("xxx"), address.getKey());
      }
    }
  }
}
