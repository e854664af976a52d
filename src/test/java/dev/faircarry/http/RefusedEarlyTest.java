package dev.faircarry.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.faircarry.Main;
import dev.faircarry.cli.Console;
import dev.faircarry.cli.ExitCode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is refused before it becomes a request of ours, and what keeps the service from starting.
 */
class RefusedEarlyTest {
  private static final int PATIENCE_MILLIS = 20_000;

  private static Server server;

  @BeforeAll
  static void start() {
    server = Main.server("127.0.0.1", 0);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @ParameterizedTest
  @CsvSource({
    "GET /%zz HTTP/1.1, 400",
    "GET /../../secret HTTP/1.1, 400",
    "GARBAGE, 400",
    "GET / HTTP/9.9, 400",
  })
  void theAnswerIsAProblem(String firstLine, int status) throws IOException {
    String answer = raw(firstLine + "\r\nHost: localhost\r\nConnection: close\r\n\r\n");
    assertProblem(answer, status);
  }

  @Test
  void headersThatAreTooLongAreRefused() throws IOException {
    String answer =
        raw("GET / HTTP/1.1\r\nHost: localhost\r\nX-Long: " + "a".repeat(20_000) + "\r\n\r\n");
    assertProblem(answer, 431);
  }

  @Test
  void aTakenPortIsToldInOneLine() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream both = new PrintStream(out, true, StandardCharsets.UTF_8);
    int code =
        Main.run(
            new Console(InputStream.nullInputStream(), both, both),
            "serve",
            "--port",
            String.valueOf(server.port()));
    assertEquals(ExitCode.BAD_INPUT.number(), code);
    assertEquals(
        "Cannot listen on 127.0.0.1, port " + server.port() + ".",
        out.toString(StandardCharsets.UTF_8).strip());
  }

  private static void assertProblem(String answer, int status) throws IOException {
    assertTrue(answer.startsWith("HTTP/1.1 " + status + " "), answer);
    assertTrue(answer.contains("Content-Type: application/problem+json"), answer);
    assertTrue(answer.contains("X-Content-Type-Options: nosniff"), answer);
    JsonNode problem = new ObjectMapper().readTree(answer.substring(answer.indexOf("\r\n\r\n")));
    assertEquals(status, problem.path("status").asInt(), answer);
  }

  private static String raw(String request) throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
      socket.setSoTimeout(PATIENCE_MILLIS);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().flush();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
