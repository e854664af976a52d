package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.faircarry.http.RunningService;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The pages that need no trip. */
@Tag("slow")
@ExtendWith(RunningService.class)
class FirstPagesTest {
  @RegisterExtension final Browser browser = new Browser();

  @Test
  void thePageOneArrivesAtIsLegibleOnEveryScreen() {
    Screen screen = browser.person(RunningService.port());
    screen.open("/").sees("Faircarry").keep("laptop");
    screen.size(Screen.Size.PHONE).keep("phone");
  }

  @Test
  void theContractCanBeBrowsed() {
    Screen screen = browser.person(RunningService.port());
    screen.open("/docs");
    screen.find(".opblock-summary");
    assertEquals("Faircarry: how to ask it", screen.driver().getTitle());
    screen.picture("docs");
  }

  @Test
  void whatCanFailIsListed() {
    Screen screen = browser.person(RunningService.port());
    screen.open("/problems").sees("too-large").keep("problems");
  }
}
