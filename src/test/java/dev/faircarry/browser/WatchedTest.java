package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.RunningService;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.RegisterExtension;

/** What the other tests rely on does see faults: each is made on purpose and forgotten again. */
@Tag("slow")
@ExtendWith(RunningService.class)
class WatchedTest {
  @RegisterExtension final Browser browser = new Browser();

  private Screen opened() {
    return browser.person(RunningService.port()).open("/").sees("Faircarry");
  }

  private static void told(Screen screen, String part) {
    screen.until(
        "no complaint about " + part,
        () -> screen.traffic().complaints().stream().anyMatch(told -> told.contains(part)));
    assertThrows(AssertionError.class, screen::clean);
    screen.traffic().forget();
  }

  @Test
  void errorsOfTheConsoleAreSeen() {
    Screen screen = opened();
    screen.run("console.error('a made-up fault')");
    told(screen, "a made-up fault");
  }

  @Test
  void whatThePolicyRefusesIsSeen() {
    Screen screen = opened();
    screen.run(
        "const s = document.createElement('style'); s.textContent = 'p {color: red}';"
            + " document.head.append(s)");
    told(screen, "Content Security Policy");
  }

  @Test
  void requestsThatLeaveTheOriginAreSeenAndGoNowhere() {
    Screen screen = opened();
    screen.run("location.href = 'http://elsewhere.invalid/'");
    screen.until(
        "the request is not seen",
        () -> screen.traffic().requests().contains("http://elsewhere.invalid/"));
    assertThrows(AssertionError.class, screen::clean);
    screen.open("/").sees("Faircarry");
    screen.traffic().forget();
  }

  @Test
  void barriersAreSeen() {
    Screen screen = opened();
    assertEquals(List.of(), Axe.violations(screen.driver()));
    screen.run("document.body.append(document.createElement('input'))");
    List<String> found = Axe.violations(screen.driver());
    assertTrue(found.stream().anyMatch(words -> words.startsWith("label: ")), found.toString());
  }

  @Test
  void whatIsTooWideIsSeen() {
    Screen screen = opened();
    screen.run("document.querySelector('main').style.minWidth = '4000px'");
    assertThrows(AssertionError.class, () -> screen.keep("too-wide"));
  }
}
