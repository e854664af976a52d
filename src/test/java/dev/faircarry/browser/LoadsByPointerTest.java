package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.faircarry.http.OpenTrip;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** Blocks are dragged from column to column, by mouse and by finger. */
@Tag("slow")
class LoadsByPointerTest {
  /**
   * Everybody's own kit is 6 kg of a target of 10 kg. The only fair split gives everybody 2 kg: the
   * stove is Ada's by the rule, the pot comes with it, and Ben carries his own tent: 0.800 each.
   */
  private static final String TRIP =
      """
      {"format": "faircarry-trip/1", "name": "Ridge and valley", "days": 1,
       "hikers": [
         {"id": "ada", "name": "Ada", "targetLoad": "10 kg", "pack": {"mass": "6 kg"}},
         {"id": "ben", "name": "Ben", "targetLoad": "10 kg", "pack": {"mass": "6 kg"}},
         {"id": "cem", "name": "Cem", "targetLoad": "10 kg", "pack": {"mass": "6 kg"}}],
       "shared": [
         {"id": "tent", "name": "Tent", "mass": "2 kg", "owner": "ben"},
         {"id": "rope", "name": "Rope", "mass": "2 kg", "owner": "cem"},
         {"id": "stove", "name": "Stove", "mass": "1 kg"},
         {"id": "pot", "name": "Pot", "mass": "1 kg"}],
       "rules": [{"id": "r1", "kind": "pinned", "pieces": ["stove"], "hiker": "ada"}]}
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

  private Screen leader() {
    Screen screen = browser.person(trip.port()).open(trip.leaderLink());
    return stands(screen, "ada", "0.800").sees("Agreed on");
  }

  /** Waits until a hiker's column says a ratio. */
  private static Screen stands(Screen screen, String hiker, String ratio) {
    return screen.until(
        hiker + " is not at " + ratio,
        () -> {
          List<WebElement> said = screen.all(column(hiker) + " .standing b");
          return said.size() == 1 && said.get(0).getText().equals(ratio);
        });
  }

  private static String column(String hiker) {
    return ".column[data-hiker=" + hiker + "]";
  }

  private static String block(String piece) {
    return ".block[data-piece=" + piece + "]";
  }

  /** Takes a block up with the mouse and holds it over a column. */
  private static void hold(Screen screen, String piece, String to) {
    screen.run("document.querySelector('.plot').scrollIntoView({block: 'center'})");
    new Actions(screen.driver())
        .moveToElement(screen.find(block(piece)))
        .clickAndHold()
        .moveToElement(screen.find(column(to) + " .stack"))
        .perform();
    screen.find(".dragged");
    screen.find(column(to) + ".over");
  }

  private static void drag(Screen screen, String piece, String to) {
    hold(screen, piece, to);
    new Actions(screen.driver()).release().perform();
    screen.find(column(to) + " " + block(piece));
    assertEquals(List.of(), screen.all(".dragged"));
  }

  private static boolean mayBeKept(Screen screen) {
    return screen.all("button").stream()
        .anyMatch(each -> each.getText().equals("Keep it so") && each.isEnabled());
  }

  @Test
  void loadsAreToldAtOnceAndUndoTakesItBack() {
    Screen screen = leader();
    drag(screen, "pot", "cem");
    stands(screen, "cem", "0.900");
    stands(screen, "ada", "0.700");
    stands(screen, "ben", "0.800");
    screen.sees("The highest is Cem, at 0.900 of target.");
    screen.sees("this is worse by 0.100 of a target");
    screen.press("1 handover since the kept split").sees("Ada gives “Pot” to Cem (2 lb 3 oz).");
    drag(screen, "pot", "ben");
    drag(screen, "rope", "ben");
    // 6 and 2 of his own, 2 and 1 of the others'.
    stands(screen, "ben", "1.100");
    screen.find(column("ben") + ".above");
    screen.sees("Ben is the most above target, at 1.100 of it; nobody else is.");
    screen.keep("above");
    screen.press("Undo");
    stands(screen, "ben", "0.900");
    screen.run("document.activeElement.blur()");
    screen.find("body").sendKeys(Keys.chord(Keys.CONTROL, "z"));
    stands(screen, "cem", "0.900");
    screen.press("Undo");
    stands(screen, "ada", "0.800");
    screen.sees("Agreed on");
    screen.press("Do again");
    stands(screen, "cem", "0.900");
    screen.until("cannot be kept", () -> mayBeKept(screen));
    screen.press("Keep it so").sees("Made by hand");
  }

  @Test
  void brokenRulesAreToldAtOnce() {
    Screen screen = leader();
    drag(screen, "stove", "ben");
    stands(screen, "ben", "0.900");
    screen
        .sees("This cannot be carried so: Ben carries “Stove” on day 1.")
        .sees("What stands in the way");
    assertFalse(mayBeKept(screen));
    screen.keep("broken");
    drag(screen, "stove", "ada");
    stands(screen, "ada", "0.800");
    screen.until("still broken", () -> !screen.text().contains("This cannot be carried so"));
  }

  @Test
  void escapeLetsGo() {
    Screen screen = leader();
    hold(screen, "pot", "cem");
    screen.picture("held");
    new Actions(screen.driver()).sendKeys(Keys.ESCAPE).release().perform();
    screen.until("still held", () -> screen.all(".dragged").isEmpty());
    screen.find(column("ada") + " " + block("pot"));
    stands(screen, "cem", "0.800").sees("Agreed on");
  }

  /** A finger that rests takes the block up; the page does not scroll away under it. */
  @Test
  void fingerDrags() {
    Screen screen = leader().size(Screen.Size.PHONE);
    screen.run("document.querySelector('.plot').scrollIntoView({block: 'center'})");
    touch(screen, "touchStart", block("pot"));
    screen.find(".dragged");
    touch(screen, "touchMove", column("cem") + " .stack");
    screen.find(column("cem") + ".over");
    screen.picture("held");
    touch(screen, "touchEnd", "");
    stands(screen, "cem", "0.900");
    screen.keep("phone");
  }

  /** One event of a finger in the middle of something. */
  private static void touch(Screen screen, String what, String where) {
    List<?> points =
        where.isEmpty()
            ? List.of()
            : (List<?>)
                screen.run(
                    "const r = document.querySelector(arguments[0]).getBoundingClientRect();"
                        + " return [{x: r.x + r.width / 2, y: r.y + r.height / 2}]",
                    where);
    screen
        .driver()
        .executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", what, "touchPoints", points));
  }

  /** Somebody else's change comes in under a split that is being moved about. */
  @Test
  void movesStayWhenTheTripChanges() {
    Screen screen = leader();
    drag(screen, "pot", "cem");
    stands(screen, "cem", "0.900");
    trip.change("/shared/tent", "{\"mass\": \"2.5 kg\"}");
    stands(screen, "ben", "0.850");
    stands(screen, "cem", "0.900");
    screen.find(".news");
    screen.until("cannot be kept", () -> mayBeKept(screen));
  }
}
