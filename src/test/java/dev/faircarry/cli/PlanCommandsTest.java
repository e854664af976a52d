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
import org.junit.jupiter.params.provider.ValueSource;

/** The commands about the rest of a trip: provision, kit, take, effort. */
class PlanCommandsTest {
  private static final String WHOLE_TRIP = "demo-data/plans/whole-trip.json";
  private static final String OWN_KIT = "demo-data/plans/own-kit.json";
  private static final String WHAT_TO_TAKE = "demo-data/plans/what-to-take.json";

  /** One hiker and one thing to have, which costs 30; every need that is assumed is struck. */
  private static final String SAW =
      """
      {"format": "faircarry-trip/1", "name": "n", "days": 1,
       "hikers": [{"id": "x", "name": "Xi", "targetLoad": "10 kg"}],
       "plan": {"taking": {
         "needs": [{"covers": "saw", "atLeast": 1}, {"covers": "pot", "atLeast": "0 L"},
                   {"covers": "sleeping", "atLeast": 0}, {"covers": "flame", "atLeast": 0},
                   {"covers": "water-treatment", "atLeast": 0}, {"covers": "light", "atLeast": 0},
                   {"covers": "first-aid", "atLeast": 0}, {"covers": "repair", "atLeast": 0},
                   {"covers": "navigation", "atLeast": 0}],
         "offers": [{"id": "saw", "mass": "200 g", "price": "30", "covers": [{"need": "saw"}]}],
         "budget": "30.00"}}}
      """;

  @TempDir private Path folder;

  static Stream<Arguments> wrongCommandLines() {
    return Stream.of(
        Arguments.of("Missing required parameter", List.of("provision")),
        Arguments.of("Missing required parameter", List.of("kit")),
        Arguments.of("Missing required parameter", List.of("take")),
        Arguments.of("Missing required parameter", List.of("effort")),
        Arguments.of("Cannot read nowhere.json.", List.of("provision", "nowhere.json")),
        Arguments.of("Cannot read nowhere.json.", List.of("kit", OWN_KIT, "nowhere.json")),
        Arguments.of("Only one of FILE and SPLIT", List.of("kit", "-", "-")),
        Arguments.of("Only one of FILE and SPLIT", List.of("effort", "-", "-")),
        Arguments.of("--plot is loads or makeup.", List.of("kit", OWN_KIT, "--plot", "ring")),
        Arguments.of("--effort is a whole number", List.of("take", "-", "--effort", "0")),
        Arguments.of("--effort is a whole number", List.of("take", "-", "--effort", "5000001")),
        Arguments.of("--effort", List.of("take", "-", "--effort", "much")),
        Arguments.of("--units", List.of("provision", "-", "--units", "stones")),
        Arguments.of(
            "use one of naismith, naismith-langmuir, tobler.",
            List.of("effort", "-", "--time", "hurry")),
        Arguments.of(
            "use one of lcda, pandolf-santee.", List.of("effort", "-", "--cost", "guess")));
  }

  @ParameterizedTest
  @MethodSource("wrongCommandLines")
  void wrongCommandLinesAreBadInput(String said, List<String> arguments) {
    Run run = Run.reading(SAW, arguments.toArray(String[]::new));
    assertEquals(ExitCode.BAD_INPUT, run.code(), run::err);
    assertEquals("", run.out());
    assertTrue(run.err().contains(said), run::err);
  }

  @ParameterizedTest
  @ValueSource(strings = {"provision", "kit", "take", "effort"})
  void everyIssueIsToldWithItsPlace(String command) {
    String bad = SAW.replace("\"200 g\"", "\"200 stones\"").replace("\"30.00\"", "\"-1\"");
    Run run = Run.reading(bad, command, "-");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertEquals("", run.out());
    assertTrue(run.err().contains("/plan/taking/budget: negative (-1)"), run::err);
    assertTrue(run.err().contains("/plan/taking/offers/0/mass: unknown-unit (200 stones)"));
    Run json = Run.reading(bad, command, "-", "--json");
    assertEquals(ExitCode.BAD_INPUT, json.code());
    assertTrue(json.out().contains("\"pointer\" : \"/plan/taking/budget\""), json::out);
    for (String nothing : List.of("", "null", "[]", "{")) {
      assertEquals(ExitCode.BAD_INPUT, Run.reading(nothing, command, "-").code(), nothing);
    }
  }

