package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.OpenTrip;
import dev.faircarry.solve.SplitSolver;
import dev.faircarry.solve.Watch;
import dev.faircarry.split.Outcome;
import dev.faircarry.split.Progress;
import dev.faircarry.trip.Trip;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;

/**
 * A search as its leader sees it: while it runs, when it is stopped, and when there is no split.
 */
@Tag("slow")
class SearchTest {
  private static final long FEW_STEPS = 200_000;

  @RegisterExtension final Browser browser = new Browser();
  @TempDir private Path directory;

  private final List<OpenTrip> served = new ArrayList<>();

  @AfterEach
  void end() {
    served.forEach(OpenTrip::close);
  }

  private OpenTrip served(OpenTrip trip) {
    served.add(trip);
    return trip;
  }

  private static String demo(String name) throws IOException {
    return Files.readString(Path.of("demo-data", name + ".json"));
  }

  /**
   * Finds a split as always, and then searches on in vain until it is told to stop. So the test
   * sees a search under way however fast the machine is.
   */
  private static Outcome searchedUntilStopped(Trip trip, long effortSteps, Watch watch) {
    final Outcome found = SplitSolver.solve(trip, FEW_STEPS, Watch.NONE);
    watch.progress(new Progress(Progress.Phase.PROVING, 171, 169, 0, FEW_STEPS));
    while (watch.signal() != Watch.Signal.STOP_BY_CALLER) {
      SplitSolver.solve(trip, FEW_STEPS, Watch.NONE);
    }
    return found;
  }

  /** In steps of 0.005 of target, the trip's grain: 171 are 0.855, and below 169 is 0.840. */
  @Test
  void aLongSearchTellsItsBestAndItsBoundAndStopsWhenAsked() throws IOException {
    OpenTrip trip =
        served(OpenTrip.unsplit(directory, demo("high-tarns"), SearchTest::searchedUntilStopped));
    Screen screen = browser.person(trip.port()).open(trip.leaderLink());
    button(screen, "Find the fairest split").click();
    screen.sees(
        "Best so far: the worst morning at 0.855 of target or less."
            + " No split can be at 0.840 or below.");
    assertTrue(buttons(screen, "Find the fairest split").isEmpty(), "two searches at once");
    screen.keep("laptop").size(Screen.Size.PHONE).keep("phone").size(Screen.Size.LAPTOP);
    button(screen, "Stop, keep the best so far").click();
    screen.sees("Agree on this split").sees("Nobody is above target");
    assertTrue(screen.all("progress").isEmpty(), screen::text);
  }

  /**
   * Stove with Mei, pot with the stove, no pot for Mei; the rule about the rope is not to blame.
   */
  @Test
  void rulesThatCannotAllHoldAreToldAndLiftingOneIsEnough() throws IOException {
    OpenTrip trip = served(OpenTrip.unsplit(directory, demo("impossible-rules")));
    Screen screen = browser.person(trip.port()).open(trip.leaderLink());
    screen.sees("Nothing is handed out yet");
    button(screen, "Find the fairest split").click();
    screen.sees("These cannot all hold together");
    assertEquals(3, buttons(screen, "Lift this rule").size(), screen::text);
    screen.keep("laptop").size(Screen.Size.PHONE).keep("phone").size(Screen.Size.LAPTOP);
    int before = trip.document().path("rules").size();
    button(screen, "Lift this rule").click();
    screen.sees("Agree on this split");
    assertEquals(before - 1, trip.document().path("rules").size());
    assertTrue(screen.text().contains("Nobody is above target"), screen::text);
  }

  private static List<WebElement> buttons(Screen screen, String words) {
    return screen.all("button").stream().filter(b -> b.getText().contains(words)).toList();
  }

  private static WebElement button(Screen screen, String words) {
    screen.until("no button “" + words + "”", () -> !buttons(screen, words).isEmpty());
    return buttons(screen, words).get(0);
  }
}
