package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.OpenTrip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** What the service refuses is told at the field it concerns, and what was typed stays there. */
@Tag("slow")
class FieldIssuesTest {
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

  @Test
  void newTripTellsEverythingAtOnce() {
    Screen screen = browser.person(trip.port()).open("/#/new").sees("A new trip");
    screen.fill("/name", "Lake loop").fill("/days", "0");
    screen.fill("/hikers/0/name", "Ada").fill("/hikers/0/bodyMass", "sixty");
    screen.fill("/hikers/1/name", "Ben").fill("/hikers/1/bodyMass", "carries 12 stones");
    screen.find("#shared-table").sendKeys("Tent, 2 lb 5 oz\nPot, heavy");
    screen.press("Make the trip");
    assertTrue(screen.issueAt("/days").contains("0 is outside 1 to 30"), screen::text);
    String mass = screen.issueAt("/hikers/0/bodyMass");
    assertTrue(mass.contains("Write a mass"), mass);
    assertFalse(mass.contains("sixty"), mass);
    screen.issueAt("/hikers/1/targetLoad");
    screen.find("#shared-table[aria-invalid=true]");
    assertTrue(screen.find("#shared-issues").getText().contains("“Pot”: \"heavy\""), screen::text);
    assertEquals(List.of(), screen.all(".trouble"), "nothing is told apart from its field");
    screen.shows("/days", "0").shows("/hikers/0/bodyMass", "sixty");
    screen.shows("/hikers/1/targetLoad", "carries 12 stones").keep("laptop");
    screen.size(Screen.Size.PHONE).keep("phone");
    screen.fill("/days", "2").fill("/hikers/0/bodyMass", "60 kg");
    screen.fill("/hikers/1/targetLoad", "carries 12 kg");
    screen.find("#shared-table").clear();
    screen.find("#shared-table").sendKeys("Tent, 2 lb 5 oz\nPot, 500 g");
    screen.press("Make the trip").sees("A body mass sets the target");
  }

  @Test
  void refusedChangeStaysInItsField() {
    Screen screen = browser.person(trip.port()).open(trip.leaderLink()).sees("own kit");
    screen.open(trip.screen("gear")).fill("/shared/3/mass", "12 blups", Keys.TAB);
    String issue = screen.issueAt("/shared/3/mass");
    assertTrue(issue.contains("12 blups") && issue.contains("not known"), issue);
    assertEquals(1, screen.all("[aria-invalid=true]").size());
    screen.shows("/shared/3/mass", "12 blups").keep("gear");
    screen.fill("/shared/3/mass", "1.1 kg", Keys.TAB);
    screen.until("still an issue", () -> screen.all("[aria-invalid=true]").isEmpty());
    screen.shows("/shared/3/mass", "1.1 kg");
    assertTrue(trip.document().toString().contains("1.1 kg"));
    screen.open(trip.screen("people")).fill("/hikers/1/leavesAfterDay", "7", Keys.TAB);
    assertTrue(screen.issueAt("/hikers/1/leavesAfterDay").contains("no day 7"), screen::text);
    screen.keep("people");
  }

  /**
   * A table with a bad row in the middle: what is right is taken, the rest waits for a correction.
   */
  @Test
  void badRowOfATableWaitsToBePutRight() {
    Screen screen = browser.person(trip.port()).open(trip.leaderLink()).sees("own kit");
    screen.open(trip.screen("gear"));
    screen.paste(
        screen.field("/shared/4/name"), "Saw,400 g\nMug,light\nBrush,\"1,5 oz\"\nSoap,50 g");
    screen.shows("/shared/4/name", "Saw").shows("/shared/5/name", "Mug");
    assertTrue(screen.issueAt("/shared/5/mass").contains("\"light\""), screen::text);
    screen.sees("2 more rows of the table: Brush and Soap").keep("waiting");
    screen.fill("/shared/5/mass", "90 g", Keys.ENTER);
    screen.shows("/shared/6/mass", "1.5 oz").shows("/shared/7/name", "Soap");
    screen.until("still waiting", () -> !screen.text().contains("of the table:"));
  }

  @Test
  void hikersAreToldTooAndTheirMassIsNotRepeated() {
    Screen screen = browser.person(trip.port()).open(trip.link("quinn")).sees("Your card");
    screen.open(trip.screen("me")).fill("/hikers/1/bodyMass", "61 kilos or so", Keys.TAB);
    String issue = screen.issueAt("/hikers/1/bodyMass");
    assertFalse(issue.contains("61"), issue);
    screen.shows("/hikers/1/bodyMass", "61 kilos or so").keep("me");
  }
}