  /**
   * 58 x 4 + 14 x 4 + 20 x 9 = 468 kcal in 100 g; 3100 - 700 kcal / 4.68 = 512.8 g, up to 513 g. A
   * cartridge has to be asked for again when somebody drops out, food does not.
   */
  @Test
  void provisionsAreToldWithTheirSources() {
    Run run = Run.of("provision", WHOLE_TRIP);
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("Day ration: One for each person and day: 513 g of food"));
    assertTrue(run.out().contains("stated in the plan"), run::out);
    assertTrue(run.out().contains("Ask again when somebody drops out."), run::out);
    Run json = Run.of("provision", WHOLE_TRIP, "--json");
    assertEquals(ExitCode.FINE, json.code());
    assertTrue(json.out().contains("\"plan-ration\""), json::out);
  }

  /** Fay: pack 1.31 kg, quilt 905 g, mat 420 g and so on; pack 1.1 kg and quilt 860 g claimed. */
  @Test
  void kitsAreLookedAt() {
    Run run = Run.of("kit", OWN_KIT);
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("claimed 1.10 kg, weighs 1.31 kg: Pack"), run::out);
    assertTrue(run.out().contains("claimed 0.86 kg, weighs 0.91 kg: Quilt"), run::out);
    assertTrue(run.out().contains("cost 470.00, 5 things without one"), run::out);
    assertTrue(run.out().contains("cost: goal 800.00 reached, by 330.00"), run::out);
    assertTrue(run.out().contains("not medical advice"), run::out);
    // 1.31 kg = 46.208 oz = 2 lb 14.2 oz (NIST SP 811: 1 oz = 28.349 523 125 g)
    assertTrue(Run.of("kit", OWN_KIT, "--units", "us").out().contains("weighs 2 lb 14.2 oz: Pack"));
  }

  /** With the split, what is shared counts too: 1.5 kg of shelter, 0.48 of cooker, two dinners. */
  @Test
  void kitsWithASplitHoldWhatIsShared() throws IOException {
    Run split = Run.of("split", OWN_KIT, "--json");
    Path made = Files.writeString(folder.resolve("split.json"), split.out());
    Run run = Run.of("kit", OWN_KIT, made.toString());
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("Shelter 1.50 kg"), run::out);
    assertFalse(Run.of("kit", OWN_KIT).out().contains("Shelter"));
    assertEquals(ExitCode.FINE, Run.of("effort", OWN_KIT, made.toString()).code());
    Path broken = Files.writeString(folder.resolve("broken.json"), "{\"format\": 1}");
    Run bad = Run.of("kit", OWN_KIT, broken.toString());
    assertEquals(ExitCode.BAD_INPUT, bad.code());
    assertTrue(bad.err().contains("/carries: missing"), bad::err);
  }

  @Test
  void picturesAreDrawn() {
    Run loads = Run.of("kit", OWN_KIT, "--plot", "loads");
    assertEquals(ExitCode.FINE, loads.code());
    assertTrue(loads.out().startsWith("<svg"), loads::out);
    assertTrue(Run.of("kit", OWN_KIT, "--plot", "MAKEUP").out().contains("</svg>"));
    Run bad = Run.reading("{}", "kit", "-", "--plot", "loads");
    assertEquals(ExitCode.BAD_INPUT, bad.code());
    assertFalse(bad.out().contains("<svg"));
  }

  /** Naismith: 15 km at 5 km/h and 500 m at 600 m/h, 3:50 h; 10 km and 900 m, 3:30 h. */
  @Test
  void walkingTimesAreTold() {
    Run run = Run.of("effort", OWN_KIT, "--time", "naismith", "--cost", "pandolf-santee");
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("day 1    3:50 h"), run::out);
    assertTrue(run.out().contains("day 2    3:30 h"), run::out);
    assertTrue(run.out().contains("Pandolf"), run::out);
    Run assumed = Run.of("effort", OWN_KIT);
    assertEquals(
        assumed.out(),
        Run.of("effort", OWN_KIT, "--time", "naismith-langmuir", "--cost", "lcda").out());
    assertEquals(ExitCode.FINE, Run.of("effort", "demo-data/whole-things.json").code());
  }

  /** Two shelters for 520.00 pass the budget of 300.00; one, with the lighter pot, is 298.00. */
  @Test
  void theChoiceWithinTheBudgetIsMarked() {
    Run run = Run.of("take", WHAT_TO_TAKE, "--with-splits");
    assertEquals(ExitCode.FINE, run.code(), run::err);
    assertTrue(run.out().contains("298.00 > buy pole-shelter, light-pot; bring tablets"), run::out);
    assertTrue(run.out().contains("Proved: no other choice is lighter"), run::out);
    assertTrue(run.out().contains("Worst load against target: "), run::out);
  }

  /** What exit codes say: fine, below the cheapest, not to be had, not proved within the effort. */
  @Test
  void exitCodesOfAChoice() {
    Run fine = Run.reading(SAW, "take", "-");
    assertEquals(ExitCode.FINE, fine.code(), fine::out);
    assertTrue(fine.out().contains("30.00 > buy saw; leave nothing"), fine::out);
    Run poor = Run.reading(SAW.replace("30.00", "29.99"), "take", "-");
    assertEquals(ExitCode.IMPOSSIBLE, poor.code());
    assertTrue(poor.out().contains("The budget lies below the cheapest of them."), poor::out);
    Run none = Run.reading(SAW.replace("\"need\": \"saw\"", "\"need\": \"axe\""), "take", "-");
    assertEquals(ExitCode.IMPOSSIBLE, none.code());
    assertTrue(none.out().contains("No choice meets the needs: saw."), none::out);
    assertTrue(none.out().contains("saw: asked 1, at most 0."), none::out);
    Run cut = Run.of("take", WHAT_TO_TAKE, "--effort", "1");
    assertEquals(ExitCode.OVER_CAP_OR_UNPROVED, cut.code(), cut::out);
  }

  @ParameterizedTest
  @ValueSource(strings = {"provision", "kit", "take", "effort"})
  void aBodyMassIsNotRepeatedWhenItIsWrong(String command) {
    String bad = SAW.replace("\"targetLoad\": \"10 kg\"", "\"bodyMass\": \"4321 kg\"");
    Run run = Run.reading(bad, command, "-");
    assertEquals(ExitCode.BAD_INPUT, run.code());
    assertFalse((run.out() + run.err()).contains("4321"), run::err);
  }
}
