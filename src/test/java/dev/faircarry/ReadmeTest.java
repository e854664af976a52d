package dev.faircarry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.app.Cautions;
import dev.faircarry.app.ServiceLimits;
import dev.faircarry.cli.Console;
import dev.faircarry.cli.ExitCode;
import dev.faircarry.config.Setting;
import dev.faircarry.http.Server;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the README says holds. */
class ReadmeTest {
  private static final String JAR = "java -jar target/faircarry.jar ";
  private static final String ADDRESS = "http://127.0.0.1:8080/";
  private static final Duration PATIENCE = Duration.ofMinutes(2);

  private static Server server;

  private record Run(int exitCode, String out) {}

  @BeforeAll
  static void start() {
    server = Main.server("127.0.0.1", 0);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  static Stream<String> requests() {
    return new Readme().blocks("sh").stream().filter(block -> block.startsWith("curl "));
  }

  @ParameterizedTest
  @MethodSource("requests")
  void everyRequestIsAnswered(String command) throws IOException, InterruptedException {
    HttpResponse<String> response =
        HttpClient.newHttpClient().send(request(command), BodyHandlers.ofString());
    assertEquals(200, response.statusCode(), response::body);
    assertTrue(response.body().startsWith("{"), response::body);
  }

  @Test
  void theDemoIsSplit() {
    assertTrue(new Readme().blocks("sh").contains(JAR + "split demo-data/high-tarns.json"));
    Run run = run("split", "demo-data/high-tarns.json");
    assertTrue(
        run.exitCode() == ExitCode.FINE.number()
            || run.exitCode() == ExitCode.OVER_CAP_OR_UNPROVED.number(),
        run::out);
    assertTrue(run.out().startsWith("High tarns, three nights\n"), run::out);
  }

  /** What the demo then does is tested where the program runs as a process of its own. */
  @Test
  void theFirstCommandsBuildAndServeTheDemoAndRunAllTests() {
    assertEquals(
        List.of("mvn -q -DskipTests package && " + JAR + "serve --demo", "mvn verify"),
        new Readme().blocks("sh").subList(0, 2));
  }

  @Test
  void theShownAnswerIsTheAnswer() {
    assertTrue(
        new Readme().blocks("sh").contains(JAR + "split demo-data/early-leaver.json"), "shown");
    Run run = run("split", "demo-data/early-leaver.json");
    List<String> shown = new Readme().blocks("text");
    assertEquals(1, shown.size());
    assertTrue(run.out().startsWith(shown.get(0) + "\n"), run::out);
    assertEquals(ExitCode.FINE.number(), run.exitCode());
  }

  @Test
  void theShownTripIsSplit() {
    List<String> shown = new Readme().blocks("json");
    assertEquals(1, shown.size());
    Run run =
        run(new ByteArrayInputStream(shown.get(0).getBytes(StandardCharsets.UTF_8)), "split", "-");
    assertEquals(ExitCode.FINE.number(), run.exitCode(), run::out);
    assertTrue(run.out().startsWith("Lake and back\n"), run::out);
  }

  /** Each trip with a plan stands in the table, and its command says what stands beside it. */
  @Test
  void everyPlanSaysWhatIsShown() throws IOException {
    List<String> shown = new ArrayList<>();
    for (List<String> row : new Readme().table("plan")) {
      String file = row.get(0).replaceFirst("^\\[.*]\\((.*)\\)$", "$1");
      Run run = run(row.get(2).replace("`", ""), file);
      assertEquals(ExitCode.FINE.number(), run.exitCode(), file);
      String says = row.get(3).split("`", -1)[1];
      assertTrue(run.out().contains(says), says + " in " + run.out());
      shown.add(file);
    }
    try (Stream<Path> files = Files.list(Path.of("demo-data/plans"))) {
      assertEquals(files.map(Path::toString).sorted().toList(), shown.stream().sorted().toList());
    }
  }

  @Test
  void everyExitCodeIsListed() {
    assertEquals(
        Arrays.stream(ExitCode.values()).map(code -> String.valueOf(code.number())).toList(),
        new Readme().table("exit code").stream().map(row -> row.get(0)).toList());
  }

  @Test
  void theLimitsAreThoseOfTheService() {
    String limits = new Readme().table("what").toString();
    for (String stated :
        List.of(
            ServiceLimits.DEFAULT_EFFORT_STEPS
                + " search steps, at most "
                + ServiceLimits.MAX_EFFORT_STEPS,
            ServiceLimits.CLOCK_SECONDS + " s; an answer that it cut says so",
            ServiceLimits.WAITING_SOLVES + " more may wait, then 503",
            ServiceLimits.REQUEST_BYTES + " bytes",
            ServiceLimits.STOP_SECONDS + " s to end")) {
      assertTrue(limits.contains(stated), stated);
    }
  }

  @Test
  void theSettingsAreThoseOfTheProgram() {
    List<List<String>> expected = new ArrayList<>();
    for (Setting setting : Setting.values()) {
      expected.add(
          List.of(
              "`" + setting.variable() + "`",
              setting.flag().map(flag -> "`" + flag + "`").orElse("-"),
              setting.standard().isEmpty() ? "-" : setting.standard()));
    }
    assertEquals(
        expected, new Readme().table("variable").stream().map(row -> row.subList(0, 3)).toList());
  }

  @Test
  void theCautionsAreThoseOfTheProgram() {
    String readme = new Readme().text.replace('\n', ' ');
    for (String caution : Cautions.TEXT) {
      assertTrue(readme.contains("- " + caution), caution);
    }
    assertFalse(Cautions.TEXT.isEmpty());
  }

  private static HttpRequest request(String command) throws IOException {
    HttpRequest.Builder request = HttpRequest.newBuilder().timeout(PATIENCE);
    List<String> words = Readme.words(command);
    assertEquals(List.of("curl", "-s"), words.subList(0, 2));
    for (int i = 2; i < words.size(); i++) {
      String word = words.get(i);
      if (word.equals("-H")) {
        String[] header = words.get(++i).split(": ", 2);
        request.header(header[0], header[1]);
      } else if (word.equals("-d") || word.equals("--data-binary")) {
        request.POST(body(words.get(++i)));
      } else {
        assertTrue(word.startsWith(ADDRESS), word);
        String path = word.substring(ADDRESS.length());
        request.uri(URI.create("http://127.0.0.1:" + server.port() + "/" + path));
      }
    }
    return request.build();
  }

  private static BodyPublisher body(String data) throws IOException {
    return data.startsWith("@")
        ? BodyPublishers.ofFile(Path.of(data.substring(1)))
        : BodyPublishers.ofString(data);
  }

  private static Run run(String... arguments) {
    return run(InputStream.nullInputStream(), arguments);
  }

  private static Run run(InputStream in, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream both = new PrintStream(out, true, StandardCharsets.UTF_8);
    int exitCode = Main.run(new Console(in, both, both), arguments);
    return new Run(exitCode, out.toString(StandardCharsets.UTF_8));
  }
}
