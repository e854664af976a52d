package dev.faircarry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CommandLineTest {
  /** Both must carry 6 kg of 10 kg: the only fair way is stove and tent apart, 0.6 each. */
  private static final String TWO =
      """
      { "format": "faircarry-trip/1", "name": "Two", "days": 1,
        "hikers": [
          { "id": "ada", "name": "Ada", "bodyMass": "50 kg", "pack": { "mass": "1 kg" } },
          { "id": "ben", "name": "Ben", "bodyMass": "50 kg", "pack": { "mass": "1 kg" } } ],
        "shared": [
          { "id": "tent", "name": "Tent", "mass": "5 kg" },
          { "id": "stove", "name": "Stove", "mass": "5 kg" } ],
        "rules": [ { "id": "r1", "kind": "pinned", "pieces": ["tent"], "hiker": "ada" } ] }
      """;

  @TempDir private Path folder;

  static Stream<Arguments> wrongCommandLines() {
    return Stream.of(
        Arguments.of("Unknown option", List.of("split", "--colour", "x.json")),
        Arguments.of("Missing required parameter", List.of("split")),
        Arguments.of("Missing required parameter", List.of("check", "x.json")),
        Arguments.of("Cannot read nowhere.json.", List.of("split", "nowhere.json")),
        Arguments.of("Cannot read demo-data.", List.of("split", "demo-data")),
        Arguments.of("Only one of FILE and SPLIT", List.of("check", "-", "-")),
        Arguments.of("--effort is a whole number from 1", List.of("split", "-", "--effort", "0")),
        Arguments.of("--effort", List.of("split", "-", "--effort", "much")),
        Arguments.of("--effort is a whole", List.of("split", "-", "--effort", "500000001")),
        Arguments.of("--units", List.of("split", "-", "--units", "stones")),
        Arguments.of("--log: not-a-word. ", List.of("serve", "--log", "xml")),
        Arguments.of(
            "--database-file: not-with-demo. --demo keeps nothing",
            List.of("serve", "--demo", "--database-file", "trips.db")),
        Arguments.of(
            "--key-file: not-with-demo. --demo keeps nothing",
            List.of("serve", "--key-file", "trips.key", "--demo")),
        Arguments.of("Missing required parameter", List.of("backup")),
        Arguments.of("--port is a whole number", List.of("serve", "--port", "70000")),
        Arguments.of("--port is a whole number", List.of("serve", "--port", "-1")));
  }

  @ParameterizedTest
  @MethodSource("wrongCommandLines")
  void wrongCommandLinesAreBadInput(String said, List<String> arguments) {
    Run run = Run.reading(TWO, arguments.toArray(String[]::new));
    assertEquals(ExitCode.BAD_INPUT, run.code(), run::err);
    assertEquals("", run.out());
    assertTrue(run.err().contains(said), run::err);
  }

  @Test
  void withoutACommandTheCommandsAreListed() {
    Run run = Run.of();
    assertEquals(ExitCode.BAD_INPUT, run.code());
    for (String command : List.of("split", "check", "serve", "version", "Exit codes")) {
      assertTrue(run.err().contains(command), run::err);
    }
  }

  @Test
  void aDatabaseIsCopiedOnce() throws IOException {
    String database = folder.resolve("trips.db").toString();
    String copy = folder.resolve("copy.db").toString();
    Run none = Run.of("backup", copy, "--database-file", database);
    assertEquals(ExitCode.BAD_INPUT, none.code());
    assertTrue(none.err().startsWith("no-database: "), none::err);
    Files.write(Path.of(database), new byte[0]);
    Run done = Run.of("backup", copy, "--database-file", database);
    assertEquals(ExitCode.FINE, done.code(), done::err);
    Run again = Run.of("backup", copy, "--database-file", database);
    assertEquals(ExitCode.BAD_INPUT, again.code());
    assertTrue(again.err().startsWith("copy-exists: "), again::err);
  }

  @Test
  void theVersionIsPrinted() {
    assertTrue(Run.of("version").out().matches("faircarry [0-9]+\\.[0-9]+\\.[0-9]+\\n"));
    assertTrue(Run.of("version", "--json").out().contains("\"name\" : \"faircarry\""));
  }

  @Test
  void aTripIsSplitFromStandardInput() {
    Run run = Run.reading(TWO, "split", "-");
    assertEquals(ExitCode.FINE, run.code(), run::out);
    assertTrue(run.out().contains("Ada: Tent\n"), run::out);
    assertTrue(run.out().contains("Ben: Stove\n"), run::out);
    assertTrue(run.out().contains("10.00 kg  6.00 kg  0.600"), run::out);
    assertTrue(run.out().contains("Proved"), run::out);
    assertFalse(run.out().contains("50"), "a body mass is shown");
  }

  @Test
  void loadsAreShownInPoundsAndOuncesWhereWanted() {
    // 6 kg = 13 lb 3.6 oz, 10 kg = 22 lb 0.7 oz (NIST SP 811: 1 oz = 28.349 523 125 g)
    Run run = Run.reading(TWO, "split", "-", "--units", "us");
    assertTrue(run.out().contains("22 lb 0.7 oz  13 lb 3.6 oz  0.600"), run::out);
  }

  @Test
  void anAnswerIsAcceptedUnchanged() throws IOException {
    Run split = Run.reading(TWO, "split", "-", "--json");
    assertEquals(ExitCode.FINE, split.code());
    Path answer = Files.writeString(folder.resolve("answer.json"), split.out());
    Run check = Run.reading(TWO, "check", "-", answer.toString());
    assertEquals(ExitCode.FINE, check.code(), () -> check.out() + check.err());
    assertTrue(check.out().contains("Every rule holds."), check::out);
  }

  @Test
  void aHandMadeSplitThatBreaksARuleIsNotFine() throws IOException {
    Path split =
        Files.writeString(
            folder.resolve("split.json"),
            """
            { "format": "faircarry-split/1", "carries": [
              { "hiker": "ben", "pieces": ["tent"] }, { "hiker": "ada", "pieces": ["stove"] } ] }
            """);
    Run run = Run.reading(TWO, "check", "-", split.toString());
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code());
    assertTrue(run.out().contains("This split breaks rules."), run::out);
    assertTrue(run.out().contains("Tent"), run::out);
    Run json = Run.reading(TWO, "check", "-", split.toString(), "--json");
    assertTrue(json.out().contains("\"pinned-elsewhere\""), json::out);
    assertTrue(json.out().contains("\"keepsRules\" : false"), json::out);
  }

  @Test
  void everyIssueIsToldWithItsPlace() {
    String bad = TWO.replace("\"5 kg\"", "\"5 stones\"").replace("\"days\": 1", "\"days\": 0");
    Run run = Run.reading(bad, "split", "-");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals("", run.out());
    for (String told :
        List.of(
            "/days: out-of-range",
            "/shared/0/mass: unknown-unit (5 stones)",
            "/shared/1/mass: unknown-unit (5 stones)")) {
      assertTrue(run.err().contains(told), run::err);
    }
    Run json = Run.reading(bad, "split", "-", "--json");
    assertEquals(ExitCode.BAD_INPUT, json.code());
    assertTrue(json.out().contains("\"pointer\" : \"/shared/1/mass\""), json::out);
  }

  @Test
  void aBodyMassIsNotRepeatedWhenItIsWrong() {
    Run run = Run.reading(TWO.replace("\"50 kg\"", "\"4321 kg\""), "split", "-");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertFalse((run.out() + run.err()).contains("4321"), run::err);
  }

  @Test
  void rulesThatCannotAllHoldAreNamed() {
    Run run = Run.of("split", "demo-data/impossible-rules.json");
    assertEquals(ExitCode.IMPOSSIBLE, run.code());
    for (String words :
        List.of(
            "Mei carries Stove.",
            "In one pack: Stove, Pot.",
            "Barred from carrying Pot: Mei.",
            "Without any one of them the others can hold.")) {
      assertTrue(run.out().contains(words), run::out);
    }
    assertFalse(run.out().contains("Rope"), run::out);
  }

  @Test
  void whoIsOverTheCapIsNamed() {
    // Packs and kits are 12, 14 and 15.5 kg, caps 0.30 of 50, 60 and 50 kg: 15, 18 and 15 kg.
    // Own kit alone passes the third by 0.5 kg, whatever anybody does.
    Run run = Run.of("split", "demo-data/over-cap.json");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code());
    assertTrue(run.out().contains("Over the cap"), run::out);
    assertTrue(run.out().contains("0.50 kg above the cap of 15.00 kg"), run::out);
    assertTrue(run.out().contains("0.50 kg of it by own kit alone"), run::out);
  }

  @Test
  void tooLittleEffortIsUnproved() {
    Run run = Run.of("split", "demo-data/high-tarns.json", "--effort", "1");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code(), run::out);
  }

  @Test
  void aDocumentThatIsTooLargeIsNotReadToItsEnd() {
    Run run = Run.reading(" ".repeat(3_000_000), "split", "-");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("document-too-large"), run::err);
  }

  /** 5 kg beside a pack of 1 kg are 0.6 of 10 kg, whoever takes them. */
  @Test
  void whyASplitIsNoFairerIsExplained() {
    Run run = Run.reading(TWO, "explain", "-");
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("Why it is no better"), run::out);
    assertTrue(run.out().contains("there are 10.000 kg to share"), run::out);
    Run json = Run.reading(TWO, "explain", "-", "--json");
    assertTrue(json.out().contains("\"kind\" : \"sheer-total\""), json::out);
    assertEquals(ExitCode.BAD_INPUT, Run.reading("{}", "explain", "-").code());
    assertEquals(ExitCode.IMPOSSIBLE, Run.of("explain", "demo-data/impossible-rules.json").code());
  }
}
