package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

/**
 * Two people change one trip at once. Whether the first one's change has come to the second one's
 * screen before the second one is done makes no difference, and these tests do not ask.
 */
@Tag("slow")
class TwoLeadersTest {
  private static final String ROPE = "/shared/1";
  private static final String POT = "/shared/3";

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

  private Screen leader() {
    Screen screen = browser.person(trip.port()).open(trip.leaderLink()).sees("own kit");
    return screen.open(trip.screen("gear")).shows(POT + "/name", "Pot");
  }

  /** Waits until the service has taken something. */
  private void kept(Screen screen, String text) {
    screen.until("“" + text + "” is not kept", () -> trip.document().toString().contains(text));
  }

  @Test
  void eachSeesWhatTheOtherChanges() {
    Screen one = leader();
    Screen other = leader();
    one.fill(POT + "/mass", "1.2 kg", Keys.TAB);
    other.shows(POT + "/mass", "1.2 kg").sees("A leader changed “Pot”.").keep("news");
    other.fill(ROPE + "/name", "Long rope", Keys.TAB);
    one.shows(ROPE + "/name", "Long rope");
  }

  @Test
  void changesOfDifferentThingsBothStandAndTypedTextStays() {
    Screen one = leader();
    Screen other = leader();
    other.fill(ROPE + "/mass", "1.9");
    one.fill(POT + "/mass", "1.2 kg", Keys.TAB);
    kept(one, "1.2 kg");
    other.find(".news");
    other.shows(ROPE + "/mass", "1.9").shows(POT + "/mass", "1.2 kg");
    other.field(ROPE + "/mass").sendKeys(" kg", Keys.TAB);
    kept(other, "1.9 kg");
    assertTrue(trip.document().toString().contains("1.2 kg"));
    assertEquals(List.of(), other.all(".conflict"));
  }

  @Test
  void staleEditIsPutToItsAuthor() {
    Screen one = leader();
    Screen other = leader();
    other.fill(POT + "/mass", "950 g");
    one.fill(POT + "/mass", "1.2 kg", Keys.TAB);
    kept(one, "1.2 kg");
    other.field(POT + "/mass").sendKeys(Keys.TAB);
    other.sees("While you changed the mass of “Pot”, somebody else did too");
    String asked = other.find(".conflict").getText();
    assertTrue(asked.contains("Yours\nmass: 950 g"), asked);
    assertTrue(asked.contains("As it is now\nmass: 1.2 kg"), asked);
    other.shows(POT + "/mass", "950 g").keep("laptop");
    other.size(Screen.Size.PHONE).keep("phone");
    other.press("Leave it as it is").shows(POT + "/mass", "1.2 kg");
    assertTrue(trip.document().toString().contains("1.2 kg"));

    other.fill(POT + "/mass", "950 g");
    one.fill(POT + "/mass", "1.3 kg", Keys.TAB);
    kept(one, "1.3 kg");
    other.field(POT + "/mass").sendKeys(Keys.TAB);
    other.press("Put yours in its place");
    kept(other, "950 g");
    one.shows(POT + "/mass", "950 g");
    other.until("still asked", () -> other.all(".conflict").isEmpty());
  }
}
