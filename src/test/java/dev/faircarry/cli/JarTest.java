package dev.faircarry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as people start it: the jar, in a process of its own. */
@Tag("slow")
class JarTest {
  private static final long PATIENCE_SECONDS = 120;

  @TempDir private Path folder;

  private record Ended(int code, String out, String err) {}

  private ProcessBuilder jar(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-jar");
    command.add(Objects.requireNonNull(System.getProperty("faircarry.jar"), "faircarry.jar"));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    // The poorest of surroundings: output must be UTF-8 all the same.
    builder.environment().put("LC_ALL", "C");
    return builder;
  }

  private Ended run(String input, String... arguments) throws Exception {
    File out = folder.resolve("out").toFile();
    File err = folder.resolve("err").toFile();
    Process process = jar(arguments).redirectOutput(out).redirectError(err).start();
    try (OutputStream in = process.getOutputStream()) {
      in.write(input.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      // It may end before it has read everything.
    }
    assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not end");
    return new Ended(
        process.exitValue(), Files.readString(out.toPath()), Files.readString(err.toPath()));
  }

  @Test
  void theVersionIsPrinted() throws Exception {
    Ended ended = run("", "version");
    assertEquals(0, ended.code());
    assertTrue(ended.out().startsWith("faircarry "), ended::out);
    assertEquals("", ended.err());
  }

  @Test
  void namesOfAnyScriptAreWrittenAsTheyAre() throws Exception {
    String document = Files.readString(Path.of("demo-data/many-scripts.json"));
    Ended ended = run(document, "split", "-");
    assertEquals(0, ended.code(), ended::err);
    assertEquals("", ended.err());
    Matcher names =
        Pattern.compile("\"name\": \"([^\"]+)\", \"(?:bodyMass|targetLoad)").matcher(document);
    int found = 0;
    while (names.find()) {
      assertTrue(ended.out().contains(names.group(1)), ended::out);
      found++;
    }
    assertEquals(4, found);
  }

  @Test
  void twoRunsAnswerTheSameBytes() throws Exception {
    Ended one = run("", "split", "demo-data/high-tarns.json", "--json");
    Ended other = run("", "split", "demo-data/high-tarns.json", "--json");
    assertTrue(one.out().startsWith("{"), one::err);
    assertEquals(one, other);
  }

  @Test
  void anAnswerIsAcceptedUnchanged() throws Exception {
    Ended split = run("", "split", "demo-data/early-leaver.json", "--json");
    Ended check = run(split.out(), "check", "demo-data/early-leaver.json", "-");
    assertEquals(0, check.code(), check::err);
  }

  @Test
  void exitCodesReachTheShell() throws Exception {
    assertEquals(1, run("", "split", "demo-data/over-cap.json").code());
    assertEquals(2, run("", "split", "demo-data/impossible-rules.json").code());
    assertEquals(3, run("[", "split", "-").code());
  }

  @Test
  void theServiceAnswersUntilItIsStopped() throws Exception {
    File err = folder.resolve("err").toFile();
    Process process = jar("serve", "--port", "0").redirectError(err).start();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String line = Objects.requireNonNull(out.readLine(), "no line");
      Matcher listening =
          Pattern.compile("Listening on (http://127\\.0\\.0\\.1:\\d+)/").matcher(line);
      assertTrue(listening.matches(), line);
      String address = listening.group(1);
      HttpClient client = HttpClient.newHttpClient();
      HttpResponse<String> split =
          client.send(
              HttpRequest.newBuilder(URI.create(address + "/v1/splits"))
                  .timeout(Duration.ofSeconds(PATIENCE_SECONDS))
                  .header("Content-Type", "application/json")
                  .POST(HttpRequest.BodyPublishers.ofFile(Path.of("demo-data/minors.json")))
                  .build(),
              BodyHandlers.ofString());
      assertEquals(200, split.statusCode(), split::body);
      for (String path : List.of("/", "/docs", "/docs/bundle.js", "/openapi.yaml", "/problems")) {
        HttpResponse<String> page =
            client.send(
                HttpRequest.newBuilder(URI.create(address + path)).build(),
                BodyHandlers.ofString());
        assertEquals(200, page.statusCode(), path);
        assertFalse(page.body().isEmpty(), path);
      }
      process.destroy();
      assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not stop");
      // 128 + SIGTERM, as the JVM ends after its shutdown hooks.
      assertEquals(143, process.exitValue());
      assertEquals(false, answers(client, address));
      String log = Files.readString(err.toPath());
      assertTrue(log.contains("POST /v1/splits 200"), log);
    } finally {
      process.destroyForcibly();
    }
  }

  private static boolean answers(HttpClient client, String address) throws Exception {
    try {
      client.send(
          HttpRequest.newBuilder(URI.create(address + "/health/live")).build(),
          BodyHandlers.ofString());
      return true;
    } catch (ConnectException e) {
      return false;
    }
  }
}
