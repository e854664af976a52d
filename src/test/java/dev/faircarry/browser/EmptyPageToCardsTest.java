package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.faircarry.http.KeptService;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** A leader's whole evening: from the empty page to cards on paper. */
@Tag("slow")
class EmptyPageToCardsTest {
  @RegisterExtension final Browser browser = new Browser();
  @TempDir private Path directory;
  private KeptService service;

  @BeforeEach
  void start() throws IOException {
    service = new KeptService(directory, Optional.empty(), false);
  }

  @AfterEach
  void end() {
    service.close();
  }

  /**
   * Ada may carry a fifth of 60 kg, Ben and Cem aim at 10 kg, and empty packs are 1 kg each. Stove
   * and pot are 1048.9 g and 1050 g, tarp and rope 2 kg each. With stove and pot in Ada's pack she
   * is at 3.099 / 12 = 0.258, and Ben and Cem at 3 / 10 = 0.300 with a big thing each. In their
   * packs stove and pot would make 0.310, and any three things together more.
   */
  @Test
  void wholeJob() {
    Screen leader = browser.person(service.port()).open("/").sees("Who carries what");
    leader.press("Begin a trip").sees("A new trip");
    leader.fill("/name", "Saddle and shore").fill("/days", "2");
    leader.paste(
        leader.field("/hikers/0/name"),
        """
        Name\tBody mass\tEmpty pack
        Ada\t60 kg\t1 kg
        Ben\tcarries 10 kg\t1 kg
        Cem\tcarries 10 kg\t1 kg
        """);
    leader.shows("/hikers/2/name", "Cem").shows("/hikers/0/bodyMass", "60 kg").keep("new");
    leader.press("Make the trip").sees("Masses as they stand on the label");

    leader
        .fill("/shared/0/name", "Stove", Keys.TAB)
        .fill("/shared/0/mass", "2 lb 5 oz", Keys.ENTER);
    leader.shows("/shared/0/mass", "2 lb 5 oz").shows("/shared/1/name", "");
    // The cursor is where the next thing is typed.
    leader.until("no cursor", () -> "/shared/1/name".equals(atCursor(leader)));
    leader.driver().switchTo().activeElement().sendKeys("Pot", Keys.TAB, "1.05 kg", Keys.ENTER);
    leader.shows("/shared/1/mass", "1.05 kg").shows("/shared/2/name", "");
    leader.paste(
        leader.field("/shared/2/name"), "Thing,Mass (g)\nTarp,2000\n\"Rope, long\",2 kg\n");
    leader.shows("/shared/3/name", "Rope, long").shows("/shared/2/mass", "2000 g");
    leader.shows("/shared/0/mass", "2 lb 5 oz").keep("gear");

    leader.press("Loads").press("Find the fairest split");
    leader.sees("Nobody is above target on any morning").sees("at 0.300 of target");
    leader.sees("Proved: no split is fairer").keep("loads");
    leader.press("Agree on this split").sees("Agreed on");

    leader.press("Cards").sees("Print all cards");
    leader.until("no three cards", () -> leader.all(".card").size() == 3);
    // With nothing but their packs left at home, somebody takes over what the missing one had.
    for (String hiker : List.of("Ada", "Ben", "Cem")) {
      leader.until(hiker + " is not missed", () -> missed(leader, hiker) == 2);
    }
    assertEquals(List.of("Stove", "Pot"), things(leader, "Ada"));
    assertEquals(1, things(leader, "Ben").size());
    leader.keep("cards");
    assertEquals(2, leader.pagesOnPaper("cards"), "three cards, two to a sheet");
  }

  private static String atCursor(Screen screen) {
    return String.valueOf(
        screen.driver().switchTo().activeElement().getDomAttribute("data-pointer"));
  }

  private static long missed(Screen screen, String hiker) {
    return screen.all(".card strong").stream()
        .filter(each -> each.getText().equals("Without " + hiker + ":"))
        .count();
  }

  private static List<String> things(Screen screen, String hiker) {
    return screen.all(".card").stream()
        .filter(card -> card.findElement(By.tagName("h2")).getText().equals(hiker))
        .flatMap(card -> card.findElements(By.className("thing")).stream())
        .map(WebElement::getText)
        .toList();
  }

  /**
   * One click changes every computed mass; what was entered stays as it was entered. A tarp of 2 kg
   * is 70.5 ounces, and the nearest whole pounds and ounces are 4 lb 7 oz.
   */
  @Test
  void unitsAreSwitched() {
    Screen leader = browser.person(service.port()).open("/#/new").sees("A new trip");
    leader.fill("/name", "One night").fill("/days", "1").fill("/hikers/0/name", "Ada");
    leader.fill("/hikers/0/bodyMass", "60 kg").fill("/hikers/0/pack/mass", "16");
    leader.find("#shared-table").sendKeys("Tarp, 2 kg\nStove, 2 lb 5 oz\nPot, 10");
    leader.press("Make the trip").shows("/hikers/0/pack/mass", "16 oz");
    leader.press("Loads").press("Find the fairest split").sees("Proved");
    leader.find(".block[title='Tarp, 4 lb 7 oz']");
    // 453.6 g of pack, 2000, 1048.9 and 283.5 g of gear: 3786 g, or 133.5 ounces.
    assertEquals("8.3 lb", leader.find(".standing span").getText());
    leader.press("Ada, 8 lb 6 oz, 0.316 of target, 3 kinds of shared things");
    leader.sees("8 lb 6 oz in the pack").keep("pounds");
    leader
        .press("Units: lb, oz")
        .sees("3.79 kg in the pack, 454 g of it own kit")
        .keep("kilograms");
    leader.find(".block[title='Tarp, 2.00 kg']");
    assertEquals("3.8 kg", leader.find(".standing span").getText());
    assertFalse(leader.find("main").getText().contains(" oz"), leader::text);
    leader
        .press("Shared gear")
        .shows("/shared/1/mass", "2 lb 5 oz")
        .shows("/shared/2/mass", "10 oz");
    leader.press("Units: kg, g").press("Loads").find(".block[title='Tarp, 4 lb 7 oz']");
  }
}
