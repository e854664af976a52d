package dev.faircarry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Targets 10, 10 and 20 kg; Ana holds 2 kg, Bo 1 kg, Cy 4 kg. Without Ana one handover gives 3 of
 * 10 kg or 6 of 20 kg, both 30 %. With a second one Bo has the 2 kg, 20 %, and Cy 5 of 20 kg, 25 %.
 */
class DropOutsCommandTest {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Fen", "days": 1,
       "hikers": [{"id": "a", "name": "Ana", "targetLoad": "10 kg"},
                  {"id": "b", "name": "Bo", "targetLoad": "10 kg"},
                  {"id": "c", "name": "Cy", "targetLoad": "20 kg"}],
       "shared": [{"id": "tent", "name": "Tent", "mass": "2 kg"},
                  {"id": "rope", "name": "Rope", "mass": "1 kg"},
                  {"id": "stove", "name": "Stove", "mass": "4 kg"}],
       "rules": [{"kind": "only", "pieces": ["stove"], "hikers": ["c", "b"]}]}
      """;
  private static final String SPLIT =
      """
      {"format": "faircarry-split/1", "carries": [{"hiker": "a", "pieces": ["tent"]},
       {"hiker": "b", "pieces": ["rope"]}, {"hiker": "c", "pieces": ["stove"]}]}
      """;

  @TempDir private Path folder;
  private String trip = "";

  @BeforeEach
  void write() throws IOException {
    trip = file("trip.json", TRIP);
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void aFewLinesForEachInTheOrderOfTheTrip() {
    Run run = Run.reading(SPLIT, "drop-outs", trip, "-");
    assertEquals(ExitCode.FINE, run.code(), () -> run.out() + run.err());
    String[] cases = run.out().split("\n\n", -1);
    assertEquals(3, cases.length, run::out);
    assertEquals(
        "If Ana does not come:\nAna gives “Tent” to Bo.\nBo gives “Rope” to Cy.\n"
            + "Most loaded: Cy, day 1, 25 % of target.",
        cases[0]);
    assertTrue(cases[1].startsWith("If Bo does not come:\nBo gives “Rope” to "), cases[1]);
    // Bo alone may have the stove then; with the rope beside it he would carry 5 of 10 kg.
    assertTrue(cases[2].startsWith("If Cy does not come:\n"), cases[2]);
    assertTrue(cases[2].contains("\nCy gives “Stove” to Bo.\n"), cases[2]);
    assertTrue(cases[2].contains("\nBo gives “Rope” to Ana.\n"), cases[2]);
    assertTrue(cases[2].contains("\nMost loaded: Bo, day 1, 40 % of target."), cases[2]);
    assertTrue(run.out().endsWith("\n"), "the last line ends");
    // Three text messages of 160 characters (GSM 03.40) hold all of it.
    assertTrue(run.out().length() <= 3 * 160, run::out);
  }

  @Test
  void theDocumentHasACaseForEach() {
    Run run = Run.reading(SPLIT, "drop-outs", trip, "-", "--json");
    assertEquals(ExitCode.FINE, run.code());
    assertTrue(run.out().contains("\"dropOuts\" : ["), run::out);
    assertTrue(run.out().contains("\"hiker\" : \"c\""), run::out);
    assertTrue(run.out().contains("\"format\" : \"faircarry-split/1\""), run::out);
  }

  /** The stove may be with Cy alone: without Cy the rule has nothing left to say, and is told. */
  @Test
  void whatGoesWithWhoStaysAtHomeIsTold() throws IOException {
    String alone = file("alone.json", TRIP.replace("[\"c\", \"b\"]", "[\"c\"]"));
    Run run = Run.reading(SPLIT, "drop-outs", alone, "-");
    assertEquals(ExitCode.FINE, run.code(), run::out);
    assertTrue(run.out().contains("Note: Rule “r1” named Cy, who does not come"), run::out);
  }

  @Test
  void aCaseWithoutASplitIsNotFine() throws IOException {
    String never =
        file(
            "never.json",
            TRIP.replace(
                "\"rules\": [",
                "\"rules\": [{\"kind\": \"barred\", \"pieces\": [\"rope\"],"
                    + " \"hikers\": [\"a\", \"c\"]}, "));
    Run run = Run.reading(SPLIT, "drop-outs", never, "-");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code(), run::out);
    assertTrue(
        run.out().contains("If Bo does not come:\nThere is no split that keeps the rules:\n"),
        run::out);
    assertTrue(run.out().contains("Barred from carrying Rope: Ana, Cy."), run::out);
  }

  /** Without Ana 7 kg are left for two who may carry 3 kg each. */
  @Test
  void aPassedCapIsNotFine() throws IOException {
    String capped =
        file(
            "capped.json",
            TRIP.replace("\"name\": \"Bo\",", "\"name\": \"Bo\", \"capLoad\": \"3 kg\",")
                .replace("\"name\": \"Cy\",", "\"name\": \"Cy\", \"capLoad\": \"3 kg\","));
    Run run = Run.reading(SPLIT, "drop-outs", capped, "-");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code());
    assertTrue(run.out().contains("A cap is passed; leave something at home."), run::out);
  }

  /** Nobody is left to go. */
  @Test
  void aGroupOfOne() {
    String one =
        """
        {"format": "faircarry-trip/1", "name": "Alone", "days": 1,
         "hikers": [{"id": "a", "name": "Ana", "targetLoad": "10 kg"}], "shared": []}
        """;
    Run run = Run.reading(one, "drop-outs", "-", emptySplit());
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code(), () -> run.out() + run.err());
    assertTrue(run.out().startsWith("If Ana does not come:\nThe trip does not work "), run::out);
  }

  private String emptySplit() {
    try {
      return file("empty.json", "{\"format\": \"faircarry-split/1\", \"carries\": []}");
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void badInput() {
    for (List<String> wrong :
        List.of(
            List.of("drop-outs"),
            List.of("drop-outs", trip),
            List.of("drop-outs", "-", "-"),
            List.of("drop-outs", trip, "nowhere.json"),
            List.of("drop-outs", trip, trip),
            List.of("drop-outs", "-", "-", "--json"),
            List.of("drop-outs", trip, "-", "--effort", "0"),
            List.of("drop-outs", trip, "-", "--effort", "500000001"),
            List.of("drop-outs", trip, "-", "--colour"))) {
      Run run = Run.reading(SPLIT, wrong.toArray(String[]::new));
      assertEquals(ExitCode.BAD_INPUT, run.code(), String.join(" ", wrong));
      assertEquals("", run.out(), String.join(" ", wrong));
    }
    Run split = Run.reading("{\"carries\": 3}", "drop-outs", trip, "-");
    assertEquals(ExitCode.BAD_INPUT, split.code());
    assertTrue(split.err().contains("/carries: wrong-type"), split::err);
    assertFalse(split.err().contains("java"), split::err);
  }
}
