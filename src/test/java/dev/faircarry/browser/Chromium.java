package dev.faircarry.browser;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/**
 * The browsers of a test run: each is a Chromium of its own with storage of its own, started when
 * first asked for and kept for the tests that follow.
 *
 * <p>Driver and browser are named, so nothing is looked for and nothing is downloaded. Names
 * resolve to nothing but this machine: a request to anywhere else fails, and is told by the test.
 */
final class Chromium {
  private static final List<ChromeDriver> STARTED = new ArrayList<>();
  // Commands of the protocol are sent as they are; no binding of a version is used.
  private static final Logger CDP_LOG =
      Logger.getLogger("org.openqa.selenium.devtools.CdpVersionFinder");
  private static final Duration PAGE_END = Duration.ofSeconds(60);

  private Chromium() {}

  /** The browser of the first person, of the second, and so on, from 0. */
  static synchronized ChromeDriver of(int person) {
    while (STARTED.size() <= person) {
      STARTED.add(start());
    }
    return STARTED.get(person);
  }

  private static ChromeDriver start() {
    CDP_LOG.setLevel(Level.SEVERE);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(program("chromedriver"))
            .usingAnyFreePort()
            .build();
    ChromeDriver driver = new ChromeDriver(service, options());
    Runtime.getRuntime().addShutdownHook(new Thread(driver::quit));
    driver.manage().timeouts().pageLoadTimeout(PAGE_END).scriptTimeout(PAGE_END);
    return driver;
  }

  private static ChromeOptions options() {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program("chromium"));
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-dev-shm-usage",
        "--disable-gpu",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-first-run",
        "--force-color-profile=srgb",
        "--lang=en-US",
        "--user-data-dir=" + profile(),
        "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1");
    options.setCapability("goog:loggingPrefs", Map.of("performance", "ALL", "browser", "ALL"));
    return options;
  }

  private static Path profile() {
    try {
      return Files.createTempDirectory("faircarry-browser");
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static File program(String name) {
    return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
        .map(directory -> new File(directory, name))
        .filter(File::canExecute)
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "these tests need “"
                        + name
                        + "”; Debian has it in the packages chromium and chromium-driver"));
  }
}
