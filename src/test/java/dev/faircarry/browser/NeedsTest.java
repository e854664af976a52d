package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import dev.faircarry.http.OpenTrip;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** What a group must have, who covers it, and what is there twice. */
@Tag("slow")
class NeedsTest {
  /** For two people and one day, with two stoves where one is needed, and nothing to mend with. */
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Up and back", "days": 1,
       "hikers": [
         {"id": "ada", "name": "Ada", "bodyMass": "61.5 kg", "pack": {"mass": "1.2 kg"},
          "kit": [{"id": "lamp", "name": "Headlamp", "mass": "60 g", "covers": ["light"]}]},
         {"id": "ben", "name": "Ben", "targetLoad": "14 kg", "pack": {"mass": "1.5 kg"},
          "kit": [{"id": "lamp", "name": "Hand lamp", "mass": "90 g", "covers": ["light"]},
                  {"id": "burner", "name": "Spirit burner", "mass": "130 g", "covers": ["flame"]}]}],
       "shared": [
         {"id": "stove", "name": "Gas stove", "mass": "210 g", "covers": ["flame"]},
         {"id": "pot", "name": "Pot", "mass": "410 g", "volume": "1.5 L", "covers": ["pot"]},
         {"id": "filter", "name": "Filter", "mass": "110 g", "covers": ["water-treatment"]},
         {"id": "tablets", "name": "Tablets", "mass": "20 g", "covers": ["water-treatment"]},
         {"id": "aid", "name": "First aid", "mass": "390 g", "covers": ["first-aid"]},
         {"id": "map", "name": "Map", "mass": "90 g", "covers": ["navigation"]}]}
      """;

  @RegisterExtension final Browser browser = new Browser();
  @TempDir private Path directory;
  private OpenTrip trip;

  @BeforeEach
  void start() throws IOException {
    trip = new OpenTrip(directory, TRIP);
  }

  @AfterEach
  void end() {
    trip.close();
  }

  private Screen needs() {
    Screen screen = browser.person(trip.port()).open(trip.leaderLink()).sees("Nobody is above");
    screen.open(trip.screen("needs"));
    return screen.sees("Missing or not enough: mending things. More than is needed: a stove.");
  }

  @Test
  void whatIsMissingAndWhatIsThereTwiceIsLegible() {
    Screen screen = needs();
    // Half a litre of pot for each of two people; one stove for up to four.
    screen.sees("1 L needed").sees("1 needed, 2 there");
    screen.keep("laptop").size(Screen.Size.PHONE).keep("phone");
  }

  @Test
  void oneOfTwoStovesIsTakenAndTheOtherStaysAtHome() {
    Screen screen = needs();
    button(screen, "Take this one: Gas stove").click();
    screen.sees("comes along");
    button(screen, "Leave this one at home: Spirit burner of Ben").click();
    screen.until("a stove is still doubled", () -> !screen.text().contains("More than is needed"));
    JsonNode written = trip.document();
    assertEquals("stove", written.at("/plan/taking/keep/0").asText());
    assertEquals(1, written.at("/hikers/1/kit").size());
    assertEquals("lamp", written.at("/hikers/1/kit/0/id").asText());
    screen.keep("settled");
  }

  @Test
  void theGroupSaysWhatItNeeds() {
    Screen screen = needs();
    WebElement mending = screen.find("[data-pointer='need-repair']");
    mending.sendKeys(Keys.chord(Keys.CONTROL, "a"), "0", Keys.ENTER);
    screen.until("mending is still asked for", () -> !screen.text().contains("ending things"));
    screen.find("[data-pointer='new-need']").sendKeys("whistle", Keys.ENTER);
    screen.sees("Missing or not enough: whistle.");
    JsonNode needs = trip.document().at("/plan/taking/needs");
    assertEquals(0, needs.at("/0/atLeast").asInt());
    assertEquals("whistle", needs.at("/1/covers").asText());
    assertEquals(1, needs.at("/1/atLeast").asInt());
  }

  /** The question goes out without any body mass, so that it can be asked whoever hides theirs. */
  @Test
  void noBodyMassIsAskedWith() {
    Screen screen = needs();
    List<String> sent = screen.traffic().sent("/v1/choices");
    assertTrue(sent.stream().anyMatch(body -> body.contains("Gas stove")), "no question seen");
    assertTrue(sent.stream().noneMatch(body -> body.contains("61.5")), "a body mass is sent");
  }

  private static WebElement button(Screen screen, String words) {
    screen.until("no button " + words, () -> match(screen, words).length > 0);
    return match(screen, words)[0];
  }

  private static WebElement[] match(Screen screen, String words) {
    return screen.all("button").stream()
        .filter(
            b ->
                words.equals(
                    String.valueOf(b.getDomProperty("textContent"))
                        .strip()
                        .replaceAll("\\s+", " ")))
        .toArray(WebElement[]::new);
  }
}
