package dev.faircarry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables by command: out of a trip, into a trip, and in place of split and readings. */
class TableCommandsTest {
  private static final String DEMO = "demo-data/early-leaver.json";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private static String table(String name) {
    Run run = Run.of("table", name, DEMO);
    assertEquals(ExitCode.FINE, run.code(), run::err);
    return run.out();
  }

  @Test
  void aTripComesBackFromItsTables() throws IOException {
    Run back =
        Run.of(
            "trip",
            DEMO,
            "--hikers",
            file("hikers.csv", table("hikers")),
            "--kit",
            file("kit.csv", table("kit")),
            "--shared",
            file("shared.csv", table("shared")));
    assertEquals(ExitCode.FINE, back.code(), back::err);
    Run same = Run.of("trip", DEMO);
    assertEquals(JSON.readTree(same.out()), JSON.readTree(back.out()));
    assertEquals(
        Run.of("split", DEMO).out(), Run.reading(back.out(), "split", "-").out(), "splits alike");
  }

  @Test
  void aTripIsMadeOfTablesAndAFrameWithoutHikers() throws IOException {
    Run made =
        Run.reading(
            "{\"format\": \"faircarry-trip/1\", \"name\": \"Lake\", \"days\": 1}",
            "trip",
            "-",
            "--hikers",
            file("h.csv", "\uFEFFname;targetLoad\nÁgi;12 kg\n"),
            "--shared",
            file("s.csv", "name;mass\nStove;95 g\n"));
    assertEquals(ExitCode.FINE, made.code(), made::err);
    assertEquals("Ági", JSON.readTree(made.out()).at("/hikers/0/name").asText());
    assertEquals(ExitCode.FINE, Run.reading(made.out(), "split", "-").code());
  }

  /** What the README shows: the tables of a trip, put together and split. */
  @Test
  void theDemoTablesMakeATripThatIsSplit() throws IOException {
    String tables = "demo-data/tables/";
    Run made =
        Run.of(
            "trip",
            tables + "heath.json",
            "--hikers",
            tables + "hikers.csv",
            "--kit",
            tables + "kit.csv",
            "--shared",
            tables + "shared.csv");
    assertEquals(ExitCode.FINE, made.code(), made::err);
    assertEquals("sade", JSON.readTree(made.out()).at("/shared/6/owner").asText());
    Run split = Run.reading(made.out(), "split", "-");
    assertEquals(ExitCode.FINE, split.code(), split::out);
  }

  @Test
  void issuesNameTheCell() throws IOException {
    String hikers = file("h.csv", "name,bodyMass\nAda,61.4 stones\nBen,\n");
    Run run = Run.of("trip", DEMO, "--hikers", hikers);
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains("hikers, row 2, bodyMass: unknown-unit\n"), run::err);
    assertTrue(run.err().contains("hikers, row 3: no-target\n"), run::err);
    assertFalse(run.err().contains("61.4"), run::err);
    Run json = Run.of("trip", DEMO, "--hikers", hikers, "--json");
    assertEquals(ExitCode.BAD_INPUT, json.code());
    assertEquals(2, JSON.readTree(json.out()).at("/issues/0/row").asInt());
    Run frame = Run.reading("{}", "trip", "-");
    assertEquals(ExitCode.BAD_INPUT, frame.code());
    assertTrue(frame.err().contains("/days: missing"), frame::err);
  }

  @Test
  void aSplitAsATableIsCheckedUnchanged() throws IOException {
    Run split = Run.of("split", DEMO, "--csv");
    assertEquals(ExitCode.FINE, split.code(), split::err);
    assertTrue(split.out().startsWith("kind,hiker,"), split::out);
    Run check = Run.of("check", DEMO, file("split.csv", split.out()));
    assertEquals(ExitCode.FINE, check.code(), check::err);
    assertTrue(check.out().contains("Every rule holds."), check::out);
    assertEquals(check.out(), Run.reading(split.out(), "check", DEMO, "-").out());
    Run impossible = Run.of("split", "demo-data/impossible-rules.json", "--csv");
    assertEquals(ExitCode.IMPOSSIBLE, impossible.code());
    assertEquals("", impossible.out());
    assertTrue(impossible.err().contains("Mei carries Stove."), impossible::err);
  }

  @Test
  void aSplitTypedByHandIsChecked() throws IOException {
    String split = file("hand.CSV", "hiker;piece\nPat;stove\nPat;pot\nQuinn;tarp\nRosa;rope\n");
    Run run = Run.of("check", DEMO, split);
    assertFalse(run.out().isEmpty(), run::err);
    Run wrong = Run.of("check", DEMO, file("bad.csv", "hiker,piece\n,stove\n"), "--json");
    assertEquals(ExitCode.BAD_INPUT, wrong.code());
    assertEquals("split", JSON.readTree(wrong.out()).at("/issues/0/table").asText());
  }

  @Test
  void readingsAsATableAreWeighedIn() throws IOException {
    String split = file("split.csv", Run.of("split", DEMO, "--csv").out());
    Run agrees =
        Run.of("weigh-in", DEMO, split, file("r.csv", "kind,hiker,mass\nwhole-pack,Pat,8.02 kg\n"));
    assertEquals(ExitCode.FINE, agrees.code(), agrees::err);
    assertTrue(agrees.out().contains("Everything agrees."), agrees::out);
    Run wrong =
        Run.of("weigh-in", DEMO, split, file("w.csv", "kind,hiker,mass\nwhole-pack,Zoe,8 kg\n"));
    assertEquals(ExitCode.BAD_INPUT, wrong.code());
    assertTrue(wrong.err().contains("readings, row 2, hiker: unknown-hiker (Zoe)"), wrong::err);
  }

  @Test
  void anUnknownTableIsABadCommandLine() {
    Run run = Run.of("table", "rules", DEMO);
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertTrue(run.err().contains("rules"), run::err);
    assertEquals(ExitCode.BAD_INPUT, Run.reading("{}", "table", "kit", "-").code());
  }
}
