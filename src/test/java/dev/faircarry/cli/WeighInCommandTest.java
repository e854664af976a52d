package dev.faircarry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ada: pack 1.8 lb = 816 g, kit 2 kg, pot 400 g; Ben: pack 1.5 kg weighed, tent 2 kg. */
class WeighInCommandTest {
  private static final String TRIP =
      """
      { "format": "faircarry-trip/1", "name": "Ford and back", "days": 1,
        "hikers": [
          { "id": "ada", "name": "Ada", "targetLoad": "9 kg", "pack": { "mass": "1.8 lb" },
            "kit": [ { "id": "all", "name": "Kit", "mass": "2 kg", "massFrom": "estimate" } ] },
          { "id": "ben", "name": "Ben", "targetLoad": "9 kg",
            "pack": { "mass": "1.5 kg", "massFrom": "scale" } } ],
        "shared": [ { "id": "tent", "name": "Tent", "mass": "2 kg" },
                    { "id": "pot", "name": "Pot", "mass": "400 g", "massFrom": "scale" } ] }
      """;
  private static final String SPLIT =
      """
      { "format": "faircarry-split/1", "carries": [
        { "hiker": "ada", "pieces": ["pot"] }, { "hiker": "ben", "pieces": ["tent"] } ] }
      """;

  @TempDir private Path folder;

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private Run run(String readings, String... options) throws IOException {
    String[] arguments = new String[4 + options.length];
    arguments[0] = "weigh-in";
    arguments[1] = file("trip.json", TRIP);
    arguments[2] = file("split.json", SPLIT);
    arguments[3] = file("readings.json", readings);
    System.arraycopy(options, 0, arguments, 4, options.length);
    return Run.of(arguments);
  }

  private static String pack(String hiker, String mass) {
    return "{ \"kind\": \"whole-pack\", \"hiker\": \"" + hiker + "\", \"mass\": \"" + mass + "\" }";
  }

  @Test
  void everythingAgrees() throws IOException {
    // 816 + 2,000 + 400 g are 3,216 g, 7 lb 1.5 oz; 3,500 g for Ben.
    Run run =
        run("{ \"readings\": [" + pack("ada", "7 lb 1 oz") + "," + pack("ben", "3.5 kg") + "] }");
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("Everything agrees."), run::out);
  }

  @Test
  void whatDiffersIsToldAndWhatCouldExplainIt() throws IOException {
    // 1.8 lb are 816.466 g, so 599.534 g more: 299 thousandths of the kit's 2 kg, 734 of the pack.
    Run run = run("{ \"readings\": [" + pack("ada", "3816 g") + "] }", "--units", "metric");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code());
    assertTrue(
        run.out()
            .contains("Ada’s pack, packed  3216 g  3816 g      +600 g  labels could explain it"),
        run::out);
    String words = run.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("“Kit”, stated as 2000 g; it alone would be off by 29.9 %"), words);
    Run us = run("{ \"readings\": [" + pack("ada", "3816 g") + "] }", "--units", "us");
    // 599.534 g = 21.148 oz (NIST SP 811)
    assertTrue(us.out().contains("+1 lb 5.1 oz"), us::out);
  }

  @Test
  void whatIsTakenOverMakesATripThatIsReadAgain() throws IOException {
    String readings = "{ \"accept\": \"all\", \"readings\": [" + pack("ben", "5 kg") + "] }";
    Run run = run(readings, "--trip");
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("\"scale-rest\""), run::out);
    Run check = Run.of("check", file("now.json", run.out()), file("split.json", SPLIT), "--json");
    assertTrue(check.out().contains("\"loadGrams\" : 5000,"), check::out);
    Run json = run(readings, "--json");
    assertTrue(json.out().contains("\"kind\" : \"kit-added\""), json::out);
  }

  @Test
  void aSlipIsAskedAbout() throws IOException {
    Run run = run("{ \"accept\": \"all\", \"readings\": [" + pack("ben", "3.5 lb") + "] }");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, run.code());
    assertTrue(run.out().contains("are pounds and kilograms mixed"), run::out);
    assertTrue(run.out().contains("except what has to be looked at again"), run::out);
  }

  @Test
  void badInput() throws IOException {
    Run unknown = run("{ \"readings\": [" + pack("cleo", "3 kg") + "] }");
    assertEquals(ExitCode.BAD_INPUT, unknown.code());
    assertTrue(unknown.err().contains("/readings/0/hiker: unknown-hiker (cleo)"), unknown::err);
    assertEquals(ExitCode.BAD_INPUT, run("{ \"readings\": [] }", "--trip").code());
    assertEquals(ExitCode.BAD_INPUT, run("7").code());
    assertEquals(ExitCode.BAD_INPUT, Run.of("weigh-in", "nowhere.json", "x", "y").code());
  }
}
