package dev.faircarry.cli;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.specification.RequestSpecification;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code serve --demo} in a process of its own, whose temporary files have a place of their own.
 */
@Tag("slow")
class ServeDemoTest {
  private static final long PATIENCE_SECONDS = 120;
  private static final Pattern LINK =
      Pattern.compile("  (\\S+) +(http://127\\.0\\.0\\.1:\\d+)/#/open/([^/]+)/([^/]+)");

  @TempDir private Path folder;

  /** A link as it is printed. */
  private record Link(String origin, String trip, String token) {
    RequestSpecification bearer() {
      return given().baseUri(origin).header("Authorization", "Bearer " + token);
    }

    String path(String part) {
      return "/v1/trips/" + trip + part;
    }
  }

  @Test
  void everyLinkOpensTheAgreedTripAndNothingIsLeftBehind() throws Exception {
    Path temporary = Files.createDirectory(folder.resolve("temporary"));
    Path working = Files.createDirectory(folder.resolve("working"));
    File log = folder.resolve("log").toFile();
    Process process = start(temporary, working, log);
    try {
      List<String> said = lines(process);
      assertEquals(
          "Ctrl+C ends it. Nothing is kept then, neither this trip nor any you make.",
          said.get(said.size() - 1));
      Map<String, Link> links = links(said);
      assertEquals(
          List.of("Leader", "Asha", "Tomas", "Ruth", "Ilan", "Noor", "Pia", "Viewer"),
          List.copyOf(links.keySet()));
      assertEquals(1, entries(temporary, "faircarry-demo-").size());
      links.forEach(ServeDemoTest::opens);
      process.destroy();
      assertTrue(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS), "does not stop");
      String logged = Files.readString(log.toPath());
      assertTrue(logged.contains("GET /v1/trips/{trip}/state 200"), logged);
      for (Link link : links.values()) {
        assertFalse(logged.contains(link.token()), "a link is logged");
      }
      assertEquals(List.of(), entries(temporary, "faircarry-demo-"));
      assertEquals(List.of(), entries(working, ""));
    } finally {
      process.destroyForcibly();
    }
  }

  private static void opens(String whose, Link link) {
    String role =
        switch (whose) {
          case "Leader" -> "leader";
          case "Viewer" -> "viewer";
          default -> "hiker";
        };
    String agreed =
        link.bearer()
            .get(link.path("/state"))
            .then()
            .statusCode(200)
            .body("you.role", equalTo(role))
            .extract()
            .path("agreedSplit");
    link.bearer()
        .get(link.path(""))
        .then()
        .statusCode(200)
        .body("name", equalTo("High tarns, three nights"));
    link.bearer()
        .get(link.path("/splits/" + agreed))
        .then()
        .statusCode(200)
        .body("carries.hiker", hasItem("asha"));
  }

  private static Process start(Path temporary, Path working, File log) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Djava.io.tmpdir=" + temporary);
    command.addAll(program());
    command.addAll(List.of("serve", "--demo", "--port", "0"));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().keySet().removeIf(name -> name.startsWith("FAIRCARRY_"));
    // A database that is set for the usual service is left alone.
    builder.environment().put("FAIRCARRY_DATABASE_FILE", working.resolve("trips.db").toString());
    return builder.directory(working.toFile()).redirectError(log).start();
  }

  /** The jar, where the build made one; otherwise its classes, without those that silence logs. */
  private static List<String> program() {
    String jar = System.getProperty("faircarry.jar");
    if (jar != null) {
      return List.of("-jar", jar);
    }
    String classes =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> !entry.endsWith("test-classes"))
            .map(entry -> Path.of(entry).toAbsolutePath().toString())
            .reduce((one, other) -> one + File.pathSeparator + other)
            .orElseThrow();
    return List.of("-cp", classes, "dev.faircarry.Main");
  }

  /** What it says until it has told how to end it, or has ended. */
  private static List<String> lines(Process process) throws IOException {
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    List<String> lines = new ArrayList<>();
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      lines.add(line);
      if (line.startsWith("Ctrl+C")) {
        break;
      }
    }
    assertFalse(lines.isEmpty(), "it said nothing");
    return lines;
  }

  private static Map<String, Link> links(List<String> said) {
    Map<String, Link> links = new LinkedHashMap<>();
    for (String line : said) {
      Matcher link = LINK.matcher(line);
      if (link.matches()) {
        links.put(link.group(1), new Link(link.group(2), link.group(3), link.group(4)));
      }
    }
    return links;
  }

  private static List<Path> entries(Path directory, String prefix) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.filter(file -> file.getFileName().toString().startsWith(prefix)).toList();
    }
  }
}
