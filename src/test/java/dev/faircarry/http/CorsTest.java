package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.Main;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which pages of other origins may ask, and methods nobody knows. */
class CorsTest {
  private static final String FRIEND = "https://trips.example";
  private static final int PATIENCE_MILLIS = 20_000;

  private static Server open;
  private static Server closed;

  @BeforeAll
  static void start() {
    open =
        Main.server(
            "127.0.0.1",
            0,
            Optional.empty(),
            new HttpOptions(List.of(FRIEND, "http://localhost:3000"), 600, false, true));
    closed = Main.server("127.0.0.1", 0);
  }

  @AfterAll
  static void stop() {
    open.close();
    closed.close();
  }

  /** An answer as text; the JDK's client would not send an Origin. */
  private static String ask(Server server, String line, String... headers) {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.setSoTimeout(PATIENCE_MILLIS);
      String request = line + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n";
      for (String header : headers) {
        request += header + "\r\n";
      }
      socket.getOutputStream().write((request + "\r\n").getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static boolean says(String answer, String header) {
    return answer.toLowerCase(Locale.ROOT).contains(header.toLowerCase(Locale.ROOT));
  }

  @Test
  void nobodyMayAskWithoutAList() {
    for (String line : List.of("GET /health/live", "OPTIONS /v1/splits")) {
      String answer = ask(closed, line, "Origin: " + FRIEND, "Access-Control-Request-Method: POST");
      assertFalse(says(answer, "Access-Control"), answer);
    }
  }

  @Test
  void whoeverIsListedMayAsk() {
    String answer = ask(open, "GET /health/live", "Origin: " + FRIEND);
    assertTrue(answer.startsWith("HTTP/1.1 200"), answer);
    assertTrue(says(answer, "Access-Control-Allow-Origin: " + FRIEND + "\r\n"), answer);
    assertTrue(says(answer, "\r\nVary: Origin\r\n"), answer);
    assertTrue(says(answer, "Access-Control-Expose-Headers: ETag, Location"), answer);
    assertFalse(says(answer, "Allow-Credentials"), answer);
    // What goes wrong can be read too.
    String missing = ask(open, "GET /nowhere", "Origin: " + FRIEND);
    assertTrue(missing.startsWith("HTTP/1.1 404"), missing);
    assertTrue(says(missing, "Access-Control-Allow-Origin: " + FRIEND), missing);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://trips.example.evil.example",
        "http://trips.example",
        "https://trips.example:8443",
        "HTTPS://TRIPS.EXAMPLE",
        "null",
        "*"
      })
  void nobodyElseMay(String origin) {
    for (String line : List.of("GET /health/live", "OPTIONS /v1/splits")) {
      String answer = ask(open, line, "Origin: " + origin, "Access-Control-Request-Method: POST");
      assertFalse(says(answer, "Access-Control"), answer);
      assertTrue(says(answer, "\r\nVary: Origin\r\n"), "caches must not mix answers up: " + answer);
    }
  }

  @Test
  void preflightNamesMethodsAndHeaders() {
    String answer =
        ask(
            open,
            "OPTIONS /v1/splits",
            "Origin: " + FRIEND,
            "Access-Control-Request-Method: POST",
            "Access-Control-Request-Headers: content-type,authorization");
    assertTrue(answer.startsWith("HTTP/1.1 204"), answer);
    assertTrue(says(answer, "Access-Control-Allow-Methods: OPTIONS, POST\r\n"), answer);
    for (String header :
        List.of("Authorization", "Content-Type", "If-Match", "Idempotency-Key", "Prefer")) {
      assertTrue(says(answer, header), answer);
    }
    assertTrue(says(answer, "Access-Control-Max-Age: 600"), answer);
    assertFalse(says(answer, "Allow-Credentials"), answer);
    assertFalse(says(answer, ": *"), answer);
    // Without Access-Control-Request-Method it is a plain OPTIONS.
    String plain = ask(open, "OPTIONS /v1/splits", "Origin: " + FRIEND);
    assertFalse(says(plain, "Access-Control-Allow-Methods"), plain);
  }

  @ParameterizedTest
  @ValueSource(strings = {"BREW", "MKCOL", "PROPFIND", "get"})
  void methodNobodyKnowsIsSaidToBeUnknown(String method) {
    for (String path : List.of("/v1/splits", "/nowhere")) {
      String answer = ask(closed, method + " " + path);
      assertEquals("HTTP/1.1 501", answer.substring(0, 12), answer);
      assertTrue(answer.contains("\"code\" : \"method-unknown\""), answer);
    }
  }
}
