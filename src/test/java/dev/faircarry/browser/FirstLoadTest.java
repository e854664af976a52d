package dev.faircarry.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.faircarry.http.RunningService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.RegisterExtension;

/**
 * What the first visit costs, with nothing kept in the browser. The size is held; how long it takes
 * depends on the machine and is only written down, in {@code target/first-load.txt}.
 */
@Tag("slow")
@ExtendWith(RunningService.class)
class FirstLoadTest {
  private static final long MOST_BYTES = 200_000;

  /** The template library alone is more than this: less would mean that something was kept. */
  private static final long FEWEST_BYTES = 10_000;

  private static final String DRAWN =
      "return performance.getEntriesByName('first-contentful-paint')[0].startTime";

  @RegisterExtension final Browser browser = new Browser();

  @Test
  void theFirstLoadIsSmall() throws IOException {
    Screen screen = browser.person(RunningService.port());
    String origin = "http://127.0.0.1:" + RunningService.port();
    screen
        .driver()
        .executeCdpCommand(
            "Storage.clearDataForOrigin", Map.of("origin", origin, "storageTypes", "all"));
    screen.driver().executeCdpCommand("Network.clearBrowserCache", Map.of());
    screen.traffic().forget();
    screen.open("/").find("a.button");
    final double usable = ((Number) screen.run("return performance.now()")).doubleValue();
    screen.until(
        "nothing is drawn", () -> screen.run(DRAWN.replace("[0].startTime", "[0]")) != null);
    double drawn = ((Number) screen.run(DRAWN)).doubleValue();
    Traffic traffic = screen.traffic();
    Files.writeString(
        Path.of("target", "first-load.txt"),
        String.format(
            Locale.ROOT,
            "%d requests, %d bytes; drawn after %.0f ms, usable after at most %.0f ms%n",
            traffic.requests().size(),
            traffic.encodedBytes(),
            drawn,
            usable));
    assertTrue(traffic.encodedBytes() < MOST_BYTES, traffic.encodedBytes() + " bytes");
    assertTrue(traffic.encodedBytes() > FEWEST_BYTES, traffic.encodedBytes() + " bytes");
  }
}
