package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.OpenTrip;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.print.PrintOptions;

/**
 * The screens of a trip, each as its people open it, on a phone and a laptop, in light and dark:
 * legible without barriers, no wider than the screen, nothing asked of anybody else.
 */
@Tag("slow")
class TripScreensTest {
  @RegisterExtension final Browser browser = new Browser();
  @TempDir private Path directory;
  private OpenTrip trip;

  @BeforeEach
  void start() throws IOException {
    trip = new OpenTrip(directory, Files.readString(Path.of("demo-data", "early-leaver.json")));
  }

  @AfterEach
  void end() {
    trip.close();
  }

  private Screen person(String link, String first) {
    return browser.person(trip.port()).open(link).sees(first);
  }

  /** What each screen of the leader shows of this trip. */
  @Test
  void everyScreenOfTheLeaderIsLegible() {
    Screen screen = person(trip.leaderLink(), "Nobody is above target");
    Map<String, String> shown =
        Map.of(
            "loads", "Find the fairest split",
            "people", "Quinn",
            "gear", "Tarp",
            "rules", "Rules",
            "change", "not coming",
            "weigh", "Whole pack of",
            "ready", "Can we leave?",
            "cards", "Print all cards",
            "links", "Links",
            "history", "History");
    shown.forEach(
        (name, text) -> {
          screen.size(Screen.Size.LAPTOP).open(trip.screen(name)).sees(text).keep(name + "-laptop");
          screen.size(Screen.Size.PHONE).keep(name + "-phone");
        });
  }

  /** Pat carries stove and pot, and hands both on at the first camp. */
  @Test
  void aHikerSeesTheOwnCard() {
    Screen screen = person(trip.link("pat"), "Your card");
    screen.sees("Stove").sees("give Stove to Quinn").sees("give Pot to Rosa");
    screen.sees("not medical advice");
    assertFalse(screen.text().contains("Tarp\n"), screen::text);
    screen.keep("card-laptop").size(Screen.Size.PHONE).keep("card-phone");
    screen.open(trip.screen("me")).sees("Keep my body mass private").keep("me-phone");
  }

  @Test
  void aViewerLooks() {
    Screen screen = person(trip.link(""), "Nobody is above target");
    assertTrue(screen.all("button").stream().noneMatch(b -> b.getText().contains("Agree")));
    screen.keep("viewer-laptop");
  }

  /** A token is never part of an address that is asked for. */
  @Test
  void noLinkIsInARequest() {
    String link = trip.leaderLink();
    String token = link.substring(link.lastIndexOf('/') + 1);
    Screen screen = person(link, "Nobody is above target");
    assertTrue(screen.traffic().requests().stream().noneMatch(url -> url.contains(token)));
    assertFalse(String.valueOf(screen.driver().getCurrentUrl()).contains(token));
  }

  /** A piece goes to somebody else by keyboard alone, and comes back by Undo. */
  @Test
  void aPieceIsMovedByKeyboard() {
    Screen screen = person(trip.leaderLink(), "Nobody is above target");
    WebElement block = screen.find(".block");
    screen.run("arguments[0].focus()", block);
    block.sendKeys(Keys.ENTER);
    WebElement give = screen.find(".giving button");
    screen.run("arguments[0].focus()", give);
    give.sendKeys(Keys.ENTER);
    screen.sees("Keep it so").keep("moved-laptop");
    button(screen, "Undo").click();
    screen.sees("Agreed on");
  }

  /** Three cards, two to a sheet. */
  @Test
  void cardsArePrintedTwoToASheet() {
    Screen screen = person(trip.leaderLink(), "Nobody is above target");
    screen.open(trip.screen("cards"));
    screen.until("no three cards", () -> screen.all(".card").size() == 3);
    screen.sees("Without Quinn");
    String content = screen.driver().print(new PrintOptions()).getContent();
    String pdf = new String(Base64.getDecoder().decode(content), StandardCharsets.ISO_8859_1);
    assertEquals(2, Pattern.compile("/Type /Page\\b(?!s)").matcher(pdf).results().count());
  }

  /** Pat's pack is 8 kg on the first morning; 8.02 kg is within the tolerance of 50 g. */
  @Test
  void aPackIsWeighedIn() {
    Screen screen = person(trip.leaderLink(), "Nobody is above target");
    screen.open(trip.screen("weigh")).sees("Whole pack of");
    screen.find("#scale").sendKeys("8.02 kg", Keys.ENTER);
    screen.sees("agrees").keep("weighed-phone");
    screen.find("#scale").sendKeys("17.6 kg", Keys.ENTER);
    screen.sees("Weigh again").keep("questioned-laptop");
  }

  @Test
  void somebodyDoesNotCome() {
    Screen screen = person(trip.leaderLink(), "Nobody is above target");
    screen.open(trip.screen("change")).sees("What now?");
    button(screen, "What now?").click();
    screen.until("nothing to accept", () -> !buttons(screen, "Accept").isEmpty());
    screen.keep("curve-laptop").size(Screen.Size.PHONE).keep("curve-phone");
    button(screen, "Accept").click();
    screen.sees("Done");
  }

  private static List<WebElement> buttons(Screen screen, String words) {
    return screen.all("button").stream().filter(b -> b.getText().contains(words)).toList();
  }

  private static WebElement button(Screen screen, String words) {
    return buttons(screen, words).get(0);
  }
}
