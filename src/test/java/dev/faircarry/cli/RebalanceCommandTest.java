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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * {@code rebalance}: targets of 10 kg; Ana has 6 kg, Bo 6 kg, Cy 5 and 1 kg. Without Ana 18 kg are
 * left: one handover makes 12 and 6 kg, two make 11 and 7, and nothing is better.
 */
class RebalanceCommandTest {
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "n", "days": 1,
       "hikers": [{"id": "a", "name": "Ana", "targetLoad": "10 kg"},
                  {"id": "b", "name": "Bo", "targetLoad": "10 kg"},
                  {"id": "c", "name": "Cy", "targetLoad": "10 kg"}],
       "shared": [{"id": "p1", "name": "Tent", "mass": "6 kg"}, {"id": "p2", "mass": "6 kg"},
                  {"id": "p3", "mass": "5 kg"}, {"id": "p4", "mass": "1 kg"}]}
      """;
  private static final String A_OUT =
      "{\"changes\": [{\"kind\": \"drops-out\", \"hiker\": \"a\"}]}";

  @TempDir private Path folder;
  private String trip = "";
  private String split = "";

  @BeforeEach
  void write() throws IOException {
    trip = file("trip.json", TRIP);
    split =
        file(
            "split.json",
            """
            {"format": "faircarry-split/1", "carries": [{"hiker": "a", "pieces": ["p1"]},
             {"hiker": "b", "pieces": ["p2"]}, {"hiker": "c", "pieces": ["p3", "p4"]}]}
            """);
  }

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void theCurveIsReadOut() {
    Run run = Run.reading(A_OUT, "rebalance", trip, split, "-");
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("  1 handover: at worst 120 % of target, proved\n"), run::out);
    assertTrue(run.out().contains("* 2 handovers: at worst 110 % of target, proved\n"), run::out);
    assertTrue(run.out().contains("Ana gives “Tent” to "), run::out);
  }

  @Test
  void aBoundAndWhatIsPacked() {
    Run one =
        Run.reading(A_OUT.replace("]}", "], \"maxHandovers\": 1}"), "rebalance", trip, split, "-");
    assertTrue(one.out().contains("* 1 handover: at worst 120 %"), one::out);
    Run packed =
        Run.reading(
            A_OUT.replace("]}", "], \"frozen\": [\"p2\", \"p3\", \"p4\"]}"),
            "rebalance",
            trip,
            split,
            "-");
    assertFalse(packed.out().contains("2 handovers"), packed::out);
  }

  /** A point's split is a split, and the trip after the change the one it is of. */
  @Test
  void theDocumentHasTripAndSplits() {
    Run run = Run.reading(A_OUT, "rebalance", trip, split, "-", "--json");
    assertEquals(ExitCode.FINE, run.code());
    assertTrue(run.out().contains("\"result\" : \"curve\""), run::out);
    assertTrue(run.out().contains("\"format\" : \"faircarry-split/1\""), run::out);
  }

  @Test
  void rulesThatCannotHoldAreNamed() {
    String never =
        """
        {"changes": [{"kind": "rule-added", "rule":
          {"kind": "barred", "pieces": ["p1"], "hikers": ["a", "b", "c"]}}]}
        """;
    Run run = Run.reading(never, "rebalance", trip, split, "-");
    assertEquals(ExitCode.IMPOSSIBLE, run.code());
    assertTrue(run.out().contains("No split keeps all the rules:"), run::out);
    assertTrue(run.out().contains("Barred from carrying Tent: Ana, Bo, Cy."), run::out);
  }

  /** Bo may carry 6.5 kg and Cy 7: without Ana 18 kg are 4.5 kg too much whatever is done. */
  @Test
  void aCapThatIsPassedIsNotFine() throws IOException {
    String capped =
        file(
            "capped.json",
            TRIP.replace("\"name\": \"Bo\",", "\"name\": \"Bo\", \"capLoad\": \"6.5 kg\",")
                .replace("\"name\": \"Cy\",", "\"name\": \"Cy\", \"capLoad\": \"7 kg\","));
    Run run = Run.reading(A_OUT, "rebalance", capped, split, "-");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code(), run::out);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'changes':[{'kind':'drops-out','hiker':'ghost'}]} | /changes/0/hiker: unknown-hiker (ghost)",
        "{'changes':[{'kind':'flies'}]} | /changes/0/kind: unknown-word (flies)",
        "{'frozen':['ghost']} | /frozen/0: unknown-piece (ghost)",
        "{'maxHandovers':-1} | /maxHandovers: out-of-range (-1)",
        "{'colour':1} | /colour: unknown-field",
        "[] | document: wrong-type",
        "{ | document: not-json"
      })
  void changesThatCannotBe(String changes, String said) {
    Run run = Run.reading(changes.replace('\'', '"'), "rebalance", trip, split, "-");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains(said), run::err);
  }

  @Test
  void documentsAndCommandLinesThatAreWrong() {
    for (List<String> wrong :
        List.of(
            List.of("rebalance"),
            List.of("rebalance", trip, split),
            List.of("rebalance", trip, "-", "-"),
            List.of("rebalance", "-", "-", "-"),
            List.of("rebalance", trip, split, "nowhere.json"),
            List.of("rebalance", trip, trip, "-"),
            List.of("rebalance", split, split, "-"),
            List.of("rebalance", trip, split, "-", "--effort", "0"),
            List.of("rebalance", trip, split, "-", "--effort", "500000001"),
            List.of("rebalance", trip, split, "-", "--colour"))) {
      Run run = Run.reading(A_OUT, wrong.toArray(String[]::new));
      assertEquals(ExitCode.BAD_INPUT, run.code(), String.join(" ", wrong));
      assertEquals("", run.out(), String.join(" ", wrong));
    }
    Run twice = Run.reading(A_OUT, "rebalance", trip, "-", "-");
    assertTrue(twice.err().contains("Only one of FILE, SPLIT and CHANGES"), twice::err);
  }
}
