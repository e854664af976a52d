package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Packs on the scale, and what a hiker keeps to themselves. */
@Tag("slow")
class ScaleAndMeTest {
  @RegisterExtension final Browser browser = new Browser();
  @TempDir Path directory;
  private Group group;

  @BeforeEach
  void begin() {
    group = new Group(directory).agreed();
  }

  @AfterEach
  void end() {
    group.close();
  }

  @Test
  void privateBodyMassIsNotInWhatTheLeaderGets() {
    Screen asha = browser.person(group.service.port()).size(Screen.Size.PHONE);
    asha.open(group.address(group.link("asha"))).sees("Your card");
    asha.open("/#/t/" + group.id() + "/me").sees("About you, Asha").keep("me");
    assertTrue(group.service.get(group.trip, group.leader).body().contains("58 kg"));
    asha.press("Keep my body mass private").sees("Your body mass is private").keep("private");

    Screen leader = browser.person(group.service.port());
    leader.open(group.address(group.leader)).sees("Over the two passes");
    leader.open("/#/t/" + group.id() + "/people").sees("Who would rather not say");
    assertEquals(List.of(), fieldsWith(leader, "58"));
    leader.open("/#/t/" + group.id() + "/cards").sees("Without Bo:");
    leader.open("/#/t/" + group.id() + "/loads").sees("own kit");
    leader.open("/#/t/" + group.id() + "/ready").sees("the body mass is not shown to you");
    List<String> bodies = leader.traffic().bodies();
    assertTrue(bodies.stream().anyMatch(body -> body.contains("Tomás")), "nothing was listened to");
    // Her target is a fifth of 58 kg. Tomas's, of 81 kg, is told, so targets would be seen.
    assertTrue(bodies.stream().anyMatch(body -> body.contains("\"targetGrams\" : 16200")));
    for (String body : bodies) {
      assertFalse(body.contains("58 kg"), body);
      assertFalse(body.contains("\"targetGrams\" : 11600"), body);
    }
  }

  /** Typed line by line or pasted from a spreadsheet, by the hiker's own link. */
  @Test
  void hikersEnterTheirKit() {
    Screen bo = browser.person(group.service.port()).size(Screen.Size.PHONE);
    bo.open(group.address(group.link("bo"))).sees("Your card");
    bo.open("/#/t/" + group.id() + "/me").shows("/hikers/2/kit/0/name", "Mat");
    bo.fill("/hikers/2/kit/1/name", "Quilt", Keys.TAB);
    bo.fill("/hikers/2/kit/1/mass", "1 lb 7 oz", Keys.ENTER);
    bo.shows("/hikers/2/kit/1/mass", "1 lb 7 oz").shows("/hikers/2/kit/2/name", "");
    bo.paste(bo.field("/hikers/2/kit/2/name"), "Rain shell\t0.31 kg\nHat\t2.5 oz");
    bo.shows("/hikers/2/kit/2/mass", "0.31 kg").shows("/hikers/2/kit/3/name", "Hat").keep("kit");
    String seen = group.service.get(group.trip, group.leader).body();
    assertTrue(seen.contains("1 lb 7 oz") && seen.contains("2.5 oz"), seen);
  }

  /** Labels of the fields whose text contains something. */
  private static List<?> fieldsWith(Screen screen, String text) {
    return (List<?>)
        screen.run(
            "return [...document.querySelectorAll('input')].filter(e =>"
                + " e.value.includes(arguments[0])).map(e => e.labels[0].textContent)",
            text);
  }

  @Test
  void readingIsAnsweredAtOnce() {
    Screen leader = browser.person(group.service.port()).size(Screen.Size.PHONE);
    leader.open(group.address(group.leader)).sees("Over the two passes");
    leader.open("/#/t/" + group.id() + "/weigh").sees("Weigh-in").keep("weigh");
    leader.find("#scale").sendKeys("24.5 kg\n");
    leader.find(".reading");
    leader.keep("read");
  }
}
